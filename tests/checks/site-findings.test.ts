import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { sum } from '../../src/base/collections.ts'
import { assessFleet } from '../../src/build/assess.ts'
import type { AssessedSite } from '../../src/build/assess.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { batteryKind } from '../../src/domain/power/battery-kind.ts'
import { date } from '../../src/units/date.ts'
import { told } from './expectation.ts'
import { COPY_FILE, SHARED_FILE, SITES, matching, quietTitle, readExpected, rowTitle } from './site-findings.ts'
import type { ExpectedSite } from './site-findings.ts'

/** Areas whose checks are still being written. A row of any other area must hold. */
const STILL_COMING: readonly string[] = ['closeout']

const expected = readExpected()
const fleet = assessFleet(SITES, date(expected.on))
const known = new Set(CHECKS.map(check => check.card.code))

test('the copy kept here is, to the letter, what was agreed, where that is at hand', () => {
  const agreed = existsSync(SHARED_FILE) ? SHARED_FILE : COPY_FILE
  expect(readFileSync(COPY_FILE, 'utf8')).toBe(readFileSync(agreed, 'utf8'))
})

describe.each(Object.entries(expected.sites).map(([id, site]) => ({ id, site })))('$id', ({ id, site }) => {
  const assessed = fleet.sites.find(one => one.id === id)
  const findings = assessed?.findings ?? []
  const waiting = waitingRows(site)

  test('is there, can be understood, and has rows to hold', () => {
    expect(assessed?.site, told(findings)).toBeDefined()
    expect(site.fires.length).toBeGreaterThan(0)
  })

  // The title names them, so that whoever reads the run sees what is not held yet.
  test(`waits for no check but those still being written: ${waiting.join(', ') || 'none'}`, () => {
    expect(waiting.filter(row => !STILL_COMING.includes(row.split('/')[0] ?? ''))).toEqual([])
  })

  test.each(site.fires.filter(isHeld).map(row => ({ title: rowTitle(row), row })))('fires: $title', ({ row }) => {
    const found = matching(row, findings)
    const near = findings.filter(({ code }) => row.codes.includes(code))
    const wanted = `${JSON.stringify(row)}; found:\n${told(near)}`
    if (row.count === undefined) expect(found.length, wanted).toBeGreaterThan(0)
    else expect(found.length, wanted).toBe(row.count)
  })

  test.each(site.quiet.filter(isHeld).map(row => ({ title: quietTitle(row), row })))('quiet: $title', ({ row }) => {
    const { code, subject } = row
    const found = findings.filter(one => one.code === code && (subject === undefined || one.subject === subject))
    expect(found.length, told(found)).toBe(0)
  })
})

const withCells = Object.entries(expected.sites).flatMap(([id, { due_within_60_days: due }]) =>
  due ? [{ id, due }] : []
)

test.each(withCells)('$id needs within 60 days the cells that were agreed, and no others', ({ id, due }) => {
  const assessed = fleet.sites.find(one => one.id === id)
  for (const [size, count] of Object.entries(due.battery)) expect(cellsDue(assessed, size), size).toBe(count)
  const away = due.out_of_service_excluded
  expect(away.filter(one => assessed?.plan?.batteries.get(one)?.state !== 'none')).toEqual([])
})

test('the steps at the harbor, where all is well, have nothing above a note', () => {
  const site = fleet.sites.find(one => one.id === 'harbour-steps')
  const above = (site?.findings ?? []).filter(one => one.severity !== 'note')
  expect(site?.site, 'sites/harbour-steps').toBeDefined()
  expect(above.length, told(above)).toBe(0)
})

/** True where a check of the list answers for the row. */
function isHeld(row: { readonly codes: readonly string[] } | { readonly code: string }): boolean {
  return 'codes' in row ? row.codes.some(code => known.has(code)) : known.has(row.code)
}

function waitingRows({ fires, quiet }: ExpectedSite): readonly string[] {
  return [
    ...fires.filter(row => !isHeld(row)).map(rowTitle),
    ...quiet.filter(row => !isHeld(row)).map(row => `${quietTitle(row)} (quiet)`)
  ]
}

/** Cells of a size in sets that are overdue or due soon. */
function cellsDue(assessed: AssessedSite | undefined, size: string): number {
  const sets = [...(assessed?.plan?.batteries.values() ?? [])]
  const due = sets.filter(one => one.state === 'due-soon' || one.state === 'overdue')
  return sum(due.filter(one => batteryKind(one.kind)?.size === size).map(one => one.count))
}
