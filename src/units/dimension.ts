/**
 * The kinds of quantity a site file may hold, the spellings the trade writes, and what each spelling is worth.
 * The worth of a unit is worked out by the units library from the expression beside it; nothing here is a factor.
 */
export interface DimensionSpec {
  /** Coherent unit that a Quantity's `si` is in. */
  readonly si: string
  /** What a message calls it: "a length". */
  readonly noun: string
  /** Spelling as written in a site file -> expression for the units library. The first is the one suggested. */
  readonly units: Readonly<Record<string, string>>
  /** Shown in messages as an example of a whole value. */
  readonly example: string
}

export const DIMENSIONS = {
  length: {
    si: 'm',
    noun: 'a length',
    example: '36 m',
    units: { m: 'm', mm: 'mm', cm: 'cm', km: 'km', ft: 'ft', in: 'in', yd: 'yd', "'": 'ft', '"': 'in' }
  },
  area: {
    si: 'm^2',
    noun: 'an area',
    example: '210 m²',
    units: {
      'm²': 'm^2',
      'ft²': 'ft^2',
      m2: 'm^2',
      ft2: 'ft^2',
      'sq ft': 'ft^2',
      'sq m': 'm^2',
      ha: 'hectare',
      acre: 'acre',
      'mm²': 'mm^2',
      mm2: 'mm^2',
      'cm²': 'cm^2',
      'in²': 'in^2',
      cm2: 'cm^2',
      in2: 'in^2'
    }
  },
  volume: {
    si: 'm^3',
    noun: 'a volume',
    example: '1284 m³',
    units: {
      'm³': 'm^3',
      L: 'l',
      gal: '231 in^3',
      'ft³': 'ft^3',
      m3: 'm^3',
      l: 'l',
      kL: '1000 l',
      ML: '1000000 l',
      ft3: 'ft^3',
      HCF: '100 ft^3',
      CCF: '100 ft^3',
      mL: 'ml'
    }
  },
  flow: {
    si: 'm^3/s',
    noun: 'a flow',
    example: '38 L/min',
    units: {
      'L/min': 'l/min',
      gpm: '231 in^3/min',
      'L/h': 'l/h',
      gph: '231 in^3/h',
      'L/s': 'l/s',
      'm³/h': 'm^3/h',
      'm3/h': 'm^3/h',
      'gal/min': '231 in^3/min',
      'gal/h': '231 in^3/h',
      'l/min': 'l/min',
      'l/h': 'l/h',
      'l/s': 'l/s'
    }
  },
  pressure: {
    si: 'Pa',
    noun: 'a pressure',
    example: '4.1 bar',
    units: { bar: 'bar', psi: 'lbf/in^2', kPa: 'kPa', MPa: 'MPa' }
  },
  resistance: {
    si: 'ohm',
    noun: 'a resistance',
    example: '4.2 ohm',
    units: { ohm: 'ohm', '\u03a9': 'ohm', '\u2126': 'ohm', ohms: 'ohm', kohm: 'kohm', 'k\u03a9': 'kohm', Mohm: 'Mohm' }
  },
  'resistance-per-length': {
    si: 'ohm/m',
    noun: 'a resistance for a length of wire',
    example: '24.5 ohm/km',
    units: {
      'ohm/km': 'ohm/km',
      'Ω/km': 'ohm/km',
      'ohm/kft': 'ohm/(1000 ft)',
      'Ω/kft': 'ohm/(1000 ft)',
      'ohm/1000 ft': 'ohm/(1000 ft)',
      'ohm/m': 'ohm/m',
      'ohm/ft': 'ohm/ft'
    }
  },
  voltage: { si: 'V', noun: 'a voltage', example: '8.5 V', units: { V: 'V', mV: 'mV', volts: 'V', volt: 'V' } },
  current: { si: 'A', noun: 'a current', example: '20 µA', units: { A: 'A', mA: 'mA', µA: 'uA', μA: 'uA', uA: 'uA' } },
  charge: {
    si: 'C',
    noun: 'a battery capacity',
    example: '565 mAh',
    units: { mAh: 'mAh', Ah: 'Ah', mC: 'mC', µC: 'uC', μC: 'uC', uC: 'uC' }
  },
  energy: { si: 'J', noun: 'an energy', example: '13.2 Wh', units: { Wh: 'Wh', mWh: 'mWh', J: 'J', mJ: 'mJ' } },
  power: { si: 'W', noun: 'a power', example: '1.5 W', units: { W: 'W', mW: 'mW' } },
  capacitance: {
    si: 'F',
    noun: 'a capacitance',
    example: '4700 µF',
    units: { µF: 'uF', μF: 'uF', uF: 'uF', mF: 'mF', F: 'F' }
  },
  duration: {
    si: 's',
    noun: 'a time',
    example: '25 min',
    units: {
      min: 'min',
      s: 's',
      h: 'h',
      ms: 'ms',
      sec: 's',
      hr: 'h',
      hours: 'h',
      hour: 'h',
      minutes: 'min',
      minute: 'min',
      seconds: 's'
    }
  },
  temperature: {
    si: 'degC',
    noun: 'a temperature',
    example: '12 °C',
    units: { '°C': 'tempC', '°F': 'tempF', C: 'tempC', F: 'tempF' }
  },
  ratio: { si: '1', noun: 'a percentage', example: '70 %', units: { '%': '0.01', percent: '0.01' } },
  rate: {
    si: 'm/s',
    noun: 'an application rate',
    example: '12 mm/h',
    units: {
      'mm/h': 'mm/h',
      'in/h': 'in/h',
      'in/hr': 'in/h',
      'mm/hr': 'mm/h',
      'mm/d': 'mm/day',
      'mm/day': 'mm/day',
      'in/d': 'in/day'
    }
  },
  speed: {
    si: 'm/s',
    noun: 'a speed',
    example: '2 m/s',
    units: { 'm/s': 'm/s', mph: 'mph', 'km/h': 'kph', 'ft/s': 'ft/s' }
  },
  radiation: {
    si: 'W/m^2',
    noun: 'a radiation',
    example: '22 MJ/m²/d',
    // The units library reads all that follows the stroke as below it.
    units: { 'MJ/m²/d': 'MJ/m^2*day', 'W/m²': 'W/m^2', 'MJ/m2/d': 'MJ/m^2*day', 'W/m2': 'W/m^2' }
  },
  angle: { si: 'deg', noun: 'an angle', example: '30 °', units: { '°': 'deg', deg: 'deg', degrees: 'deg' } },
  force: { si: 'N', noun: 'a load', example: '125 kN', units: { kN: 'kN', N: 'N', lbf: 'lbf', lb: 'lbf' } }
} as const satisfies Record<string, DimensionSpec>

export type Dimension = keyof typeof DIMENSIONS
