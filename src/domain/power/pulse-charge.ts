import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { notPositive } from '../amounts.ts'
import type { Calculation, OutputValue, Worked } from '../calculation.ts'
import { measure } from '../figures.ts'
import { optionalNumber } from '../inputs.ts'

/** Charge of a pulse straight from the battery, mAh: current × time. 0.5 A for 60 ms is 0.00833 mAh. */
export function directPulseMah(currentA: number, seconds: number): number {
  return (currentA * seconds) / 3.6
}

/** Energy in a capacitor, J: C V² / 2. 4700 µF at 12 V holds 0.338 J. */
export function capacitorJ(farad: number, volt: number): number {
  return (farad * volt ** 2) / 2
}

/** Charge that the battery gives to fill a capacitor through a booster, mAh: C V² / (2 η V battery) / 3.6. */
export function capacitorPulseMah(farad: number, volt: number, efficiency: number, batteryVolt: number): number {
  return capacitorJ(farad, volt) / (efficiency * batteryVolt) / 3.6
}

type Given = Readonly<Record<string, number | undefined>>

export const pulseCharge: Calculation = {
  name: 'pulse-charge',
  title: 'Charge that one pulse takes',
  does: 'Gives what one pulse takes from the battery, from its current and length, or from the capacitor that is discharged into the coil.',
  inputs: {
    current: { kind: { is: 'quantity', dimension: 'current' }, does: 'current of the pulse', optional: 'a capacitor' },
    time: { kind: { is: 'quantity', dimension: 'duration' }, does: 'length of the pulse', optional: 'a capacitor' },
    capacitor: {
      kind: { is: 'quantity', dimension: 'capacitance' },
      does: 'capacitor that is emptied into the coil',
      optional: 'a pulse straight from the battery'
    },
    'capacitor-volts': {
      kind: { is: 'quantity', dimension: 'voltage' },
      does: 'volts to which it is filled',
      optional: 'a pulse straight from the battery'
    },
    efficiency: {
      kind: { is: 'quantity', dimension: 'ratio' },
      does: 'part of the energy that reaches the capacitor',
      optional: 'a pulse straight from the battery'
    },
    'battery-volts': {
      kind: { is: 'quantity', dimension: 'voltage' },
      does: 'volts of the battery',
      optional: 'a pulse straight from the battery'
    }
  },
  outputs: {
    charge: { does: 'taken from the battery by one pulse', unit: 'mAh' },
    energy: { does: 'held by the capacitor, where one is given', unit: 'J' }
  },
  sources: ['ohms-law'],
  limits: 'Take the figures from the data plate or measure them; no neutral table of pulses was found.',
  run: inputs => {
    const names = ['current', 'time', 'capacitor', 'capacitor-volts', 'efficiency', 'battery-volts']
    const given: Given = Object.fromEntries(names.map(name => [name, optionalNumber(inputs, name)]))
    const fault = notPositive(given)
    if (fault) return fault
    if (given['efficiency'] !== undefined && given['efficiency'] > 1)
      return absent('efficiency cannot be more than 100 %')
    return fromCapacitor(given) ?? fromCurrent(given)
  },
  example: {
    inputs: { capacitor: '4700 µF', 'capacitor-volts': '12 V', efficiency: '70 %', 'battery-volts': '9 V' },
    outputs: { charge: 0.01492, energy: 0.3384 }
  }
}

function fromCapacitor(given: Given): Worked<Readonly<Record<string, OutputValue>>> | undefined {
  const { capacitor, 'capacitor-volts': volt, efficiency, 'battery-volts': battery } = given
  if (capacitor === undefined || volt === undefined || efficiency === undefined || battery === undefined)
    return undefined
  const energy = capacitorJ(capacitor, volt)
  const charge = capacitorPulseMah(capacitor, volt, efficiency, battery)
  return {
    value: { charge, energy },
    steps: [
      `${measure(capacitor * 1e6, 4, 'µF')} × (${measure(volt, 3, 'V')})² / 2 = ${measure(energy, 4, 'J')}`,
      `${measure(energy, 4, 'J')} / (${efficiency} × ${measure(battery, 3, 'V')}) / 3.6 = ${measure(charge, 4, 'mAh')}`
    ]
  }
}

function fromCurrent({ current, time }: Given): Maybe<Worked<Readonly<Record<string, OutputValue>>>> {
  if (current === undefined || time === undefined)
    return absent('give current and time, or capacitor, capacitor-volts, efficiency and battery-volts')
  const charge = directPulseMah(current, time)
  return {
    value: { charge },
    steps: [`${measure(current * 1000, 4, 'mA')} × ${measure(time, 4, 's')} / 3600 = ${measure(charge, 3, 'mAh')}`]
  }
}
