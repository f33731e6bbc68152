import type { Command } from 'commander'
import type { HandoverResult } from '../../build/handover.ts'
import { findingsText } from '../../report/text.ts'
import { EN_US } from '../../words/words.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'
import type { Output } from '../output.ts'

interface HandoverOptions extends CommonOptions {
  readonly asIs?: boolean
  readonly withRestricted?: boolean
}

export function addHandover(program: Command): void {
  withCommonOptions(
    program
      .command('handover')
      .description('one file with binder, pages, data, attachments and a manifest of checksums')
      .argument('<site>')
  )
    .option('--as-is', 'hand over although errors are open; they are listed inside')
    .option('--with-restricted', 'put the sheet of codes, keys and private phones in too')
    .action(run)
}

async function run(site: string, options: HandoverOptions): Promise<void> {
  const output = makeOutput(options)
  // Slow to read in; only this verb needs it.
  const { handOver } = await import('../../build/handover.ts')
  const result = await handOver({
    sites: options.sites,
    out: options.out,
    on: dayOf(options),
    site,
    asIs: options.asIs === true,
    withRestricted: options.withRestricted === true
  })
  if (options.format === 'json') output.say(JSON.stringify(resultJson(site, result), undefined, 2))
  else tell(site, result, output)
  if ('refused' in result) process.exitCode = EXIT.found
}

function tell(site: string, result: HandoverResult, { say, complain, paint }: Output): void {
  const w = EN_US.handover.package
  if ('refused' in result) {
    complain(`${findingsText(result.refused, paint)}\n`)
    complain(w.refused(site, result.refused.length))
    complain(w.refusedFix)
    return
  }
  say(w.written(result.path, result.files))
}

function resultJson(site: string, result: HandoverResult): object {
  return 'refused' in result
    ? { schema: 1, site, refused: result.refused.map(({ code, subject, message }) => ({ code, subject, message })) }
    : { schema: 1, site, path: result.path, files: result.files, open: result.open.length }
}
