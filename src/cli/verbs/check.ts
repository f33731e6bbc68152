import type { Command } from 'commander'
import { allFindings, assessFleet } from '../../build/assess.ts'
import { stopwatch } from '../../build/clock.ts'
import { countFindings } from '../../diagnostics/finding.ts'
import { findingsJson } from '../../report/json.ts'
import { findingsSarif } from '../../report/sarif.ts'
import { CHECKS } from '../../checks/list.ts'
import { toolVersion } from '../../build/tool-version.ts'
import { fleetCounts } from '../../binder/fleet-counts.ts'
import type { Assessment } from '../../build/assess.ts'
import { countsText, findingsLines, findingsText, sitesTable } from '../../report/text.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'

export function addCheck(program: Command): void {
  withCommonOptions(
    program
      .command('check')
      .description('look for what is wrong, unsafe or missing; exit 1 where there is an error')
      .argument('[site...]'),
    ['text', 'json', 'sarif', 'lines']
  ).action((sites: string[], options: CommonOptions) => {
    const { say, aside, paint } = makeOutput(options)
    const passed = stopwatch()
    const assessment = assessFleet(options.sites, dayOf(options), sites)
    const findings = allFindings(assessment)
    if (options.format === 'json') say(JSON.stringify(findingsJson(findings, assessment.on), undefined, 2))
    else if (options.format === 'sarif')
      say(JSON.stringify(findingsSarif(findings, CHECKS, toolVersion()), undefined, 2))
    else if (options.format === 'lines') {
      if (findings.length > 0) say(findingsLines(findings))
    } else {
      if (findings.length > 0) say(`${findingsText(findings, paint)}\n`)
      if (assessment.sites.length > 1) say(`${sitesTable(assessment.sites)}\n`)
      say(`${lookedAt(assessment)} as of ${assessment.on}: ${countsText(findings)}.`)
      aside(`Took ${(passed() / 1000).toFixed(1)} s. What a code means: npx underlid explain CODE`)
    }
    process.exitCode = countFindings(findings).error > 0 ? EXIT.found : EXIT.done
  })
}

/** "7 sites (47 boxes, 34 controllers, 55 stations) by 62 checks". */
function lookedAt({ sites }: Assessment): string {
  const counts = fleetCounts(sites.flatMap(one => (one.site ? [one.site] : [])))
  const many = (n: number, noun: string, plural = `${noun}s`): string => `${n} ${n === 1 ? noun : plural}`
  const held = [
    many(counts.boxes, 'box', 'boxes'),
    many(counts.controllers, 'controller'),
    many(counts.stations, 'station')
  ]
  const unread = sites.filter(one => !one.site).length
  const left = unread > 0 ? `, ${unread} could not be read` : ''
  return `${many(sites.length, 'site')} (${held.join(', ')}${left}) by ${CHECKS.length} checks`
}
