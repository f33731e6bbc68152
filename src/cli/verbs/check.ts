import type { Command } from 'commander'
import { checkFleet } from '../../build/check-fleet.ts'
import type { CheckedFleet } from '../../build/check-fleet.ts'
import { stopwatch } from '../../build/clock.ts'
import { countFindings } from '../../diagnostics/finding.ts'
import { findingsJson } from '../../report/json.ts'
import { findingsSarif } from '../../report/sarif.ts'
import { CHECKS } from '../../checks/list.ts'
import { toolVersion } from '../../build/tool-version.ts'
import { parseShard } from '../../build/shard.ts'
import { countsText, findingsLines, findingsText, sitesTable } from '../../report/text.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'

interface CheckOptions extends CommonOptions {
  readonly shard?: string
}

export function addCheck(program: Command): void {
  withCommonOptions(
    program
      .command('check')
      .description('look for what is wrong, unsafe or missing; exit 1 where there is an error')
      .argument('[site...]'),
    ['text', 'json', 'sarif', 'lines']
  )
    .option('--shard <part>', 'only a part of the sites, such as 2/8; "merge" puts the JSON of the parts together')
    .action(async (only: string[], options: CheckOptions) => {
      const { say, aside, paint, progress } = makeOutput(options)
      const passed = stopwatch()
      const { sites, out, shard } = options
      const checked = await checkFleet({
        sites,
        out,
        on: dayOf(options),
        only,
        ...(shard === undefined ? {} : { shard: parseShard(shard) }),
        onSite: (done, of) => progress('Sites', done, of)
      })
      const { findings, on } = checked
      if (options.format === 'json') say(JSON.stringify(findingsJson(findings, on), undefined, 2))
      else if (options.format === 'sarif')
        say(JSON.stringify(findingsSarif(findings, CHECKS, toolVersion()), undefined, 2))
      else if (options.format === 'lines') {
        if (findings.length > 0) say(findingsLines(findings))
      } else {
        if (findings.length > 0) say(`${findingsText(findings, paint)}\n`)
        if (checked.sites.length > 1)
          say(`${sitesTable(checked.sites.map(one => ({ ...one, site: one.isRead || undefined })))}\n`)
        say(`${lookedAt(checked)} as of ${on}: ${countsText(findings)}.`)
        aside(`Took ${(passed() / 1000).toFixed(1)} s. What a code means: npx underlid explain CODE`)
      }
      process.exitCode = countFindings(findings).error > 0 ? EXIT.found : EXIT.done
    })
}

/** "7 sites (47 boxes, 34 controllers, 55 stations) by 62 checks". */
function lookedAt({ sites, counts }: CheckedFleet): string {
  const many = (n: number, noun: string, plural = `${noun}s`): string => `${n} ${n === 1 ? noun : plural}`
  const held = [
    many(counts.boxes, 'box', 'boxes'),
    many(counts.controllers, 'controller'),
    many(counts.stations, 'station')
  ]
  const unread = sites.filter(one => !one.isRead).length
  const left = unread > 0 ? `, ${unread} could not be read` : ''
  return `${many(sites.length, 'site')} (${held.join(', ')}${left}) by ${CHECKS.length} checks`
}
