import type { Value } from './blocks.ts'
import { daysText } from './days.ts'
import { stated } from './values.ts'
import { daysByNumber } from '../domain/schedule/address-days.ts'
import type { AddressGroup } from '../domain/schedule/address-days.ts'
import { showWindow } from '../units/clock.ts'
import { showStated } from '../units/show.ts'
import type { Site, WateringRule } from '../model/site.ts'
import type { Words } from '../words/words.ts'

interface Row {
  readonly label: string
  readonly value: Value
}

/** A watering rule in plain words, one row for each thing it says. */
export function ruleRows(rule: WateringRule, site: Site, words: Words): Row[] {
  const w = words.binder.site
  const r = words.totals.rule
  const by = rule.authority ? ` (${rule.authority})` : ''
  const row = (label: string, text: string | undefined): Row[] =>
    text === undefined || text === '' ? [] : [{ label, value: stated(text + by) }]
  const windows = (all: WateringRule['windows']) => all.map(one => showWindow(one, site.units)).join(', ')
  const holds = [
    ...(rule.dates ? [r.dates(rule.dates.from, rule.dates.to)] : []),
    ...(rule.when ? [r.when[rule.when]] : [])
  ]
  return [
    ...row(w.windows, windows(rule.windows)),
    ...row(w.barred, windows(rule.barred ?? [])),
    ...row(w.days, rule.days ? daysText(rule.days, words) : addressDays(rule, site, words)),
    ...row(r.cap, rule.atMost ? r.capText(showStated(rule.atMost)) : undefined),
    ...row(r.except, rule.except?.join(', ')),
    ...row(r.holds, holds.join(', ')),
    ...row(r.afterRain, rule.afterRain ? r.afterRainText(showStated(rule.afterRain)) : undefined),
    ...(rule.note ? [{ label: w.rule, value: stated(rule.note) }] : [])
  ]
}

/** The site's own days where its number is known, else all groups. */
function addressDays({ daysByAddress }: WateringRule, { location }: Site, words: Words): string | undefined {
  if (!daysByAddress) return undefined
  const r = words.totals.rule
  const number = location?.houseNumber
  const own = number === undefined ? undefined : daysByNumber(daysByAddress, number)
  if (own && number !== undefined) return r.daysByAddress(daysText(own, words), number)
  const group = ({ digits, days }: AddressGroup) =>
    digits.length === 0 ? r.groupNone(daysText(days, words)) : r.group(digits.join(', '), daysText(days, words))
  return daysByAddress.groups.map(group).join('; ')
}
