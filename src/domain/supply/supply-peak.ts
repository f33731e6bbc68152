import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { parseClock, showClock } from '../../units/clock.ts'
import { fromSi, parseQuantity } from '../../units/quantity.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { optionalNumber, textOf } from '../inputs.ts'
import { atMost } from '../within.ts'
import { flowStretches, peakOf } from './peak-flow.ts'
import type { FlowStretch, Opening } from './peak-flow.ts'

/** "C3 9.2 gpm + C4 8.8 gpm = 18 gpm, 10:30 pm to 10:40 pm". `flowOf` gives the flow of each that is open. */
export function stretchStep(
  { names, flowM3s, fromS, toS }: FlowStretch,
  flowOf: (name: string) => number,
  system: UnitSystem
): string {
  const parts = names.map(name => `${name} ${show(flowOf(name), 'flow', system)}`)
  const all = names.length === 1 ? parts.join() : `${parts.join(' + ')} = ${show(flowM3s, 'flow', system)}`
  return `${all}, ${showClock(fromS / 60, system)} to ${showClock(toS / 60, system)}`
}

export const supplyPeak: Calculation = {
  name: 'supply-peak',
  title: 'The most that a supply gives at once',
  does: 'Adds the flows of all stations that are open at one time, over a day, and finds when the sum is greatest.',
  inputs: {
    runs: {
      kind: { is: 'text' },
      does: 'each run with its start, how long and how much: C3 10:00 pm 50 min 9.2 gpm; C4 22:30 45 min 8.8 gpm'
    },
    limit: { kind: { is: 'quantity', dimension: 'flow' }, does: 'what may be drawn at once', optional: 'none' }
  },
  outputs: {
    peak: { does: 'greatest flow', unit: 'L/min' },
    from: { does: 'from when', unit: '' },
    to: { does: 'until when', unit: '' },
    enough: { does: 'whether the limit holds, where one is given', unit: '' }
  },
  sources: ['site-record', 'project-rule'],
  limits:
    'Flows are those stated, not measured. A run that ends in the minute in which another starts is not counted with it, and separate clocks drift.',
  run: inputs => {
    const openings = parseRuns(textOf(inputs, 'runs'))
    if (isAbsent(openings)) return openings
    const limit = optionalNumber(inputs, 'limit')
    const worked = supplyPeakWorked(openings)
    if (isAbsent(worked)) return worked
    const { value: peak, steps } = worked
    const enough: Record<string, boolean> = limit === undefined ? {} : { enough: atMost(peak.flowM3s, limit) }
    const [from, to] = [peak.fromS, peak.toS].map(seconds => showClock(seconds / 60, 'metric'))
    return { value: { peak: fromSi(peak.flowM3s, 'L/min', 'flow'), from: from ?? '', to: to ?? '', ...enough }, steps }
  },
  example: {
    inputs: {
      runs: 'C3 10:00 pm 50 min 9.2 gpm; C4 10:30 pm 45 min 8.8 gpm; C5 10:40 pm 40 min 7.4 gpm; C6 11:30 pm 35 min 4.1 gpm',
      limit: '20 gpm'
    },
    outputs: { peak: 96.15, from: '22:40', to: '22:50', enough: false }
  }
}

function supplyPeakWorked(openings: readonly Opening[]): Maybe<Worked<FlowStretch>> {
  const stretches = [...flowStretches(openings)]
  const peak = peakOf(stretches)
  if (!peak) return absent('nothing runs')
  const flowOf = (name: string) => openings.find(one => one.name === name)?.flowM3s ?? 0
  const steps = stretches.map(one => stretchStep(one, flowOf, 'metric'))
  return { value: peak, steps: [...steps, `the most: ${show(peak.flowM3s, 'flow', 'metric')}`] }
}

function parseRuns(text: string): Maybe<Opening[]> {
  const openings: Opening[] = []
  for (const part of text.split(';').map(one => one.trim())) {
    const match = /^(.+?) (\d{1,2}:\d{2}(?: ?[ap]\.?m\.?)?) (\S+ ?(?:s|min|h)) (.+)$/iu.exec(part)
    const start = parseClock(match?.[2] ?? '')
    const duration = parseQuantity(match?.[3] ?? '', 'duration')
    const flow = parseQuantity(match?.[4] ?? '', 'flow')
    if (!match || start === undefined || !duration.ok || !flow.ok)
      return absent(`“${part}” is not a run: write C3 22:00 50 min 9.2 gpm.`)
    const fromS = start * 60
    openings.push({ name: match[1] ?? '', fromS, toS: fromS + duration.value.si, flowM3s: flow.value.si })
  }
  return openings
}
