import type { PageContext } from '../binder/context.ts'
import { siteJsonSchema } from '../load/json-schema.ts'
import { findingsJson } from '../report/json.ts'
import { findingsSarif } from '../report/sarif.ts'
import { CHECKS } from '../checks/list.ts'
import { toolVersion } from './tool-version.ts'
import { fleetJson } from '../export/fleet-json.ts'
import { allFindings } from './assess.ts'
import type { Assessment } from './assess.ts'
import type { OutputFile } from './output-stage.ts'

/** Everything below data/: for scripts, spreadsheets and editors. */
export function dataOutputs(assessment: Assessment, contexts: readonly PageContext[]): OutputFile[] {
  const json = (name: string, value: object): OutputFile => ({
    path: `data/${name}`,
    content: `${JSON.stringify(value, undefined, 2)}\n`
  })
  return [
    json('findings.json', findingsJson(allFindings(assessment), assessment.on)),
    json('findings.sarif', findingsSarif(allFindings(assessment), CHECKS, toolVersion())),
    json('fleet.json', fleetJson(contexts, assessment.on)),
    json('site.schema.json', siteJsonSchema())
  ]
}
