import type { Block, Section, TableBlock, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { batterySets, voltValues } from '../battery-sets.ts'
import { cautionBlock } from '../cautions.ts'
import { stationReadings } from '../expected-readings.ts'
import type { ReadingHere, StationReadings } from '../expected-readings.ts'
import { bandText, cautionLine, faultSteps } from '../fault-steps.ts'
import type { FaultStep } from '../fault-steps.ts'
import { flowValue } from '../flow-value.ts'
import { computed, figure, measured, notComputed, plate, stated } from '../values.ts'
import { isAbsent } from '../../base/absent.ts'
import { BAND_C } from '../../domain/wire/expected-reading.ts'
import { show } from '../../units/show.ts'

/** Fault finding in order, with the figures of this site where it states them. */
export function faultFindingSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.faults
  const steps = faultSteps(context, site)
  return {
    id: 'faults',
    title: words.binder.sections.faults,
    newPage: true,
    blocks: [
      { kind: 'paragraph', text: `${w.lead} ${w.first}` },
      {
        kind: 'table',
        columns: [w.symptom, w.lookFirst, w.then].map(label => ({ label })),
        rows: w.symptoms.map(row => row.map(text => stated(text))),
        notes: [w.symptomNote]
      },
      ...steps.flatMap((step, index) => stepBlocks(step, index + 1, context))
    ]
  }
}

function stepBlocks(step: FaultStep, number: number, context: PageContext): Block[] {
  const w = context.words.faults
  return [
    { kind: 'heading', id: `fault-${number}`, text: step.title },
    ...wholeCautions(step, context),
    {
      kind: 'fault-step',
      why: w.why(step.why, step.needs),
      ...shortCautions(step, context),
      doLead: w.doLead,
      todo: step.todo,
      seenLead: w.signs,
      seen: step.seen.map(([sign, means]) => w.signLine(sign, means))
    },
    ...siteTable(step, context)
  ]
}

/** One that the site did not call for stands nowhere else, so it stands here whole. */
function wholeCautions({ cautions }: FaultStep, { site, plan, words }: PageContext): Block[] {
  const chosen = new Set(plan.cautions.map(one => one.id))
  return cautions.filter(id => !chosen.has(id)).map(id => cautionBlock(site, id, words.cautions))
}

/** In one line those that Safety first has in full. */
function shortCautions({ cautions }: FaultStep, context: PageContext): { readonly caution?: string } {
  const chosen = new Set(context.plan.cautions.map(one => one.id))
  const lines = cautions.filter(id => chosen.has(id)).map(id => cautionLine(id, context))
  return lines.length > 0 ? { caution: lines.join(' ') } : {}
}

function siteTable({ id }: FaultStep, context: PageContext): Block[] {
  if (id === 'battery') return batteryTable(context)
  if (id === 'loop') return [readingTable(context)]
  return []
}

function batteryTable(context: PageContext): TableBlock[] {
  const { plan, words } = context
  const w = words.faults.battery
  const sets = batterySets(
    [...plan.batteries.values()].filter(one => one.state !== 'none'),
    context
  )
  if (sets.length === 0) return []
  const rows = sets.map((set): Value[] => {
    const { newRest, change, failed } = voltValues(set, words)
    return [stated(set.name), newRest, change, failed, stated(set.controllers, true)]
  })
  return [
    {
      kind: 'table',
      caption: w.caption,
      columns: [w.set, w.newRest, w.change, w.failed, w.controllers].map(label => ({ label })),
      rows,
      notes: [w.note]
    }
  ]
}

function readingTable(context: PageContext): Block {
  const { site, words } = context
  const w = words.faults.readings
  const all = stationReadings(context, site.stations)
  if (all.length === 0) return { kind: 'not-supplied', text: w.none }
  const right = 'right' as const
  return {
    kind: 'table',
    caption: w.caption,
    columns: [
      { label: w.station },
      { label: w.zone },
      { label: w.wires, align: right },
      { label: w.controller, align: right },
      { label: w.band, align: right },
      { label: w.valve, align: right },
      { label: w.band, align: right },
      { label: w.flow, align: right }
    ],
    rows: all.flatMap(one => [readingRow(one, context), ...closingRow(one, context)]),
    notes: readingNotes(all, context)
  }
}

function readingRow({ station, loop, coil }: StationReadings, context: PageContext): Value[] {
  const { site, plan, words } = context
  const loopOhm = plan.wires.get(station.id)?.loopOhm
  return [
    stated(station.id, true),
    stated(station.zone),
    loopOhm === undefined
      ? notComputed(words, words.binder.notSupplied)
      : figure(loopOhm, 'resistance', site.units, words, 'wire-loop'),
    ...both(loop, false),
    ...both(coil, station.valves.length === 1),
    flowValue(station, site.units, words)
  ]

  function both({ expected, closeout }: ReadingHere, ofPlate: boolean): Value[] {
    if (isAbsent(expected)) return [notComputed(words, expected.reason), notComputed(words, expected.reason)]
    const text = show(expected.value.expectedOhm, 'resistance', site.units)
    const band = computed(bandText(expected.value, context), 'expected-reading')
    if (closeout) return [{ ...measured(text), note: words.faults.readings.around(closeout) }, band]
    return [ofPlate ? plate(text) : computed(text, 'expected-reading'), band]
  }
}

/** The second winding of a coil with three leads, in a row of its own. */
function closingRow({ station, closing }: StationReadings, context: PageContext): Value[][] {
  const { site, words } = context
  if (!closing) return []
  const none = stated(words.units.none)
  const both = ({ expected, closeout }: ReadingHere): Value[] => {
    if (isAbsent(expected)) return [notComputed(words, expected.reason), notComputed(words, expected.reason)]
    const text = show(expected.value.expectedOhm, 'resistance', site.units)
    const value = closeout
      ? { ...measured(text), note: words.faults.readings.around(closeout) }
      : computed(text, 'expected-reading')
    return [value, computed(bandText(expected.value, context), 'expected-reading')]
  }
  return [
    [stated(station.id, true), stated(words.units.toClose), none, ...both(closing.loop), ...both(closing.coil), none]
  ]
}

function readingNotes(all: readonly StationReadings[], { site, words }: PageContext): string[] {
  const w = words.faults.readings
  const degrees = (temperatureC: number): string => show(temperatureC, 'temperature', site.units)
  const named = (keep: (one: StationReadings) => boolean): string =>
    all
      .filter(keep)
      .map(one => one.station.id)
      .join(', ')
  const isOff = ({ expected }: ReadingHere): boolean => !isAbsent(expected) && expected.value.baselineOff === true
  const halves = (one: StationReadings) => [one.loop, one.coil, ...(one.closing ? Object.values(one.closing) : [])]
  const off = named(one => halves(one).some(isOff))
  const several = named(one => one.station.valves.length > 1)
  return [
    w.bandNote(degrees(BAND_C.least), degrees(BAND_C.most)),
    ...(off ? [w.offNote(off)] : []),
    ...(several ? [w.coilsNote(several)] : [])
  ]
}
