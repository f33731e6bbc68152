import { absent, isAbsent } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { DAY_MINUTES, parseClock, showClock } from '../../units/clock.ts'
import type { ClockMinutes } from '../../units/clock.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { optionalNumber, textOf } from '../inputs.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { DEFAULT_STEP_S } from './controller.ts'
import type { StationEntry } from './controller.ts'
import { sequenceEndS, sequenceProgram } from './sequence.ts'
import type { SequenceSettings, TimedCycle } from './sequence.ts'
import { parseStations } from './stations-text.ts'

export interface RunSequence {
  /** When the last valve shuts, in minutes after the midnight before the start; may pass 1,440. */
  readonly endMinutes: number
  /** Open valve, all stations together. */
  readonly openMinutes: number
  /** From the start to the last closing, delays and waits for a soak among it. */
  readonly lengthMinutes: number
}

/** One start of a program with the time of every opening. */
export function runSequence(
  start: ClockMinutes,
  stations: readonly StationEntry[],
  settings: SequenceSettings,
  system: UnitSystem
): Worked<RunSequence> {
  const sequence = sequenceProgram(stations, settings)
  const lengthMinutes = sequenceEndS(sequence) / 60
  const openMinutes = sum(sequence.map(({ durationS }) => durationS)) / 60
  const endMinutes = start + lengthMinutes
  const closing =
    sequence.length === 0
      ? 'Nothing runs.'
      : `Last valve shuts at ${clockText(endMinutes, system)}; ${show(openMinutes * 60, 'minutes', system)} of open valve.`
  return {
    value: { endMinutes, openMinutes, lengthMinutes },
    steps: [...sequence.map(cycle => cycleLine(cycle, start, stations, system)), closing]
  }
}

function cycleLine(
  timed: TimedCycle,
  start: ClockMinutes,
  stations: readonly StationEntry[],
  system: UnitSystem
): string {
  const { station, cycle, startS, durationS } = timed
  const cycles = stations.find(({ number }) => number === station)?.runTime.cycles ?? 1
  const name = cycles === 1 ? `Station ${station}` : `Station ${station}, cycle ${cycle} of ${cycles}`
  const from = clockText(start + startS / 60, system)
  const to = clockText(start + (startS + durationS) / 60, system)
  return `${name}: ${show(durationS, 'minutes', system)}, ${from} to ${to}.`
}

/** "07:12", "00:05 next day", "02:00 2 days later". */
function clockText(minutes: number, system: UnitSystem): string {
  const later = Math.floor(minutes / DAY_MINUTES)
  const clock = showClock(minutes, system)
  return later === 0 ? clock : later === 1 ? `${clock} next day` : `${clock} ${later} days later`
}

export const runSequenceCard: Calculation = {
  name: 'run-sequence',
  title: 'Run sequence of a program',
  does: 'When each station of a program opens and shuts after one start time, and when the last one is done.',
  inputs: {
    start: { kind: { is: 'text' }, does: 'Start time, 06:00 or 10:30 pm' },
    stations: { kind: { is: 'text' }, does: 'Stations in order, 1: 25 min, 2: 2 x 6 min soak 30 min' },
    delay: { kind: { is: 'quantity', dimension: 'duration' }, does: 'Delay between stations', optional: 'no delay' },
    percent: { kind: { is: 'quantity', dimension: 'ratio' }, does: 'Monthly percent', optional: '100 %' },
    step: {
      kind: { is: 'quantity', dimension: 'duration' },
      does: 'Run-time step of the controller',
      optional: '1 min'
    }
  },
  outputs: {
    end: { does: 'When the last valve shuts', unit: '' },
    minutes: { does: 'Open valve, all stations together', unit: 'min' },
    length: { does: 'From the start to the last closing', unit: 'min' }
  },
  sources: ['ifas-ae220', 'project-rule', 'common-practice'],
  limits:
    "One valve is open at a time, in the order written; a station's soak is filled by the other stations. A controller that cannot do so takes longer. The step of 1 min is common practice, no source.",
  run: inputs => {
    const start = parseClock(textOf(inputs, 'start'))
    if (start === undefined) return absent('The start time is not understood: write 06:00 or 10:30 pm.')
    const stations = parseStations(textOf(inputs, 'stations'))
    if (isAbsent(stations)) return stations
    const settings = {
      percent: optionalNumber(inputs, 'percent') ?? 1,
      stepS: optionalNumber(inputs, 'step') ?? DEFAULT_STEP_S,
      delayS: optionalNumber(inputs, 'delay') ?? 0
    }
    if (settings.stepS <= 0) return absent('The run-time step must be more than nothing: write 1 min.')
    const { value, steps } = runSequence(start, stations, settings, 'metric')
    const { endMinutes, openMinutes, lengthMinutes } = value
    return { value: { end: clockText(endMinutes, 'metric'), minutes: openMinutes, length: lengthMinutes }, steps }
  },
  example: {
    inputs: { start: '22:50', stations: '1: 25 min, 2: 25 min, 3: 2 x 6 min soak 30 min' },
    outputs: { end: '00:22 next day', minutes: 62, length: 92 }
  }
}
