import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { sum } from '../../base/collections.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { negative } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { figures } from '../figures.ts'
import { numberOf, optionalNumber, textOf } from '../inputs.ts'
import { mixedNeedM } from './phase-need.ts'
import type { PhaseDays } from './phase-need.ts'
import { netNeedM } from './run-time.ts'
import { IN_PER_M, MM_PER_M, UNITS_INPUT, unitsOfWorking } from './units.ts'

const EXAMPLE = 'establishment 0.65 14, established 0.5 17'
const NAMES = ['establishment', 'established', 'temporary', 'none'] as const

export const phaseNeedCard: Calculation = {
  name: 'phase-need',
  title: 'Need of a month by its phases',
  does: 'Gives what plants lack in a month of which some days are of one phase and some of another, or are not watered.',
  inputs: {
    eto: { kind: { is: 'quantity', dimension: 'length' }, does: 'reference evapotranspiration of the whole month' },
    rain: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'rain of the whole month that counts',
      optional: 'none'
    },
    days: { kind: { is: 'count' }, does: 'days of the month' },
    phases: { kind: { is: 'text' }, does: `each phase with its factor and its watered days: ${EXAMPLE}` },
    ...UNITS_INPUT
  },
  outputs: {
    need: { does: 'depth that the plants lack', unit: 'mm' },
    'need-us': { does: 'the same in inches', unit: 'in' },
    days: { does: 'days that are counted', unit: '' }
  },
  sources: ['wucols-guide', 'ca-title-23-492-10', 'project-rule'],
  limits:
    'Reference evapotranspiration and rain are taken as even over the days of the month. How much more a planting wants while it establishes is what the site file states; no table has it.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const [etoM, rainM] = [numberOf(inputs, 'eto'), optionalNumber(inputs, 'rain') ?? 0]
    const monthDays = numberOf(inputs, 'days')
    const fault = negative({ eto: etoM, rain: rainM })
    if (fault) return fault
    const parts = partsOf(textOf(inputs, 'phases'))
    if (isAbsent(parts)) return parts
    const counted = sum(parts.map(one => one.days))
    if (counted > monthDays) return absent(`the phases have ${counted} days, the month ${monthDays}`)
    const need = mixedNeedM(etoM, rainM, parts, monthDays)
    return {
      value: { need: need * MM_PER_M, 'need-us': need * IN_PER_M, days: counted },
      steps: phaseSteps({ etoM, rainM, parts, monthDays }, system)
    }
  },
  example: {
    inputs: { eto: '118 mm', rain: '20 mm', days: '31', phases: 'establishment 0.65 14, established 0.5 17' },
    outputs: { need: 46.997, 'need-us': 1.8503, days: 31 }
  }
}

interface Mixed {
  readonly etoM: number
  readonly rainM: number
  readonly parts: readonly PhaseDays[]
  readonly monthDays: number
}

function phaseSteps({ etoM, rainM, parts, monthDays }: Mixed, system: UnitSystem): string[] {
  const depth = (m: number) => show(m, 'depth', system)
  const lines = parts.map(({ name, factor, days }) => {
    const need = netNeedM(etoM, factor, rainM)
    const rain = rainM > 0 ? ` − ${depth(rainM)} of rain that counts` : ''
    return `${name}, ${days} of ${monthDays} days: (${depth(etoM)} × ${figures(factor, 3)}${rain}) × ${days} / ${monthDays} = ${depth((need * days) / monthDays)}`
  })
  const total = depth(mixedNeedM(etoM, rainM, parts, monthDays))
  return parts.length > 1 ? [...lines, `together: ${total}`] : lines
}

function partsOf(text: string): Maybe<readonly PhaseDays[]> {
  const parts: PhaseDays[] = []
  for (const part of text.split(/,\s*/u).filter(one => one.trim() !== '')) {
    const [, word, factor, days] = /^\s*([a-z]+)\s+(\d*\.?\d+)\s+(\d+)\s*$/u.exec(part) ?? []
    const name = NAMES.find(one => one === word)
    if (name === undefined || factor === undefined || days === undefined)
      return absent(`“${part.trim()}” is not a phase; write it like “${EXAMPLE.split(', ')[0]}”`)
    parts.push({ name, factor: Number(factor), days: Number(days) })
  }
  return parts.length > 0 ? parts : absent(`no phase is written; write them like “${EXAMPLE}”`)
}
