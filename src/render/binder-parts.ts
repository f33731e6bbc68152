import type { Binder, Block, Section } from '../binder/blocks.ts'
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

/** So many drawings or lists after a wide table stay on its turned paper; more go back to upright pages. */
const FEW = 2

/**
 * A wide table turns the paper, and takes the words that lead to it along: a heading or a paragraph alone on an upright page would be
 * stranded. A drawing or two after it stay with it.
 */
export function runsOfPaper(blocks: readonly Block[]): Run[] {
  const runs: { wide: boolean; blocks: Block[] }[] = []
  for (const [index, block] of blocks.entries()) {
    const last = runs.at(-1)
    const wide = isWide(block) || (last?.wide === true && staysTurned(blocks, index))
    if (last && last.wide === wide) last.blocks.push(block)
    else runs.push({ wide, blocks: wide && last ? [...takeLead(last.blocks), block] : [block] })
  }
  const filled = runs.filter(run => run.blocks.length > 0)
  return filled.length > 0 ? joined(filled) : [{ wide: false, blocks: [] }]
}

function isWide(block: Block): boolean {
  return (block.kind === 'table' || block.kind === 'attachment' || block.kind === 'sheet') && block.wide === true
}

function staysTurned(blocks: readonly Block[], index: number): boolean {
  let [first, end] = [index, index]
  while (isFollower(blocks[first - 1])) first -= 1
  while (isFollower(blocks[end])) end += 1
  return end > index && end - first <= FEW
}

function isFollower(block: Block | undefined): boolean {
  return block?.kind === 'figure' || block?.kind === 'list'
}

function takeLead(blocks: Block[]): Block[] {
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

/** Page rules that only a document's own data can write: paper, running foot, running head of each part. */
export function binderPageCss(binder: Binder): string {
  const paper = binder.paper === 'A4' ? 'A4' : 'letter'
  const foot = `@bottom-left{content:"${cssString(binder.running.left)}\\2003 ${cssString(binder.running.right)}"}`
  const parts = binderParts(binder).flatMap(({ page, title, sections }) => {
    const head = `@top-right{content:"${sections[0]?.number ?? ''}\\2003 ${cssString(title)}"}`
    const wide = `@page ${page}-wide{size:${paper} landscape;margin:25mm 15mm 18mm 18mm;${head}}`
    return [`@page ${page}{${head}}`, wide]
  })
  return [`@page{size:${paper};${foot}}`, ...parts, attachmentCss(binder.paper)].join('\n')
}

/** What a page leaves for a sheet that is bound in, below its caption, mm: upright and turned. */
const SHEET_MM = { A4: [240, 155], Letter: [222, 160] } as const

function attachmentCss(paper: Binder['paper']): string {
  const [upright, turned] = SHEET_MM[paper]
  return `.attachment-page{height:${upright}mm}.wide .attachment-page{height:${turned}mm}`
}
