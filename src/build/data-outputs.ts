import type { PageContext } from '../binder/context.ts'
import { siteJsonSchema } from '../load/json-schema.ts'
import { findingsJson } from '../report/json.ts'
import { findingsSarif } from '../report/sarif.ts'
import { CHECKS } from '../checks/list.ts'
import { toolVersion } from './tool-version.ts'
import { BYTE_ORDER_MARK } from '../export/csv.ts'
import { dueCsv } from '../export/due-csv.ts'
import { fleetJson } from '../export/fleet-json.ts'
import { boxesGeojson } from '../export/geojson.ts'
import { dueSchema, fleetSchema } from '../export/schemas.ts'
import { wireScheduleCsv } from '../export/wire-schedule-csv.ts'
import { dueJson } from '../report/due.ts'
import { allFindings } from './assess.ts'
import { allDue, calendarOf } from './due-outputs.ts'
import type { Assessment } from './assess.ts'
import type { OutputFile } from './output-stage.ts'

/** Everything below data/: for scripts, spreadsheets and editors. */
export function dataOutputs(assessment: Assessment, contexts: readonly PageContext[]): OutputFile[] {
  const json = (name: string, value: object): OutputFile => ({
    path: `data/${name}`,
    content: `${JSON.stringify(value, undefined, 2)}\n`
  })
  const csv = (name: string, text: string): OutputFile => ({ path: `data/${name}`, content: BYTE_ORDER_MARK + text })
  const due = allDue(contexts)
  return [
    csv('due.csv', dueCsv(due, assessment.on)),
    { path: 'data/due.ics', content: calendarOf(due, contexts, assessment.on) },
    json('due.json', dueJson(due, assessment.on)),
    json('due.schema.json', dueSchema()),
    json('boxes.geojson', boxesGeojson(contexts)),
    csv('wire-schedule.csv', wireScheduleCsv(contexts)),
    json('findings.json', findingsJson(allFindings(assessment), assessment.on)),
    json('findings.sarif', findingsSarif(allFindings(assessment), CHECKS, toolVersion())),
    json('fleet.json', fleetJson(contexts, assessment.on)),
    json('fleet.schema.json', fleetSchema()),
    json('site.schema.json', siteJsonSchema())
  ]
}
