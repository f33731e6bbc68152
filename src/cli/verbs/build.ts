import { Option } from 'commander'
import type { Command } from 'commander'
import { labelWishOf } from '../label-options.ts'
import type { LabelOptions } from '../label-options.ts'
import { buildLog, writeLog } from '../../build/build-log.ts'
import { stopwatch } from '../../build/clock.ts'
import type { BuildResult, BuildWish, LabelReport } from '../../build/pipeline.ts'
import { parseShard } from '../../build/shard.ts'
import { countFindings } from '../../diagnostics/finding.ts'
import { countsText, findingsText } from '../../report/text.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'
import type { Output } from '../output.ts'

interface BuildOptions extends CommonOptions {
  readonly shard?: string
  readonly log?: string
  readonly strict?: boolean
}

interface PrintOptions extends BuildOptions, LabelOptions {
  readonly labels?: boolean
  readonly binder?: boolean
  readonly charts?: boolean
  readonly restricted?: boolean
}

export function addBuild(program: Command): void {
  withCommonOptions(program.command('build').description('write the pages and the data').argument('[site...]'))
    .option('--strict', 'exit 1 where there is an error')
    .option(...SHARD)
    .option(...LOG)
    .action((sites: string[], options: BuildOptions) => run(wishOf(sites, options), options))
}

export function addPrint(program: Command): void {
  withCommonOptions(
    program.command('print').description('write the pages and print the binders and lid labels').argument('[site...]')
  )
    .option('--binder', 'only the binders')
    .option('--labels', 'only the lid labels')
    .option(
      '--label-size <size>',
      'width and height of a lid label: 90x60mm, 5x3in (default: 180x84mm, 180x130mm with --plan-code)'
    )
    .addOption(
      new Option('--label-sheet <how>', 'labels on sheets to be cut, or each on a sheet of its own').choices([
        'sheet',
        'single'
      ])
    )
    .option(
      '--plan-code',
      'lid labels also with a code that holds the zone plan as plain text, for a phone without a network'
    )
    .option('--read-from <distance>', 'how far off a phone has to read the codes of a lid label: 40cm, 16in')
    .option('--module <width>', 'width of the squares of those codes, at least: 0.6mm (default: 0.5mm)')
    .option('--quiet-zone <squares>', 'white squares left round those codes: 4 to 10 (default: 4)')
    .option('--charts', 'only the controller charts, a page each, to be sealed and kept at the controllers')
    .option('--restricted', 'also the sheet of codes, keys and private phones; keep it apart')
    .option('--strict', 'exit 1 where there is an error')
    .option(...SHARD)
    .option(...LOG)
    .action((sites: string[], options: PrintOptions) => {
      const neither = !options.binder && !options.labels && !options.charts
      const print = {
        binders: neither || options.binder === true,
        labels: neither || options.labels === true,
        charts: options.charts === true,
        restricted: options.restricted === true,
        ...labelWishOf(options)
      }
      return run({ ...wishOf(sites, options), print }, options)
    })
}

const SHARD = ['--shard <part>', 'only a part of the sites, such as 2/8; "merge" puts the parts together'] as const
const LOG = ['--log <file>', 'write down what became of each site, and why one was skipped'] as const

function wishOf(only: string[], options: BuildOptions): BuildWish {
  const { sites, out, shard } = options
  return { sites, out, on: dayOf(options), only, ...(shard === undefined ? {} : { shard: parseShard(shard) }) }
}

async function run(wish: BuildWish, options: BuildOptions): Promise<void> {
  const output = makeOutput(options)
  const passed = stopwatch()
  // Eleventy and the browser's driver are slow to read in; only a build needs them.
  const { buildFleet } = await import('../../build/pipeline.ts')
  const result = await buildFleet({
    ...wish,
    onSite: (done, of) => output.progress('Sites', done, of),
    onPrinted: (pdf, how) => how === 'failed' && output.complain(`Not printed: ${pdf}`)
  })
  if (options.log !== undefined) writeLog(options.log, buildLog(result))
  if (options.format === 'json') output.say(JSON.stringify(resultJson(result), undefined, 2))
  else tell(result, wish, output, passed() / 1000)
  process.exitCode = exitCode(result, options.strict === true)
}

function tell(result: BuildResult, wish: BuildWish, { say, aside, complain, paint }: Output, seconds: number): void {
  const { on, findings, built, leftOut, report, prints, labels } = result
  const failing = findings.filter(one => leftOut.includes(one.site))
  if (failing.length > 0) complain(`${findingsText(failing, paint)}\n`)
  const pages = report.changed.length + report.unchanged.length
  say(
    `${built.length} site${built.length === 1 ? '' : 's'} built as of ${on}: ${pages} files, ${report.changed.length} changed.`
  )
  if (prints) {
    say(
      `${prints.printed.length} PDF${prints.printed.length === 1 ? '' : 's'} printed, ${prints.reused.length} unchanged.`
    )
    for (const { pdf, reason } of prints.failed) complain(`Not printed: ${pdf}: ${reason}`)
    for (const line of prints.noBrowser ?? []) complain(line)
  }
  if (labels) tellLabels(labels, { say, complain })
  if (leftOut.length > 0) complain(`Left out: ${leftOut.join(', ')}. Their last good output stays.`)
  say(
    `Findings: ${countsText(findings)}.${findings.length > 0 ? ` See: npx underlid check${wish.sites === 'sites' ? '' : ` --sites ${wish.sites}`}` : ''}`
  )
  aside(`Written to ${wish.out} in ${seconds.toFixed(1)} s.`)
}

function tellLabels({ reach, notes, crowded }: LabelReport, { say, complain }: Pick<Output, 'say' | 'complain'>): void {
  if (reach !== '') say(reach)
  for (const note of notes) (crowded > 0 ? complain : say)(note)
}

function exitCode({ findings, leftOut, prints, labels }: BuildResult, strict: boolean): number {
  if (
    leftOut.length > 0 ||
    (labels?.crowded ?? 0) > 0 ||
    (prints && (prints.failed.length > 0 || prints.noBrowser !== undefined))
  )
    return EXIT.refused
  return strict && countFindings(findings).error > 0 ? EXIT.found : EXIT.done
}

function resultJson({ on, findings, built, leftOut, report, prints, labels }: BuildResult): object {
  return {
    schema: 1,
    on,
    built,
    left_out: leftOut,
    files: { changed: report.changed, unchanged: report.unchanged.length, kept: report.kept, removed: report.removed },
    ...(prints ? { prints } : {}),
    ...(labels ? { labels } : {}),
    counts: countFindings(findings)
  }
}
