import { readFileSync } from 'node:fs'
import type { Command } from 'commander'
import { Refusal } from '../../base/refusal.ts'
import { assessFleet } from '../../build/assess.ts'
import type { Assessment } from '../../build/assess.ts'
import { randomBelow } from '../../build/random.ts'
import { writeSiteFiles } from '../../build/write-site-file.ts'
import type { SiteFileToWrite } from '../../build/write-site-file.ts'
import { freshTag } from '../../domain/tags/fresh-tag.ts'
import { isTag } from '../../domain/tags/tag.ts'
import { insertKey } from '../../load/insert-key.ts'
import { writeRegister } from '../../load/register.ts'
import type { RegisteredTag } from '../../model/fleet.ts'
import type { Site } from '../../model/site.ts'
import type { IsoDate } from '../../units/date.ts'
import { refuseBrokenRegister } from '../register-guard.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { makeOutput } from '../output.ts'

interface TagOptions extends CommonOptions {
  readonly retire?: string
  readonly replace?: string
  readonly moved?: string
  readonly to?: string
}

export function addTag(program: Command): void {
  withCommonOptions(
    program
      .command('tag')
      .description('draw tags for boxes that have none and enter them in the register')
      .argument('[site]')
  )
    .option('--retire <tag>', 'the box is out of use; its page says so')
    .option('--replace <tag>', 'the label is lost or spoiled: draw a new tag, and have the old one lead to it')
    .option('--moved <tag>', 'the box now stands elsewhere')
    .option('--to <place>', 'with --moved: where it stands now')
    .action((site: string | undefined, options: TagOptions) => {
      const { say } = makeOutput(options)
      const on = dayOf(options)
      const assessment = assessFleet(options.sites, on, site === undefined ? [] : [site])
      const marked = options.retire ?? options.moved ?? options.replace
      refuseBrokenRegister(assessment, site === undefined && marked === undefined)
      const broken = assessment.sites.filter(one => !one.site).map(one => one.id)
      if (broken.length > 0)
        throw new Refusal(
          `The files of ${broken.join(', ')} cannot be read yet.`,
          'Run "underlid check" first and mend what it names.'
        )
      if (options.moved && !options.to)
        throw new Refusal('Say where the box stands now.', 'Write it like this: --moved 7KQ3F9X --to "south verge"')
      const work = {
        assessment,
        register: [...assessment.fleet.register],
        texts: new Map<string, string>(),
        said: [] as string[],
        on
      }
      if (options.retire) mark(work, options.retire, 'retired', '')
      else if (options.moved) mark(work, options.moved, 'moved', options.to ?? '')
      else if (options.replace) replace(work, options.replace)
      else for (const one of assessment.sites) if (one.site) tagSite(work, one.site)
      save(work, options.sites)
      if (assessment.general.some(one => one.code === 'tag/no-register')) work.said.push(STARTED)
      say(work.said.length > 0 ? work.said.join('\n') : 'Every box has its tag, and the register holds them all.')
    })
}

const STARTED =
  'The register is new: it knows nothing of tags that were retired, moved or replaced. If there was one before, bring that back in its place.'

interface Work {
  readonly assessment: Assessment
  readonly register: RegisteredTag[]
  /** New texts of site files, by file. */
  readonly texts: Map<string, string>
  readonly said: string[]
  readonly on: IsoDate
}

function tagSite(work: Work, site: Site): void {
  for (const [index, box] of site.boxes.entries()) {
    const known = work.register.find(one => one.tag === box.tag)
    if (box.tag !== undefined && (known || !isTag(box.tag))) continue
    const tag = box.tag ?? drawFor(work)
    if (box.tag === undefined) setTag(work, site, index, tag)
    enter(work, { tag, site: site.id, box: box.id })
    work.said.push(`${site.id} ${box.id}: ${tag}${box.tag === undefined ? '' : ' entered in the register'}`)
  }
}

function mark(work: Work, tag: string, state: 'retired' | 'moved', now: string): void {
  const index = indexOf(work, tag)
  const entry = work.register[index]
  if (!entry) return
  work.register[index] = { ...entry, state, ...(now ? { now } : {}) }
  work.said.push(`${tag} (${entry.site} ${entry.box}) is marked ${state}. Its page will say so.`)
}

function replace(work: Work, old: string): void {
  const index = indexOf(work, old)
  const entry = work.register[index]
  const site = work.assessment.sites.find(one => one.id === entry?.site)?.site
  const box = site?.boxes.findIndex(one => one.tag === old) ?? -1
  if (!entry || !site || box < 0)
    throw new Refusal(`No box carries the tag ${old} now.`, 'See sites/tags.csv for what became of it.')
  const tag = drawFor(work)
  work.register[index] = { ...entry, state: 'replaced', now: tag }
  setTag(work, site, box, tag)
  enter(work, { tag, site: site.id, box: entry.box })
  work.said.push(
    `${site.id} ${entry.box}: ${tag} takes the place of ${old}. Print its label: npx underlid print ${site.id} --labels`
  )
}

function indexOf(work: Work, tag: string): number {
  const index = work.register.findIndex(one => one.tag === tag)
  if (index < 0)
    throw new Refusal(`The register does not hold ${tag}.`, 'Copy the tag from the label or from sites/tags.csv.')
  return index
}

function drawFor({ assessment, register }: Work): string {
  return freshTag({ register, sites: assessment.fleet.sites }, randomBelow)
}

function setTag(work: Work, site: Site, index: number, tag: string): void {
  const { file } = site.at
  const text = insertKey(work.texts.get(file) ?? readFileSync(file, 'utf8'), {
    path: ['boxes', index],
    after: 'id',
    key: 'tag',
    value: tag
  })
  if (text === undefined)
    throw new Refusal(
      `The tag could not be written into ${file}.`,
      `Write "tag: ${tag}" under the box by hand and run this again.`
    )
  work.texts.set(file, text)
}

function enter(work: Work, entry: Pick<RegisteredTag, 'tag' | 'site' | 'box'>): void {
  work.register.push({ ...entry, state: 'live', issued: work.on, at: { file: '', path: [] } })
}

function save({ assessment, register, texts, said }: Work, folder: string): void {
  if (said.length === 0) return
  const files: SiteFileToWrite[] = [...texts].map(([file, text]) => ({ file, text }))
  const registerFile = assessment.sources.register?.file ?? `${folder}/tags.csv`
  writeSiteFiles([...files, { file: registerFile, text: writeRegister(register) }])
}
