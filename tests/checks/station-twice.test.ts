import { expect, it } from 'vitest'
import { CHECKS } from '../../src/checks/list.ts'
import { runChecks } from '../../src/checks/run.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

it.each([
  ['two zones in use', 'K1/1, zone: Z1', 'K1/1, zone: Z2', 'controller/station-shared'],
  ['one zone written twice', 'K1/1, zone: Z1', 'K1/01, zone: Z1', 'file/duplicate-id'],
  ['no zone named', 'K1/1', 'K1/1', 'file/duplicate-id'],
  ['one of the two out of service', 'K1/1, zone: Z1, out-of-service: paved', 'K1/1, zone: Z2', 'file/duplicate-id']
])('a station that stands twice is told of once: %s', (_, one, other, code) => {
  const loaded = loadSite(baseSite(`stations:\n  - { id: ${one} }\n  - { id: ${other} }\n`))
  if (!loaded.site) throw new Error('not understood')
  const plan = makePlan(loaded.site, date(BASE_ON))
  const found = runChecks({ loaded, plan, fleet: { sites: [loaded.site], register: [] } }, CHECKS)
  const told = found.filter(({ message }) => /stands twice|is claimed by/u.test(message))
  expect(told.map(finding => finding.code)).toEqual([code])
})
