import type { Binder, Block, Section } from '../binder/blocks.ts'
import { roughSumMm } from './rough-height.ts'
import { cssString } from './styles.ts'

/** Sections between two page breaks. They share a running head, so they share a named page. */
export interface BinderPart {
  readonly page: string
  readonly title: string
  readonly sections: readonly NumberedSection[]
}

export interface NumberedSection {
  readonly number: number
  readonly section: Section
  readonly runs: readonly Run[]
}

/** Blocks on paper of one direction. */
export interface Run {
  readonly wide: boolean
  readonly blocks: readonly Block[]
}

export function binderParts({ sections }: Binder): BinderPart[] {
  const parts: { page: string; title: string; sections: NumberedSection[] }[] = []
  for (const [index, section] of sections.entries()) {
    const numbered = { number: index + 1, section, runs: runsOfPaper(section.blocks) }
    const open = section.newPage ? undefined : parts.at(-1)
    if (open) open.sections.push(numbered)
    else parts.push({ page: `part-${parts.length + 1}`, title: section.title, sections: [numbered] })
  }
  return parts
}

/** So much stays on turned paper with a wide table rather than begin an upright sheet that it would not half fill, mm. */
const BESIDE_WIDE_MM = 128
/** A passage that leads to a wide table leaves room for the table. */
const LEAD_MM = 80
/** What a turned sheet holds, mm as roughly reckoned: its rows are lower than those of upright paper. */
const TURNED_SHEET_MM = 170

/**
 * A wide table turns the paper, and takes the words that lead to it along: a heading or a paragraph alone on an upright page would be
 * stranded. What stands before the first, between two or after the last stays with it too where it is short.
 */
export function runsOfPaper(blocks: readonly Block[]): Run[] {
  const runs: { wide: boolean; blocks: Block[] }[] = []
  for (const block of blocks) {
    const [last, wide] = [runs.at(-1), isWide(block)]
    if (last && last.wide === wide) last.blocks.push(block)
    else
      runs.push({
        wide,
        blocks: last && block.kind === 'table' && wide ? [...takeLead(last.blocks, block), block] : [block]
      })
  }
  for (const [index, run] of runs.entries())
    if (hasWideTable(runs[index - 1])) runs[index - 1]?.blocks.push(...takeTail(run))
  const filled = runs.filter(run => run.blocks.length > 0)
  const turned = filled.map((run, index) => ({
    ...run,
    wide: run.wide || ([filled[index - 1], filled[index + 1]].some(hasWideTable) && isShort(run.blocks))
  }))
  return turned.length > 0 ? joined(turned) : [{ wide: false, blocks: [] }]
}

const hasWideTable = (run: Run | undefined): boolean =>
  run?.blocks.some(block => block.kind === 'table' && isWide(block)) === true

const isShort = (blocks: readonly Block[]): boolean => roughSumMm(blocks, false) <= BESIDE_WIDE_MM

/** What belongs to a wide table before the next heading: its drawing, mostly. */
function takeTail({ wide, blocks }: { wide: boolean; blocks: Block[] }): Block[] {
  const heading = blocks.findIndex(block => block.kind === 'heading')
  return !wide && heading > 0 && isShort(blocks.slice(0, heading)) ? blocks.splice(0, heading) : []
}

function isWide(block: Block): boolean {
  return (block.kind === 'table' || block.kind === 'attachment' || block.kind === 'sheet') && block.wide === true
}

/** The words before a table; a passage under its own heading goes along whole where it is short, or where one turned sheet holds both. */
function takeLead(blocks: Block[], table: Block): Block[] {
  const heading = blocks.findLastIndex(block => block.kind === 'heading')
  const passage = blocks.slice(heading)
  const fits = roughSumMm([...passage, table], true) <= TURNED_SHEET_MM
  if (heading > 0 && (fits || roughSumMm(passage, false) <= LEAD_MM)) return blocks.splice(heading)
  let from = blocks.length
  while (from > 0 && isLead(blocks[from - 1])) from -= 1
  return blocks.splice(from)
}

function isLead(block: Block | undefined): boolean {
  return block?.kind === 'heading' || block?.kind === 'paragraph'
}

/** Two turned runs meet where all the words between them were taken along. */
function joined(runs: readonly Run[]): Run[] {
  const merged: { wide: boolean; blocks: Block[] }[] = []
  for (const { wide, blocks } of runs) {
    const last = merged.at(-1)
    if (last && last.wide === wide) last.blocks.push(...blocks)
    else merged.push({ wide, blocks: [...blocks] })
  }
  return merged
}

/**
 * Page rules that only a document's own data can write: paper, running foot, and the running head of each part on the outer edge of its side.
 * Turned paper is bound at its top or at its foot, as the printer turns it, so that both clear the holes.
 */
export function binderPageCss(binder: Binder): string {
  const paper = binder.paper === 'A4' ? 'A4' : 'letter'
  const foot = `content:"${cssString(binder.running.left)}\\2003 ${cssString(binder.running.right)}"`
  const parts = binderParts(binder).flatMap(part => {
    const head = `content:"${cssString(headOf(part))}"`
    const turned = `${part.page}-wide`
    return [
      `@page ${turned}{size:${paper} landscape;margin:23mm 16.5mm;${TURNED_EDGES}}`,
      ...[part.page, turned].flatMap(page => [
        `@page ${page}{@top-right{${head}}}`,
        `@page ${page}:left{@top-left{${head}}@top-right{content:none}}`
      ])
    ]
  })
  const feet = `@page{size:${paper};@bottom-left{${foot}}}@page :left{@bottom-right{${foot}}}`
  return [feet, ...parts, attachmentCss(binder.paper)].join('\n')
}

/** Head and foot close to the text, so that they clear the holes too. */
const TURNED_EDGES = ['bottom-left', 'bottom-right']
  .map(box => `@${box}{margin-top:0.8mm;padding-top:0.8mm}`)
  .concat(['top-left', 'top-right'].map(box => `@${box}{padding-bottom:2mm}`))
  .join('')

/** Letters that a running head holds in one line of upright paper. */
const HEAD_MOST = 125

/** "5 Valve boxes · 6 Record drawing": all sections of the part, since each sheet of it may hold any; the first and the last where they are many. */
export function headOf({ sections }: BinderPart): string {
  const names = sections.map(({ number, section }) => `${number}\u2002${section.title}`)
  const all = names.join(' \u00b7 ')
  if (all.length <= HEAD_MOST) return all
  return [names[0], names.at(-1)].join(' \u2026 ')
}

/** What a page leaves for a sheet that is bound in, below its caption, mm: upright and turned. */
const SHEET_MM = { A4: [240, 155], Letter: [222, 160] } as const

function attachmentCss(paper: Binder['paper']): string {
  const [upright, turned] = SHEET_MM[paper]
  return `.attachment-page{height:${upright}mm}.wide .attachment-page{height:${turned}mm}`
}
