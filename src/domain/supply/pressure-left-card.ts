import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { PIPE_MATERIALS, PIPE_ROUGHNESS } from '../../reference/pipe.ts'
import type { PipeMaterial } from '../../reference/pipe.ts'
import { fromSi } from '../../units/quantity.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { numberOf, optionalNumber, textOf } from '../inputs.ts'
import { readAmount } from '../water/amount-list.ts'
import { UNITS_INPUT, unitsOfWorking } from '../water/units.ts'
import { atLeast } from '../within.ts'
import { alongTheWay } from './along-the-way.ts'
import type { PassedPart, WayPart } from './along-the-way.ts'

const pressure = { is: 'quantity', dimension: 'pressure' } as const
const WAY_EXAMPLE = 'meter 3 psi; pipe 12 gpm, 1.049 in, 120 ft, plastic, 6 ft; valve 4 psi'

export const pressureLeft: Calculation = {
  name: 'pressure-left',
  title: 'Pressure along the way',
  does: 'Takes from the pressure at the supply what meter, backflow assembly, pipes, height, valve and regulator take, and says what is left for the heads or drippers.',
  inputs: {
    start: { kind: pressure, does: 'pressure at the point of connection' },
    way: {
      kind: { is: 'text' },
      does: `what the water passes, in order; a pipe as flow, inside diameter, length, material and, if it rises or falls, by how much: ${WAY_EXAMPLE}`
    },
    needed: { kind: pressure, does: 'least on which the devices work', optional: 'none' },
    ...UNITS_INPUT
  },
  outputs: {
    left: { does: 'pressure left at the end', unit: 'kPa' },
    'left-us': { does: 'the same', unit: 'psi' },
    margin: { does: 'what is left over the least that is needed', unit: 'kPa' },
    'margin-us': { does: 'the same', unit: 'psi' },
    enough: { does: 'whether it is enough, where the least is given', unit: '' }
  },
  sources: ['hazen-williams', 'site-record', 'project-rule'],
  limits:
    'Straight pipe of cold water; elbows and tees are not in it, some tenth of the friction by common practice. Losses of fittings are those stated, whatever the flow. A foot of height is 0.433 psi.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const [startPa, neededPa] = [numberOf(inputs, 'start'), optionalNumber(inputs, 'needed')]
    const fault = notPositive({ start: startPa, needed: neededPa })
    if (fault) return fault
    const parts = partsOf(textOf(inputs, 'way'))
    if (isAbsent(parts)) return parts
    const passed = alongTheWay(startPa, parts)
    const leftPa = passed.at(-1)?.leftPa ?? startPa
    const left = { left: leftPa / 1000, 'left-us': psi(leftPa) }
    const margin = neededPa === undefined ? undefined : leftPa - neededPa
    return {
      value: {
        ...left,
        ...(margin === undefined || neededPa === undefined
          ? {}
          : { margin: margin / 1000, 'margin-us': psi(margin), enough: atLeast(leftPa, neededPa) })
      },
      steps: pressureSteps(startPa, passed, neededPa, system)
    }
  },
  example: {
    inputs: {
      start: '62 psi',
      way: 'meter 2 psi; backflow 12 psi; pipe 11.5 gpm, 1.61 in, 100 ft, plastic, 4 ft; valve 3 psi; pipe 11.5 gpm, 1.049 in, 40 ft, plastic',
      needed: '30 psi',
      units: 'us'
    },
    // On paper: 0.2083 (100/150)^1.852 11.5^1.852 / 1.61^4.8655 = 0.893 ft in 100 ft, 0.387 psi; 4 ft up is 1.734 psi; in 1.049 in 7.177 ft in 100 ft, 1.244 psi in 40 ft.
    outputs: { 'left-us': 41.63, 'margin-us': 11.63, enough: true }
  }
}

const psi = (pa: number): number => fromSi(pa, 'psi', 'pressure')

/** The arithmetic, a line a part, and the comparison at the end. */
export function pressureSteps(
  startPa: number,
  passed: readonly PassedPart[],
  neededPa: number | undefined,
  system: UnitSystem
): readonly string[] {
  const bar = (pa: number) => show(pa, 'pressure-loss', system)
  const leftPa = passed.at(-1)?.leftPa ?? startPa
  const verdict =
    neededPa === undefined
      ? []
      : [`${bar(leftPa)} − ${bar(neededPa)} needed = ${bar(leftPa - neededPa)} ${leftPa < neededPa ? 'short' : 'over'}`]
  return [`at the point of connection: ${bar(startPa)}`, ...passed.map(one => partStep(one, system)), ...verdict]
}

function partStep({ part, lossPa, liftPa, velocityMPerS, leftPa }: PassedPart, system: UnitSystem): string {
  const bar = (pa: number) => show(pa, 'pressure-loss', system)
  if (part.kind !== 'pipe') return `${part.name}: − ${bar(lossPa)} = ${bar(leftPa)}`
  const pipe = `${show(part.flowM3s, 'flow', system)} in ${show(part.insideM, 'inside', system)}, ${show(part.lengthM, 'run', system)}, C ${part.roughness}`
  const height = part.riseM === 0 ? '' : ` ${liftPa < 0 ? '+' : '−'} ${bar(Math.abs(liftPa))} by height`
  return `${part.name}, ${pipe}, ${show(velocityMPerS ?? 0, 'velocity', system)}: − ${bar(lossPa)}${height} = ${bar(leftPa)}`
}

function partsOf(text: string): Maybe<readonly WayPart[]> {
  const parts: WayPart[] = []
  for (const written of text.split(';').map(one => one.trim())) {
    const part = /^pipe\s/iu.test(written) ? pipeOf(written) : fittingOf(written)
    if (isAbsent(part)) return part
    parts.push(part)
  }
  return parts
}

function fittingOf(written: string): Maybe<WayPart> {
  const match = /^(\D+?)\s+([\d.].*)$/u.exec(written)
  if (!match) return absent(`“${written}” is no part of the way; write them like “${WAY_EXAMPLE}”`)
  const [, name = '', amount = ''] = match
  const pa = readAmount(amount, 'pressure', '3 psi')
  if (isAbsent(pa)) return pa
  if (!(pa >= 0)) return absent(`${name} must not be below zero`)
  return /regulator/iu.test(name) ? { kind: 'regulator', name, mostPa: pa } : { kind: 'loss', name, lossPa: pa }
}

function pipeOf(written: string): Maybe<WayPart> {
  const [flow = '', inside = '', length = '', material = '', rise, more] = written
    .replace(/^pipe\s+/iu, '')
    .split(/,\s+/u)
  const amounts = [
    readAmount(flow, 'flow', '12 gpm'),
    readAmount(inside, 'length', '1.049 in'),
    readAmount(length, 'length', '120 ft'),
    rise === undefined ? 0 : readAmount(rise, 'length', '6 ft')
  ]
  const fault = amounts.find(isAbsent)
  if (fault) return fault
  const [flowM3s = 0, insideM = 0, lengthM = 0, riseM = 0] = amounts as readonly number[]
  if (!PIPE_MATERIALS.includes(material as PipeMaterial) || more !== undefined)
    return absent(`“${material}” is no material of a pipe: ${PIPE_MATERIALS.join(', ')}`)
  const unfit = notPositive({ 'the flow': flowM3s, 'the inside diameter': insideM, 'the length': lengthM })
  if (unfit) return unfit
  return {
    kind: 'pipe',
    name: 'pipe',
    flowM3s,
    insideM,
    lengthM,
    riseM,
    roughness: PIPE_ROUGHNESS[material as PipeMaterial]
  }
}
