import type { Command } from 'commander'
import { stopwatch } from '../../build/clock.ts'
import type { BuildResult, BuildWish } from '../../build/pipeline.ts'
import { countFindings } from '../../diagnostics/finding.ts'
import { countsText, findingsText } from '../../report/text.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'
import type { Output } from '../output.ts'

interface BuildOptions extends CommonOptions {
  readonly strict?: boolean
}

interface PrintOptions extends BuildOptions {
  readonly labels?: boolean
  readonly binder?: boolean
  readonly restricted?: boolean
}

export function addBuild(program: Command): void {
  withCommonOptions(program.command('build').description('write the pages and the data').argument('[site...]'))
    .option('--strict', 'exit 1 where there is an error')
    .action((sites: string[], options: BuildOptions) => run(wishOf(sites, options), options))
}

export function addPrint(program: Command): void {
  withCommonOptions(
    program.command('print').description('write the pages and print the binders and lid labels').argument('[site...]')
  )
    .option('--binder', 'only the binders')
    .option('--labels', 'only the lid labels')
    .option('--restricted', 'also the sheet of codes, keys and private phones; keep it apart')
    .option('--strict', 'exit 1 where there is an error')
    .action((sites: string[], options: PrintOptions) => {
      const neither = !options.binder && !options.labels
      const print = {
        binders: neither || options.binder === true,
        labels: neither || options.labels === true,
        restricted: options.restricted === true
      }
      return run({ ...wishOf(sites, options), print }, options)
    })
}

function wishOf(only: string[], options: CommonOptions): BuildWish {
  return { sites: options.sites, out: options.out, on: dayOf(options), only }
}

async function run(wish: BuildWish, options: BuildOptions): Promise<void> {
  const output = makeOutput(options)
  const passed = stopwatch()
  // Eleventy and the browser's driver are slow to read in; only a build needs them.
  const { buildFleet } = await import('../../build/pipeline.ts')
  const result = await buildFleet({
    ...wish,
    onPrinted: (pdf, how) => how === 'failed' && output.complain(`Not printed: ${pdf}`)
  })
  if (options.format === 'json') output.say(JSON.stringify(resultJson(result), undefined, 2))
  else tell(result, wish, output, passed() / 1000)
  process.exitCode = exitCode(result, options.strict === true)
}

function tell(result: BuildResult, wish: BuildWish, { say, aside, complain, paint }: Output, seconds: number): void {
  const { on, findings, built, leftOut, report, prints } = result
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
  if (leftOut.length > 0) complain(`Left out: ${leftOut.join(', ')}. Their last good output stays.`)
  say(
    `Findings: ${countsText(findings)}.${findings.length > 0 ? ` See: npx underlid check${wish.sites === 'sites' ? '' : ` --sites ${wish.sites}`}` : ''}`
  )
  aside(`Written to ${wish.out} in ${seconds.toFixed(1)} s.`)
}

function exitCode({ findings, leftOut, prints }: BuildResult, strict: boolean): number {
  if (leftOut.length > 0 || (prints && (prints.failed.length > 0 || prints.noBrowser !== undefined)))
    return EXIT.refused
  return strict && countFindings(findings).error > 0 ? EXIT.found : EXIT.done
}

function resultJson({ on, findings, built, leftOut, report, prints }: BuildResult): object {
  return {
    schema: 1,
    on,
    built,
    left_out: leftOut,
    files: { changed: report.changed, unchanged: report.unchanged.length, kept: report.kept, removed: report.removed },
    ...(prints ? { prints } : {}),
    counts: countFindings(findings)
  }
}
