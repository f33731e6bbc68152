import type { z } from 'zod'
import { ADDRESS_GROUP, parseAddressGroup, parseHouseNumber } from '../../domain/schedule/address-days.ts'
import type { AddressDays, HouseNumber } from '../../domain/schedule/address-days.ts'
import type { DayRule } from '../../domain/schedule/program.ts'
import { field, taken, wrong } from './field.ts'
import { table } from './record.ts'
import { dayRule } from './times.ts'

/** "1204", "14b", "none". */
export function houseNumber(does: string, example: string): z.ZodType<HouseNumber> {
  return field({ does, example }, { type: ['integer', 'string'] }, value => {
    const number = parseHouseNumber(String(value))
    return number === undefined
      ? wrong('file/not-understood', { expected: 'a house number, or none', example })
      : taken(number)
  })
}

export const daysByAddress = table(
  ADDRESS_GROUP,
  dayRule('On which days watering is allowed for the addresses of the group.', 'Mon'),
  {
    does: 'Days by the last digit of the house number: 0-1, 2, odd, even; none for places without a street address.',
    example: '{ 0-1: Mon, 2-3: Tue, 4-5: Wed, 6-7: Thu, 8-9: Fri, none: Wed }'
  }
)

export function makeAddressDays(raw: Readonly<Record<string, DayRule>>): AddressDays {
  return {
    groups: Object.entries(raw).flatMap(([group, days]) => {
      const digits = parseAddressGroup(group)
      return digits ? [{ digits, days }] : []
    })
  }
}
