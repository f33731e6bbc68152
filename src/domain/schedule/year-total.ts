import { absent } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { roundedText, show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { Calculation, Worked } from '../calculation.ts'
import { optionalNumber, textOf } from '../inputs.ts'

export interface YearTotalOf {
  /** Open valve by month. */
  readonly minutes: readonly number[]
  readonly flowM3s?: number | undefined
  readonly areaM2?: number | undefined
}

export interface YearTotal {
  readonly minutes: number
  readonly volumeM3?: number
  readonly depthM?: number
}

/** What a station gets in a year: the sum of its months, the water at its flow, and the depth that this is on its area. */
export function yearTotal({ minutes, flowM3s, areaM2 }: YearTotalOf): YearTotal {
  const all = sum(minutes)
  if (flowM3s === undefined) return { minutes: all }
  const volumeM3 = all * 60 * flowM3s
  return { minutes: all, volumeM3, ...(areaM2 === undefined ? {} : { depthM: volumeM3 / areaM2 }) }
}

/** The same with its arithmetic in words. */
export function yearTotalWorked(of: YearTotalOf, system: UnitSystem): Worked<YearTotal> {
  const value = yearTotal(of)
  const { flowM3s, areaM2 } = of
  const wet = of.minutes.filter(minutes => minutes > 0).map(minutes => roundedText(minutes, 1))
  const minutes = show(value.minutes * 60, 'minutes', system)
  const steps = [wet.length === 0 ? 'No month has watering: 0 min.' : `${wet.join(' + ')} = ${minutes} in the year.`]
  if (flowM3s === undefined || value.volumeM3 === undefined) return { value, steps }
  const volume = show(value.volumeM3, 'volume', system)
  steps.push(`Water: ${minutes} × ${show(flowM3s, 'flow', system)} = ${volume}.`)
  if (areaM2 !== undefined && value.depthM !== undefined)
    steps.push(`Depth: ${volume} ÷ ${show(areaM2, 'area', system)} = ${show(value.depthM, 'depth', system)}.`)
  return { value, steps }
}

export const yearTotalCard: Calculation = {
  name: 'year-total',
  title: 'Minutes, water and depth of a station in a year',
  does: 'The months of a station added up: open valve, the water at its flow, and the depth of it on the area.',
  inputs: {
    minutes: { kind: { is: 'text' }, does: 'Minutes of open valve by month, with commas: 0, 387.5, 375' },
    flow: { kind: { is: 'quantity', dimension: 'flow' }, does: 'Flow of the station', optional: 'no volume is given' },
    area: { kind: { is: 'quantity', dimension: 'area' }, does: 'Area it waters', optional: 'no depth is given' }
  },
  outputs: {
    minutes: { does: 'Open valve in the year', unit: 'min' },
    volume: { does: 'Water in the year, where the flow is given', unit: 'm³' },
    depth: { does: 'Depth on the area in the year, where it is given too', unit: 'm' }
  },
  sources: ['project-rule'],
  limits:
    'Totals of programs, controllers, supplies and the site are sums of their stations; their depth is the water over all areas together. A station without a stated flow is not in the water of a sum, and the sum says so.',
  run: inputs => {
    const minutes = textOf(inputs, 'minutes')
      .split(/[,;]/u)
      .map(part => Number(part.trim()))
    if (minutes.some(each => !Number.isFinite(each) || each < 0))
      return absent('The minutes are not understood: write numbers with commas between, 387.5, 375.')
    const areaM2 = optionalNumber(inputs, 'area')
    if (areaM2 !== undefined && areaM2 <= 0) return absent('The area must be more than nothing.')
    const { value, steps } = yearTotalWorked({ minutes, flowM3s: optionalNumber(inputs, 'flow'), areaM2 }, 'metric')
    const { volumeM3, depthM } = value
    return {
      value: {
        minutes: value.minutes,
        ...(volumeM3 === undefined ? {} : { volume: volumeM3 }),
        ...(depthM === undefined ? {} : { depth: depthM })
      },
      steps
    }
  },
  example: {
    inputs: { minutes: '0, 100, 200.5', flow: '12 L/min', area: '60 m²' },
    outputs: { minutes: 300.5, volume: 3.606, depth: 0.0601 }
  }
}
