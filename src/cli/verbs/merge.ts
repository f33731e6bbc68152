import type { Command } from 'commander'
import { countFindings } from '../../diagnostics/finding.ts'
import { countsText } from '../../report/text.ts'
import { EXIT, makeOutput } from '../output.ts'

interface MergeOptions {
  readonly out: string
  readonly strict?: boolean
  readonly quiet?: boolean
}

export function addMerge(program: Command): void {
  program
    .command('merge')
    .description('put the parts of a build together that were made with --shard')
    .argument('<part...>', 'folders of all parts, or the JSON of all parts of a check')
    .option('--out <folder>', 'folder of the outputs', 'dist')
    .option('--strict', 'exit 1 where there is an error')
    .option('--quiet', 'say only what was asked for')
    .action(async (parts: string[], options: MergeOptions) => {
      const { say, complain } = makeOutput(options)
      if (parts.every(part => part.endsWith('.json'))) {
        const { mergeChecks } = await import('../../build/merge-checks.ts')
        const merged = mergeChecks(parts)
        say(JSON.stringify(merged, undefined, 2))
        process.exitCode = merged.counts.error > 0 ? EXIT.found : EXIT.done
        return
      }
      const { mergeShards } = await import('../../build/merge-shards.ts')
      const { parts: count, sites, leftOut, findings, report } = await mergeShards(parts, options.out)
      const files = report.changed.length + report.unchanged.length
      say(`${count} parts, ${sites} sites: ${files} files, ${report.changed.length} changed.`)
      if (leftOut.length > 0) complain(`Left out: ${leftOut.join(', ')}. Their last good output stays.`)
      say(`Findings: ${countsText(findings)}.`)
      const failed = options.strict && countFindings(findings).error > 0
      process.exitCode = leftOut.length > 0 ? EXIT.refused : failed ? EXIT.found : EXIT.done
    })
}
