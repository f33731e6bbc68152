import { readFileSync } from 'node:fs'
import type { Command } from 'commander'
import { Refusal } from '../../base/refusal.ts'
import { assessSite, siteOfTag } from '../../build/assess-site.ts'
import type { AssessedSite, Assessment } from '../../build/assess.ts'
import { prepareVisit } from '../../build/record-visit.ts'
import { takeVisitPhotos } from '../../build/visit-photos.ts'
import { writeSiteFiles } from '../../build/write-site-file.ts'
import type { Finding } from '../../diagnostics/finding.ts'
import { visitOfFlags } from '../../load/visit-flags.ts'
import type { VisitFlags } from '../../load/visit-flags.ts'
import { notOfTheForm, slipIn } from '../../load/visit-slip.ts'
import type { FoundSlip } from '../../load/visit-slip.ts'
import { visitText } from '../../load/write-visit.ts'
import { fittedSet } from '../../plan/fitted-set.ts'
import { recordJson, recordText } from '../../report/record.ts'
import { findingsText } from '../../report/text.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'

interface RecordOptions extends CommonOptions, Omit<VisitFlags, 'on'> {
  readonly slip?: string
  readonly dryRun?: boolean
}

const many = (value: string, before: readonly string[]): readonly string[] => [...before, value]

export function addRecord(program: Command): void {
  const none: readonly string[] = []
  withCommonOptions(
    program
      .command('record')
      .description('add a visit to a site: from flags, from a pasted visit slip, or from a file')
      .argument('<site>')
  )
    .option('--slip <file>', 'a visit slip or a visit file; "-" reads what is pasted')
    .option('--dry-run', 'show what would be written and what it changes')
    .option('--by <who>', 'who came, and of which company')
    .option('--reason <why>', 'route, call, season, ...')
    .option('--box <box>', 'a box that was opened', many, none)
    .option(
      '--battery <controller=kind>',
      'cells changed: K1="9 V alkaline", K1="4 x AA alkaline, rest 6.4 V"',
      many,
      none
    )
    .option('--volts <controller=volts>', 'cells only measured: K1="rest 9.4 V, under-load 8.9 V"', many, none)
    .option('--reading <place=amount>', 'K1/1=4.4ohm, K1/1="coil 4.2 ohm, flow 38 L/min", S1="1284 m³"', many, none)
    .option('--program <controller=text>', 'K1="clock 4 min fast, found A at 60 %, left A at 100 %"', many, none)
    .option('--test <supply=result>', 'backflow test: S1=passed, S1="failed, by J. Sample"', many, none)
    .option('--task <name>', 'maintenance that was done, by its name in the site file', many, none)
    .option('--found <text>', 'what was found', many, none)
    .option('--done <text>', 'what was done', many, none)
    .option('--open <text>', 'what is left open', many, none)
    .option('--owner <who>', 'who sees to what is left open')
    .option('--repaired <text>', 'what an earlier visit left open and is now done', many, none)
    .option('--part <item=count>', 'a part that was used: "gel-filled connector=2"', many, none)
    .option(
      '--photo <file>',
      'a picture: vb2.jpg, or vb2.jpg="torn diaphragm"; one from elsewhere is copied into the folder photos of the site',
      many,
      none
    )
    .option('--arrived <time>', 'such as 09:40')
    .option('--left <time>', 'such as 10:25')
    .option('--minutes <time>', 'time on the site, such as "45 min"')
    .option('--drawing-change', 'the record drawing has to be changed')
    .action((site: string, options: RecordOptions) => record(site, options))
}

async function record(id: string, options: RecordOptions): Promise<void> {
  const { say, complain, paint } = makeOutput(options)
  const assessment = assessSite(options.sites, dayOf(options), id)
  const [assessed] = assessment.sites
  if (!assessed?.site)
    throw new Refusal(`The files of ${id} cannot be read yet.`, 'Run "underlid check" first and mend what it names.')
  const photos = await takeVisitPhotos(options.photo, assessed.sources)
  const flags = { ...options, photo: photos.map(one => one.file) }
  const given =
    options.slip === undefined ? fromFlags(assessed, assessment, flags) : fromSlip(assessed, assessment, options.slip)
  const prepared = prepareVisit({
    assessment,
    site: assessed,
    source: given.source,
    photos,
    ...(given.comment ? { comment: given.comment } : {})
  })
  if (!prepared.ok) {
    complain(findingsText(prepared.findings.map(given.placed), paint))
    complain('Nothing was written.')
    process.exitCode = EXIT.refused
    return
  }
  const { file, text, data, changes, photos: copies } = prepared.visit
  const written = options.dryRun !== true
  const pictures = copies.map(({ path, content }) => ({ file: path, text: content, isNew: true }))
  if (written) writeSiteFiles([...pictures, { file, text, isNew: true }])
  if (options.format === 'json')
    return say(
      JSON.stringify(
        recordJson({ site: id, file, written, photos: copies.map(one => one.path) }, data, changes),
        undefined,
        2
      )
    )
  const outside = given.outside > 0 ? [`  ${given.outside} lines around the slip were left out.`] : []
  const beyond = given.isSlip ? notOfTheForm(Object.keys(data)) : []
  const doubt =
    beyond.length > 0 ? [`  The form of a box page does not ask for ${beyond.join(', ')}: see that it is true.`] : []
  const copied = copies.map(({ path }) => `  picture ${path}, upright, sized, without what the camera wrote into it`)
  const head = written ? `Recorded ${file}` : `Would write ${file}:\n\n${text}`
  say([head, ...copied, recordText(changes), ...outside, ...doubt].join('\n'))
}

interface Given {
  readonly source: { readonly file: string; readonly text: string }
  readonly comment?: string
  /** A finding with its place in what was pasted. */
  readonly placed: (finding: Finding) => Finding
  readonly outside: number
  /** Says that a box page wrote it. */
  readonly isSlip?: boolean
}

function fromFlags({ site }: AssessedSite, { on }: Assessment, options: RecordOptions): Given {
  const setOf = (id: string) => {
    const controller = site?.controllers.find(one => one.id === id)
    return site && controller ? fittedSet(site, controller, on) : undefined
  }
  const ground = { setOf: (id: string) => pick(setOf(id)), supplies: site?.supplies.map(one => one.id) ?? [] }
  const read = visitOfFlags({ ...options, on }, ground)
  if (!read.ok)
    throw new Refusal(
      ...read.troubles.map(
        ({ flag, written, like }) => `--${flag} ${written} cannot be read. Write it like this: --${flag} ${like}`
      ),
      'Nothing was written.'
    )
  const isEmpty = Object.keys(read.data).every(key => key === 'on' || key === 'by' || key === 'reason')
  if (isEmpty)
    throw new Refusal(
      'Nothing is said of the visit.',
      'Say what was done: --battery, --reading, --found, --done, --open, or --slip -'
    )
  return { source: { file: 'as given', text: visitText(read.data) }, placed: finding => finding, outside: 0 }
}

function pick(set: { readonly kind: string; readonly count: number } | undefined) {
  return set && set.kind !== 'not stated' ? { kind: set.kind, count: set.count } : undefined
}

function fromSlip(assessed: AssessedSite, assessment: Assessment, path: string): Given {
  const slip = slipIn(readText(path))
  const name = path === '-' ? 'slip' : path
  if (!slip)
    throw new Refusal(
      'There is no visit slip in this text.',
      'Paste it whole, from the first line "---" to the second.'
    )
  refuseElsewhere(slip, assessed, assessment)
  const boxes = boxesOf(slip, assessed)
  return {
    source: { file: name, text: boxes === undefined ? slip.text : withBox(slip.text, boxes) },
    ...(slip.from
      ? {
          comment: `from the slip of ${boxOf(slip.from, assessed) ?? 'a box that is gone'}, tag ${slip.from.tag}`,
          isSlip: true
        }
      : {}),
    placed: finding => ({
      ...finding,
      place: { ...finding.place, line: slip.lines[finding.place.line - 1] ?? finding.place.line }
    }),
    outside: slip.outside
  }
}

function readText(path: string): string {
  try {
    return readFileSync(path === '-' ? 0 : path, 'utf8')
  } catch {
    throw new Refusal(
      `${path === '-' ? 'What is pasted' : path} cannot be read.`,
      'Name a file that is there, or "-" to paste.'
    )
  }
}

/** A slip names the box it was written at by its tag. One of another site, or of no box, is not recorded here. */
function refuseElsewhere({ from }: FoundSlip, { id }: AssessedSite, { fleet, sources }: Assessment): void {
  if (!from) return
  const owner = siteOfTag(sources, from.tag) ?? fleet.register.find(one => one.tag === from.tag)?.site
  if (owner === id) return
  throw new Refusal(
    owner === undefined
      ? `The slip carries the tag ${from.tag}, which was never issued.`
      : `The slip was written at a box of ${owner} (tag ${from.tag}), not of ${id}.`,
    owner === undefined
      ? 'Read the tag on the label, or take the line that starts with "#" out.'
      : `Record it there: underlid record ${owner} --slip ...`
  )
}

/** The box by its tag, where the slip itself names none. */
function boxesOf({ from, text }: FoundSlip, assessed: AssessedSite): string | undefined {
  return !from || /^boxes:/mu.test(text) ? undefined : boxOf(from, assessed)
}

/** By its tag; the name that the slip gives tells two boxes of one tag apart, and nothing else. */
function boxOf({ box: name, tag }: NonNullable<FoundSlip['from']>, { site }: AssessedSite): string | undefined {
  const own = site?.boxes.filter(box => box.tag === tag) ?? []
  return (own.find(box => box.id === name) ?? own[0])?.id
}

/** Before the closing line, so that no line of the slip moves. */
function withBox(text: string, box: string): string {
  return text.replace(/---\n$/u, `boxes: [${JSON.stringify(box)}]\n---\n`)
}
