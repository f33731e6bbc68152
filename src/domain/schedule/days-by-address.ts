import { absent } from '../../base/absent.ts'
import { textOf } from '../inputs.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { groupsOf, parseAddressDays, parseHouseNumber } from './address-days.ts'
import type { AddressDays, HouseNumber } from './address-days.ts'
import { writeDayRule } from './text.ts'

/** The days that a rule by house number gives, with the reason in words. Undefined where no group has the number. */
export function daysByAddressWorked(address: AddressDays, houseNumber: HouseNumber): Worked<string> | undefined {
  const [group] = groupsOf(address, houseNumber)
  if (!group) return undefined
  const days = writeDayRule(group.days)
  const lead =
    houseNumber === 'none'
      ? 'There is no street address'
      : `House number ${houseNumber} ends in ${houseNumber % 10}, a digit of ${group.digits.join(', ')}`
  return { value: days, steps: [`${lead}: ${days}.`] }
}

export const daysByAddressCard: Calculation = {
  name: 'days-by-address',
  title: 'Watering days by house number',
  does: 'Which days a watering rule names for a place, where it goes by the last digit of the house number.',
  inputs: {
    groups: {
      kind: { is: 'text' },
      does: 'The groups with their days: 0-1: Mon; 2-3: Tue; odd: odd dates; none: Wed'
    },
    number: { kind: { is: 'text' }, does: 'House number, or none where there is no street address' }
  },
  outputs: { days: { does: 'The days', unit: '' } },
  sources: ['universal-city-stage-1', 'site-record'],
  limits:
    'The last digit of the number counts; a letter after it does not. Where a digit stands in two groups the first written counts, and schedule/rule-not-judged says so.',
  run: inputs => {
    const houseNumber = parseHouseNumber(textOf(inputs, 'number'))
    if (houseNumber === undefined) return absent('The house number is not understood: write 1204, or none.')
    const parts = textOf(inputs, 'groups')
      .split(';')
      .filter(part => part.trim() !== '')
    const pairs = parts.map(part => part.split(/:(.*)/su).slice(0, 2) as [string, string])
    const address = parseAddressDays(Object.fromEntries(pairs))
    if (!address) return absent('The groups are not understood: write 0-1: Mon; 2-3: Tue; none: Wed.')
    const worked = daysByAddressWorked(address, houseNumber)
    return worked ? { value: { days: worked.value }, steps: worked.steps } : absent('No group has this number.')
  },
  example: {
    inputs: { groups: '0-1: Mon; 2-3: Tue; 4-5: Wed; 6-7: Thu; 8-9: Fri; none: Wed', number: '1204' },
    outputs: { days: 'Wed' }
  }
}
