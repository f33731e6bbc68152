import { absent } from '../../base/absent.ts'
import { METER_SAFE_GPM, METER_SHARE, MOST_VELOCITY_M_PER_S } from '../../reference/pipe.ts'
import { fromSi, quantity } from '../../units/quantity.ts'
import { show } from '../../units/show.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { figures } from '../figures.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { UNITS_INPUT, unitsOfWorking } from '../water/units.ts'

type MeterSize = keyof typeof METER_SAFE_GPM
const METER_SIZES = Object.keys(METER_SAFE_GPM) as MeterSize[]

/** What should be drawn through a meter for long, m³/s: three quarters of its safe maximum. From memory. */
export const meterLimitM3s = (safeM3s: number): number => METER_SHARE * safeM3s

/** What a service line carries at a velocity, m³/s. */
export const flowAtVelocityM3s = (insideM: number, velocityMPerS: number): number =>
  ((Math.PI * insideM ** 2) / 4) * velocityMPerS

export const meterLimit: Calculation = {
  name: 'meter-limit',
  title: 'What meter and service line give',
  does: 'Gives the flow that should be drawn through a water meter and its service line for long: 75 % of the safe maximum of the meter, or 5 ft/s in the line if that is less.',
  inputs: {
    safe: {
      kind: { is: 'quantity', dimension: 'flow' },
      does: 'safe maximum of the meter, as the water supplier states it',
      optional: 'size'
    },
    size: {
      kind: { is: 'choice', of: METER_SIZES },
      does: 'size of the meter; its safe maximum from memory',
      optional: 'safe'
    },
    inside: {
      kind: { is: 'quantity', dimension: 'length' },
      does: 'inside diameter of the service line',
      optional: 'the line is not judged'
    },
    ...UNITS_INPUT
  },
  outputs: {
    most: { does: 'flow that may be drawn', unit: 'L/min' },
    'most-us': { does: 'the same', unit: 'gpm' },
    governs: { does: 'which of them is less', unit: '' }
  },
  sources: ['meter-rules', 'awwa-c700', 'osu-912'],
  limits:
    'The share of 75 % and the table by sizes are from memory: ask the water supplier. A third rule, that the meter should take no more than a tenth of the static pressure, needs the loss of the meter.',
  run: inputs => {
    const system = unitsOfWorking(inputs)
    const [stated, inside] = [optionalNumber(inputs, 'safe'), optionalNumber(inputs, 'inside')]
    const size = optionalText(inputs, 'size') as MeterSize | undefined
    if ((stated === undefined) === (size === undefined)) return absent('give safe or size, one of them')
    const safe = stated ?? quantity(METER_SAFE_GPM[size as MeterSize], 'gpm', 'flow').si
    const fault = notPositive({ safe, inside })
    if (fault) return fault
    const meter = meterLimitM3s(safe)
    const line = inside === undefined ? Infinity : flowAtVelocityM3s(inside, MOST_VELOCITY_M_PER_S)
    const flow = (m3s: number) => show(m3s, 'flow', system)
    const most = Math.min(meter, line)
    return {
      value: {
        most: fromSi(most, 'L/min', 'flow'),
        'most-us': fromSi(most, 'gpm', 'flow'),
        governs: line < meter ? 'service line' : 'meter'
      },
      steps: [
        `${figures(METER_SHARE, 2)} × ${flow(safe)} = ${flow(meter)}`,
        ...(inside === undefined
          ? []
          : [
              `π / 4 × (${show(inside, 'inside', system)})² × ${show(MOST_VELOCITY_M_PER_S, 'velocity', system)} = ${flow(line)}`
            ])
      ]
    }
  },
  example: {
    inputs: { size: '1 in', inside: '1.049 in', units: 'us' },
    outputs: { 'most-us': 13.46, governs: 'service line' }
  }
}
