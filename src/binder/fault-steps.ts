import type { BoxPage } from './pages.ts'
import type { PageContext } from './context.ts'
import { batterySets, voltTexts } from './battery-sets.ts'
import { daysText } from './days.ts'
import { stationReadings } from './expected-readings.ts'
import type { ReadingHere, StationReadings } from './expected-readings.ts'
import { rangeOf } from './range.ts'
import { handlingLines, hasThreeLeads, programLinesOf, pumpLines } from './unit-facts.ts'
import { isAbsent } from '../base/absent.ts'
import { groupBy } from '../base/collections.ts'
import { cautionCard } from '../domain/safety/cautions.ts'
import type { CautionId } from '../domain/safety/cautions.ts'
import type { ExpectedReading } from '../domain/wire/expected-reading.ts'
import type { Controller, Station } from '../model/site.ts'
import { showClock } from '../units/clock.ts'
import { show, showNumber, showStated } from '../units/show.ts'
import type { FaultStepId } from '../words/en-US/faults.ts'

export interface FaultStep {
  readonly id: FaultStepId
  readonly title: string
  readonly needs: string
  readonly why: string
  readonly cautions: readonly CautionId[]
  readonly todo: readonly string[]
  readonly seen: readonly (readonly [sign: string, means: string])[]
}

interface Here {
  readonly stations: readonly Station[]
  readonly controllers: readonly Controller[]
}

/** What can hurt a person or the kit in a step; it stands before what to do. */
const CAUTIONS: Readonly<Record<FaultStepId, readonly CautionId[]>> = {
  'by-hand': ['stored-pressure'],
  battery: ['battery-handling'],
  coil: [],
  pulse: ['stored-pressure', 'ac-on-latching'],
  loop: [],
  polarity: ['polarity'],
  program: [],
  flow: ['valve-stays-open']
}

/** Steps at the terminals of a controller, where an adapter or a pump relay may bring mains. */
const AT_TERMINALS: readonly FaultStepId[] = ['battery', 'pulse', 'loop']

/** The steps in the order in which they are worked through, with what the site says of these stations and controllers. */
export function faultSteps(context: PageContext, here: Here): FaultStep[] {
  const { steps } = context.words.faults
  const mains = here.controllers.some(one => one.power === 'adapter' || one.pumpStart === true)
  const ids = Object.keys(steps) as FaultStepId[]
  return ids.map((id, index) => ({
    id,
    ...steps[id],
    title: context.words.faults.stepTitle(index + 1, steps[id].title),
    cautions: [...(mains && AT_TERMINALS.includes(id) ? (['mains'] as const) : []), ...CAUTIONS[id]],
    todo: [...steps[id].todo, ...siteLines(id, context, here)]
  }))
}

function siteLines(id: FaultStepId, context: PageContext, here: Here): string[] {
  if (id === 'by-hand') return pumpLines(context, here.controllers)
  if (id === 'loop') return halvesLine(context, here.stations)
  if (id === 'battery') return pulseLines(context, here.controllers)
  if (id === 'coil') return here.stations.some(hasThreeLeads) ? [context.words.faults.threeLeads] : []
  if (id === 'program')
    return [
      ...programLines(context, here.controllers),
      ...handlingLines(context, here.controllers),
      ...programLinesOf(context, here.controllers)
    ]
  return []
}

function halvesLine({ words }: PageContext, stations: readonly Station[]): string[] {
  const three = stations.filter(hasThreeLeads).map(one => one.id)
  return three.length > 0 ? [words.units.line.halves(rangeOf(three))] : []
}

function pulseLines({ words }: PageContext, controllers: readonly Controller[]): string[] {
  const stated = controllers.flatMap(({ id, sheet }) =>
    sheet?.pulseVolts ? [{ id, volts: showStated(sheet.pulseVolts) }] : []
  )
  return [...groupBy(stated, one => one.volts)].map(([volts, alike]) =>
    words.faults.battery.pulse(rangeOf(alike.map(one => one.id)), volts)
  )
}

function programLines({ site, words }: PageContext, controllers: readonly Controller[]): string[] {
  const told = controllers.flatMap(({ id, programs, clock }) => {
    const texts = [
      ...programs.map(one => {
        const starts = one.starts.map(start => showClock(start, site.units)).join(', ')
        return words.boxPage.daysLine(one.id, daysText(one.days, words), starts)
      }),
      ...(clock ? [words.binder.controllers.clocks[clock.daylightSaving]] : [])
    ]
    return texts.length > 0 ? [{ id, text: texts.join('; ') }] : []
  })
  return [...groupBy(told, one => one.text)].map(([text, alike]) =>
    words.faults.programLine(rangeOf(alike.map(one => one.id)), text)
  )
}

/** The signal word, what can happen and what to do instead, in one line. */
export function cautionLine(id: CautionId, { words }: PageContext): string {
  const { short, instead } = words.cautions.texts[id]
  return words.faults.caution(words.cautions.signals[cautionCard(id).signal], short, instead)
}

/** The same steps boiled down for one box, with its own figures; none where nothing is wired here. */
export function boxFaults(
  context: PageContext,
  stations: readonly Station[],
  controllers: readonly Controller[]
): BoxPage['faults'] {
  if (stations.length === 0) return []
  const { words } = context
  return faultSteps(context, { stations, controllers }).map(({ id, title, cautions }) => {
    const { brief } = words.faults.steps[id]
    return {
      title,
      steps: [
        ...(cautions.includes('mains') ? [cautionLine('mains', context)] : []),
        ...brief.cautions.map(([caution, text]) =>
          words.faults.briefCaution(words.cautions.signals[cautionCard(caution).signal], text)
        ),
        ...brief.todo,
        ...ownFigures(id, context, { stations, controllers }),
        ...brief.seen
      ]
    }
  })
}

function ownFigures(id: FaultStepId, context: PageContext, { stations, controllers }: Here): string[] {
  const { words, plan } = context
  const w = words.faults
  if (id === 'battery') {
    const batteries = controllers.flatMap(one => plan.batteries.get(one.id) ?? []).filter(one => one.state !== 'none')
    return batterySets(batteries, context).map(set => {
      const { newRest = '', change = '', failed = '' } = voltTexts(set, words)
      if (set.sheetChange !== undefined) return w.battery.bySheet(set.name, set.sheetChange, newRest, failed)
      return set.volts ? w.battery.line(set.name, newRest, change, failed) : w.battery.unknown(set.name)
    })
  }
  const readings = stationReadings(context, stations)
  if (id === 'coil')
    return [
      ...(stations.some(hasThreeLeads) ? [w.threeLeads] : []),
      ...readingLines(endReadings(readings, 'coil', context), context)
    ]
  if (id === 'by-hand') return pumpLines(context, controllers)
  // Radio and sensors stand under what it should do.
  if (id === 'program') return programLinesOf(context, controllers)
  if (id === 'loop') return readingLines(endReadings(readings, 'loop', context), context)
  return []
}

/** Of coils with three leads both halves, each under its own name. */
function endReadings(
  readings: readonly StationReadings[],
  end: 'loop' | 'coil',
  { words }: PageContext
): { readonly id: string; readonly here: ReadingHere }[] {
  const named = ({ station }: StationReadings): string => words.units.line.toClose(station.id)
  return [
    ...readings.map(one => ({ id: one.station.id, here: one[end] })),
    ...readings.flatMap(one => (one.closing ? [{ id: named(one), here: one.closing[end] }] : []))
  ]
}

/** A line for each band, with all stations that have it. */
function readingLines(
  readings: readonly { readonly id: string; readonly here: ReadingHere }[],
  context: PageContext
): string[] {
  const w = context.words.faults.readings
  const told = readings.map(({ id, here: { expected } }) => {
    if (isAbsent(expected)) return { id, text: w.unknown(expected.reason) }
    const line = w.line(bandText(expected.value, context))
    return { id, text: expected.value.baselineOff ? `${line} ${w.off}` : line }
  })
  return [...groupBy(told, one => one.text)].map(([text, alike]) => `${alike.map(one => one.id).join(', ')}: ${text}`)
}

/** "3.52 to 5.28 Ω". */
export function bandText({ leastOhm, mostOhm }: ExpectedReading, { site, words }: PageContext): string {
  return words.faults.readings.range(
    showNumber(leastOhm, 'resistance', site.units),
    show(mostOhm, 'resistance', site.units)
  )
}
