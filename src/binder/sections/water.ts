import type { Block, Section, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, figure, notComputed, stated } from '../values.ts'
import { climateBlocks } from './water-climate.ts'
import { needBlocks } from './water-need.ts'
import { isAbsent, isPresent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { roundedText, show } from '../../units/show.ts'
import type { Station } from '../../model/site.ts'
import type { IntakePlan, WaterPlan } from '../../plan/plan.ts'

/** What the plants need, what the programs give, and whether it fits the ground and the night. */
export function waterSection(context: PageContext): Section {
  const { site, plan, words } = context
  const zones = site.stations.flatMap(station => {
    const water = plan.water.get(station.id)
    return water && station.outOfService === undefined ? [{ station, water }] : []
  })
  const known = zones.filter(({ water }) => water.months.some(month => isPresent(month.needM)))
  const blocks: Block[] = [
    { kind: 'paragraph', text: words.water.lead },
    ...climateBlocks(context),
    ...needBlocks(zones, context),
    glance(zones, context),
    ...nights(context),
    ...(known.length > 0
      ? [needTable(known, context)]
      : [{ kind: 'not-supplied' as const, text: words.binder.notSupplied }])
  ]
  return {
    id: 'water',
    title: words.water.title,
    newPage: true,
    notSupplied: known.length === 0,
    blocks: zones.length === 0 ? [{ kind: 'not-supplied', text: words.binder.notSupplied }] : blocks
  }
}

interface Zone {
  readonly station: Station
  readonly water: WaterPlan
}

const names = ({ id, zone, waters }: Station): Value[] => [
  stated(id, true),
  stated([zone === id ? '' : zone, waters].filter(Boolean).join(' · ') || '–')
]

function glance(zones: readonly Zone[], { site, words }: PageContext): TableBlock {
  const w = words.water
  const right = 'right' as const
  const minutes = (seconds: number): string => show(seconds, 'minutes', site.units)
  return {
    kind: 'table',
    wide: true,
    caption: w.glance,
    columns: [
      { label: w.station },
      { label: w.waters },
      { label: w.rate, align: right },
      { label: w.cycle, align: right },
      { label: w.cycleMost, align: right },
      { label: w.watering, align: right },
      { label: w.holds, align: right }
    ],
    rows: zones.map(({ station, water }) => [
      ...names(station),
      figure(
        water.rateMPerS,
        'rate',
        site.units,
        words,
        water.rateBy === 'catch-cans' ? 'uniformity' : 'application-rate'
      ),
      water.longestSet ? stated(minutes(water.longestSet.cycle.seconds)) : stated('–'),
      longestCycle(water.intake, minutes, w.noLimit),
      figure(water.appliedM, 'depth', site.units, words, 'soil-reservoir'),
      isAbsent(water.reservoir)
        ? notComputed(words, water.reservoir.reason)
        : computed(show(water.reservoir.holdsM, 'depth', site.units), 'soil-reservoir')
    ])
  }
}

/** Drip has no such limit: it is judged by what the root zone takes up. */
function longestCycle(intake: Maybe<IntakePlan>, minutes: (seconds: number) => string, noLimit: string): Value {
  if (isAbsent(intake) || isAbsent(intake.longestS)) return stated('–')
  return computed(typeof intake.longestS === 'number' ? minutes(intake.longestS) : noLimit, 'cycle-soak')
}

function needTable(zones: readonly Zone[], { words }: PageContext): TableBlock {
  const w = words.water
  const minutes = (seconds: number): string => (seconds === 0 ? '–' : roundedText(seconds / 60, 1))
  return {
    kind: 'table',
    wide: true,
    caption: w.needed,
    // Named once below: a raised mark beside each figure could be read as a digit of it.
    notes: [w.neededBy],
    columns: [
      { label: w.station },
      { label: w.waters },
      { label: words.advice.rowWhat },
      ...words.time.months.map(label => ({ label, align: 'right' as const }))
    ],
    rows: zones.flatMap(({ station, water }) => [
      [
        ...names(station),
        stated(w.need),
        ...water.months.map(({ needS, events }) =>
          computed(events === 0 || isAbsent(needS) ? '–' : minutes(needS), 'run-time')
        )
      ],
      [
        stated(''),
        stated(''),
        stated(w.set),
        ...water.months.map(({ setS, events }) => stated(events === 0 ? '–' : minutes(setS)))
      ]
    ])
  }
}

function nights({ site, plan, words }: PageContext): Block[] {
  if (plan.nights.length === 0) return []
  const w = words.water
  const right = 'right' as const
  const minutes = (seconds: number): Value => computed(show(seconds, 'minutes', site.units), 'run-time')
  const worst = new Map<string, (typeof plan.nights)[number]>()
  for (const night of plan.nights) {
    const known = worst.get(night.id)
    if (!known || night.needS > known.needS) worst.set(night.id, night)
  }
  return [
    {
      kind: 'table',
      wide: true,
      caption: w.nights,
      columns: [
        { label: w.nightOf },
        { label: w.month },
        { label: w.nightNeed, align: right },
        { label: w.allowed, align: right },
        { label: w.short, align: right }
      ],
      rows: [...worst.values()].map(({ id, month, needS, allowedS }) => [
        stated(id, true),
        stated(words.boxPage.months[month - 1] ?? ''),
        minutes(needS),
        minutes(allowedS),
        needS > allowedS
          ? { ...computed(show(needS - allowedS, 'minutes', site.units), 'run-time'), state: 'bad' as const }
          : { ...computed(w.fits, 'run-time'), state: 'good' as const }
      ])
    }
  ]
}
