import type { DayRule } from './program.ts'
import { parseDayRule } from './text.ts'

/** The number in the street address; "none" is a place without one: a median, an entryway. */
export type HouseNumber = number | 'none'

/** Days of a rule that go by the last digit of the house number. */
export interface AddressDays {
  /** In the order written. */
  readonly groups: readonly AddressGroup[]
}

export interface AddressGroup {
  /** Last digits, 0 to 9; empty for places without a street address. */
  readonly digits: readonly number[]
  readonly days: DayRule
}

/** What a group of addresses may be called. */
export const ADDRESS_GROUP =
  /^(?:none|no street address|odd|even|\d(?:\s*[-–]\s*\d)?(?:\s*,\s*\d(?:\s*[-–]\s*\d)?)*)$/iu

/** "0-1", "2, 4", "even", "odd", "none". Undefined for anything else. */
export function parseAddressGroup(text: string): readonly number[] | undefined {
  const written = text.trim().toLowerCase()
  if (written === 'none' || written === 'no street address') return []
  if (written === 'even') return [0, 2, 4, 6, 8]
  if (written === 'odd') return [1, 3, 5, 7, 9]
  if (!ADDRESS_GROUP.test(written)) return undefined
  const digits = written.split(',').flatMap(part => {
    const [from, to] = part.split(/[-–]/u).map(Number)
    return range(from ?? 0, to ?? from ?? 0)
  })
  return digits.length === 0 ? undefined : [...new Set(digits)]
}

/** The days for a house number: 1204 ends in 4. Undefined where no group has it. The first group that has it counts. */
export function daysByNumber({ groups }: AddressDays, houseNumber: HouseNumber): DayRule | undefined {
  return groupsOf({ groups }, houseNumber)[0]?.days
}

/** More than one where a digit is named twice. */
export function groupsOf({ groups }: AddressDays, houseNumber: HouseNumber): readonly AddressGroup[] {
  return groups.filter(({ digits }) =>
    houseNumber === 'none' ? digits.length === 0 : digits.includes(houseNumber % 10)
  )
}

/** "1204", "14b", "none", "no street address". */
export function parseHouseNumber(text: string): HouseNumber | undefined {
  const written = text.trim().toLowerCase()
  if (written === 'none' || written === 'no street address') return 'none'
  const number = /^(\d{1,7})\s?[a-z]?$/u.exec(written)?.[1]
  return number === undefined ? undefined : Number(number)
}

/** Groups from what is written: `{ 0-1: Mon, none: Wed }`. Undefined where a group or its days are not understood. */
export function parseAddressDays(written: Readonly<Record<string, string>>): AddressDays | undefined {
  const groups: AddressGroup[] = []
  for (const [group, text] of Object.entries(written)) {
    const [digits, days] = [parseAddressGroup(group), parseDayRule(text)]
    if (!digits || !days) return undefined
    groups.push({ digits, days })
  }
  return { groups }
}

function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index)
}
