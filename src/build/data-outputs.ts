import { findingsJson } from '../report/json.ts'
import { findingsSarif } from '../report/sarif.ts'
import { CHECKS } from '../checks/list.ts'
import { toolVersion } from './tool-version.ts'
import { BYTE_ORDER_MARK } from '../export/csv.ts'
import { dueCsv } from '../export/due-csv.ts'
import { fleetOf } from '../export/fleet-json.ts'
import { dueSchema, fleetSchema } from '../export/schemas.ts'
import { wireScheduleOf } from '../export/wire-schedule-csv.ts'
import { siteJsonSchema } from '../load/json-schema.ts'
import { sortedDue } from '../binder/make-fleet-page.ts'
import { sortFindings } from '../diagnostics/finding.ts'
import { dueJson } from '../report/due.ts'
import { calendarOf, calendarSites } from './due-outputs.ts'
import type { FleetWork } from './fleet-pages.ts'
import type { OutputFile } from './output-stage.ts'

/** Everything below data/: for scripts, spreadsheets and editors. */
export function dataOutputs({ digests, general, on }: FleetWork, publicAddress: string): OutputFile[] {
  const json = (name: string, value: object): OutputFile => ({
    path: `data/${name}`,
    content: `${JSON.stringify(value, undefined, 2)}\n`
  })
  const csv = (name: string, text: string): OutputFile => ({ path: `data/${name}`, content: BYTE_ORDER_MARK + text })
  const built = digests.flatMap(one => (one.built ? [one.built] : []))
  const due = sortedDue(built.flatMap(one => one.summary.due))
  const findings = sortFindings([...general, ...digests.flatMap(one => one.findings)])
  return [
    csv('due.csv', dueCsv(due, on)),
    { path: 'data/due.ics', content: calendarOf(due, calendarSites(digests, publicAddress), on) },
    json('due.json', dueJson(due, on)),
    json('due.schema.json', dueSchema()),
    json('boxes.geojson', { type: 'FeatureCollection', features: built.flatMap(one => one.features) }),
    csv('wire-schedule.csv', wireScheduleOf(built.flatMap(one => one.wires))),
    json('findings.json', findingsJson(findings, on)),
    json('findings.sarif', findingsSarif(findings, CHECKS, toolVersion())),
    json(
      'fleet.json',
      fleetOf(
        built.map(one => one.json),
        on
      )
    ),
    json('fleet.schema.json', fleetSchema()),
    json('site.schema.json', siteJsonSchema())
  ]
}
