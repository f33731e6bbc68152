import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { sum } from '../../src/base/collections.ts'
import { assessFleet } from '../../src/build/assess.ts'
import type { AssessedSite } from '../../src/build/assess.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { batteryKind } from '../../src/domain/power/battery-kind.ts'
import { date } from '../../src/units/date.ts'
import { told } from './expectation.ts'
import { COPY_FILE, SHARED_FILE, SITES, matching, readExpected, rowTitle } from './site-findings.ts'
import type { Row } from './site-findings.ts'

/** Areas whose checks may still be missing from the list; a row of any other area must hold. */
const STILL_COMING: readonly (string | undefined)[] = ['water', 'closeout']

const expected = readExpected()
const fleet = assessFleet(SITES, date(expected.on))
const known = new Set(CHECKS.map(check => check.card.code))

test.runIf(existsSync(SHARED_FILE))('the copy kept here is what was agreed, to the letter', () => {
  expect(readFileSync(COPY_FILE, 'utf8')).toBe(readFileSync(SHARED_FILE, 'utf8'))
})

test('each site that is looked for has rows to hold', () => {
  const empty = Object.entries(expected.sites).filter(([, site]) => site.fires.length === 0)
  expect(empty).toEqual([])
})

describe.each(Object.entries(expected.sites).map(([id, site]) => ({ id, site })))('$id', ({ id, site }) => {
  const assessed = fleet.sites.find(one => one.id === id)
  if (!assessed) {
    test.todo(`waits: there is no ${join('sites', id)} yet, ${site.fires.length} rows`)
    return
  }

  test('can be understood', () => {
    expect(assessed.site, told(assessed.findings)).toBeDefined()
  })

  for (const row of site.fires) {
    const title = rowTitle(row)
    if (isWaiting(row)) test.todo(`waits: ${title}, its check is not in the list yet`)
    else
      test(`fires: ${title}`, () => {
        const found = matching(row, assessed.findings)
        const near = assessed.findings.filter(({ code }) => row.codes.includes(code))
        const wanted = `${JSON.stringify(row)}; found:\n${told(near)}`
        if (row.count === undefined) expect(found.length, wanted).toBeGreaterThan(0)
        else expect(found.length, wanted).toBe(row.count)
      })
  }

  for (const { code, subject } of site.quiet) {
    const title = `${code}${subject === undefined ? '' : ` of ${subject}`}`
    if (!known.has(code)) test.todo(`waits: quiet ${title}, its check is not in the list yet`)
    else
      test(`quiet: ${title}`, () => {
        const found = assessed.findings.filter(
          one => one.code === code && (subject === undefined || one.subject === subject)
        )
        expect(found.length, told(found)).toBe(0)
      })
  }

  const due = site.due_within_60_days
  if (due)
    test('within 60 days it needs these cells and no others', () => {
      for (const [size, count] of Object.entries(due.battery)) expect(cellsDue(assessed, size), size).toBe(count)
      const excluded = due.out_of_service_excluded.filter(one => assessed.plan?.batteries.get(one)?.state !== 'none')
      expect(excluded).toEqual([])
    })
})

test('harbor steps, where all is well, has nothing above a note', () => {
  const site = fleet.sites.find(one => one.id === 'harbour-steps')
  const above = (site?.findings ?? []).filter(one => one.severity !== 'note')
  expect(site, 'sites/harbour-steps').toBeDefined()
  expect(above.length, told(above)).toBe(0)
})

function isWaiting({ codes, area }: Row): boolean {
  return STILL_COMING.includes(area) && codes.every(code => !known.has(code))
}

/** Cells of a size in sets that are overdue or due soon. */
function cellsDue({ plan }: AssessedSite, size: string): number {
  const sets = [...(plan?.batteries.values() ?? [])].filter(one => one.state === 'due-soon' || one.state === 'overdue')
  return sum(sets.filter(one => batteryKind(one.kind)?.size === size).map(one => one.count))
}
