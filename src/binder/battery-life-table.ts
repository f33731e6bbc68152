import { isAbsent, isPresent } from '../base/absent.ts'
import { sum } from '../base/collections.ts'
import { addDays } from '../units/date.ts'
import { roundedText, show } from '../units/show.ts'
import type { ChargeLife } from '../plan/power-plan.ts'
import type { Block, TableBlock, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { dueReason } from './due-reason.ts'
import type { BatteryGroup } from './battery-groups.ts'
import { computed, notComputed, orNotSupplied, stated } from './values.ts'

const percent = (share: number): string => `${roundedText(share * 100, 0)}\u00a0%`

/** What uses up each set, and on which day by which limit. */
export function batteryLifeBlocks(groups: readonly BatteryGroup[], { site, words }: PageContext): Block[] {
  const w = words.power.life
  const dated = groups.filter(({ battery }) => battery.fitted !== undefined && battery.state !== 'none')
  if (dated.length === 0) return []
  const right = { align: 'right' } as const
  const spent: TableBlock = {
    kind: 'table',
    columns: [
      { label: w.controllers },
      { label: w.counted },
      { label: w.standing, unit: w.perYear, ...right },
      { label: w.pulses, unit: w.inYear, ...right },
      { label: w.pulsesDrawn, unit: w.perYear, ...right },
      { label: w.lost, unit: w.perYear, ...right }
    ],
    rows: dated.map(group => spentRow(group, words)),
    notes: [...temperatureNotes(dated, site.units, words), w.usual]
  }
  const until: TableBlock = {
    kind: 'table',
    columns: [w.controllers, w.byCharge, w.byPulses, w.byInterval, w.dateCode, w.due].map(label => ({ label })),
    rows: dated.map(group => untilRow(group, words))
  }
  return [{ kind: 'heading', id: 'battery-life', text: w.heading }, { kind: 'paragraph', text: w.lead }, until, spent]
}

const NONE = stated('–')
const spentMah = (amount: number): Value => ({ ...computed(roundedText(amount, 0), 'battery-life'), mono: true })

function spentRow(
  { ids, battery: { charge, pulsesByMonth = [] } }: BatteryGroup,
  words: PageContext['words']
): Value[] {
  const pulses = spentMah(sum(pulsesByMonth))
  if (!charge) return [stated(ids, true), notComputed(words, words.power.life.notStated), NONE, pulses, NONE, NONE]
  const { inYearMah, standingMah, pulseMah } = charge
  return [
    stated(ids, true),
    countedValue(charge, words),
    isAbsent(standingMah) ? notComputed(words, standingMah.reason) : spentMah(inYearMah.standing),
    pulses,
    isAbsent(pulseMah) ? notComputed(words, pulseMah.reason) : spentMah(inYearMah.pulses),
    spentMah(inYearMah.lost)
  ]
}

function countedValue(
  { capacityMah, capacityBy, usable, coldest }: ChargeLife,
  { power }: PageContext['words']
): Value {
  const cold = coldest && coldest.share < 1 ? percent(coldest.share) : undefined
  const text = power.life.charge(`${roundedText(capacityMah, 0)}\u00a0mAh`, percent(usable), cold)
  return { ...stated(text), note: power.life.capacityNotes[capacityBy] }
}

function untilRow({ ids, battery }: BatteryGroup, words: PageContext['words']): Value[] {
  const { charge, pulses, fitted, intervalDueOn, dateCode } = battery
  const day = (days: number): Value =>
    fitted === undefined ? NONE : { ...computed(addDays(fitted, days), 'battery-life'), mono: true }
  return [
    stated(ids, true),
    charge ? (charge.beyond ? computed(words.power.life.beyond, 'battery-life') : day(charge.days)) : NONE,
    pulses ? day(pulses.lifeDays) : NONE,
    intervalDueOn ? { ...computed(intervalDueOn, 'due-date'), mono: true } : NONE,
    orNotSupplied(dateCode, words, true),
    stated(dueReason(battery, words))
  ]
}

function temperatureNotes(
  groups: readonly BatteryGroup[],
  units: PageContext['site']['units'],
  { power, boxPage }: PageContext['words']
): readonly string[] {
  const w = power.life
  const charged = groups.flatMap(({ battery }) => (battery.charge ? [battery.charge] : []))
  const known = charged.find(({ temperature }) => isPresent(temperature))?.temperature
  const cold = groups.flatMap(({ ids, battery: { coldest } }) =>
    coldest && coldest.share < 1
      ? [
          w.cold(
            ids,
            boxPage.months[coldest.month - 1] ?? '',
            show(coldest.meanC, 'temperature', units),
            percent(coldest.share)
          )
        ]
      : []
  )
  if (charged.length === 0) return cold
  return [
    isPresent(known) && known ? w.temperature(show(known.meanC, 'temperature', units)) : w.temperatureNotKnown,
    ...cold
  ]
}

/** Pulses of each month of the year, beside the figures. */
export function pulsesTable(groups: readonly BatteryGroup[], { words }: PageContext): TableBlock {
  const w = words.power.pulses
  const right = { align: 'right' } as const
  return {
    kind: 'table',
    caption: w.caption,
    columns: [
      { label: words.power.life.controllers },
      ...words.time.months.map(month => ({ label: month, ...right })),
      { label: w.year, ...right }
    ],
    rows: groups.map(({ ids, battery: { pulsesByMonth = [] } }) => [
      stated(ids, true),
      ...words.time.months.map((_, index) => computed(roundedText(pulsesByMonth[index] ?? 0, 0), 'year-total')),
      computed(roundedText(sum(pulsesByMonth), 0), 'year-total')
    ]),
    notes: [w.note]
  }
}
