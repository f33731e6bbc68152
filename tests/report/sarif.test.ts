import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import ajvDraft4 from 'ajv-draft-04'
import { expect, it } from 'vitest'
import { allFindings, assessFleet } from '../../src/build/assess.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { findingsSarif } from '../../src/report/sarif.ts'
import { date } from '../../src/units/date.ts'

// The published schema of SARIF 2.1.0 (OASIS), as a package ships it. It is written for JSON Schema draft 4; formats aside.
const require = createRequire(import.meta.url)
const packaged = require.resolve('@microsoft/jest-sarif').replace(/lib[/\\]index\.js$/u, '')
const schema = JSON.parse(readFileSync(join(packaged, 'lib/schemas/sarif-2.1.0-rtm.5.json'), 'utf8')) as object
const validate = new ajvDraft4.default({
  strict: false,
  validateFormats: false,
  unicodeRegExp: false,
  allErrors: true
}).compile(schema)

const findings = allFindings(assessFleet('sites', date('2026-05-01')))

it('the findings of the demo sites are valid by the published schema of SARIF 2.1.0', () => {
  const log = JSON.parse(JSON.stringify(findingsSarif(findings, CHECKS, '0.1.0'))) as object
  expect(validate(log), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true)
  expect(findings.length).toBeGreaterThan(3)
})

it('the schema sees a level that SARIF does not have', () => {
  const log = JSON.parse(
    JSON.stringify(findingsSarif(findings, CHECKS, '0.1.0')).replace('"level":"error"', '"level":"fatal"')
  ) as object
  expect(validate(log)).toBe(false)
})

it('names each rule once and points every result at its rule', () => {
  const { runs } = findingsSarif(findings, CHECKS, '0.1.0') as {
    runs: [{ tool: { driver: { rules: { id: string }[] } }; results: { ruleId: string; ruleIndex: number }[] }]
  }
  const ids = runs[0].tool.driver.rules.map(one => one.id)
  expect(new Set(ids).size).toBe(ids.length)
  for (const one of runs[0].results) expect(ids[one.ruleIndex]).toBe(one.ruleId)
})

it('is valid without any finding', () => {
  expect(validate(JSON.parse(JSON.stringify(findingsSarif([], CHECKS, '0.1.0'))))).toBe(true)
})
