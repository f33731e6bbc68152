import { isAbsent } from '../../base/absent.ts'
import type { Calculation } from '../calculation.ts'
import { monthStep } from './eto-hargreaves.ts'
import { penmanMonteith } from './penman-monteith.ts'
import { WEATHER_INPUTS, weatherOf } from './weather-inputs.ts'
import { WHEN_INPUTS, whenOf } from './when.ts'

export const etoPenmanMonteith: Calculation = {
  name: 'eto-penman-monteith',
  title: 'Reference evapotranspiration from weather',
  does: 'Gives the water that a well-watered short grass uses in a day, from temperature, humidity, sunshine and wind, with a stated stand-in for each that is not known.',
  inputs: { ...WHEN_INPUTS, ...WEATHER_INPUTS },
  outputs: {
    eto: { does: 'reference evapotranspiration', unit: 'mm/d' },
    'eto-us': { does: 'the same in inches', unit: 'in/d' },
    'in-month': { does: 'in the whole month, where a month is given', unit: 'mm' },
    'net-radiation': { does: 'net radiation', unit: 'MJ/m²/d' },
    'solar-radiation': { does: 'solar radiation', unit: 'MJ/m²/d' },
    'vapor-pressure': { does: 'pressure of the vapor in the air', unit: 'kPa' },
    'wind-2m': { does: 'wind at 2 m', unit: 'm/s' }
  },
  sources: ['fao-56'],
  limits:
    'For grass (ETo), by the constants of FAO paper 56; not for alfalfa (ETr). In dry country the dew point lies 2 to 3 °C under the minimum temperature: give it. Without previous-mean no soil heat is counted, which is nearer for months.',
  run: inputs => {
    const when = whenOf(inputs)
    if (isAbsent(when)) return when
    const weather = weatherOf(inputs)
    if (isAbsent(weather)) return weather
    const worked = penmanMonteith(weather, when)
    if (isAbsent(worked)) return worked
    const { etoMm, netMj, solarMj, vaporKpa, wind2MPerS } = worked.value
    const outputs = {
      eto: etoMm,
      'eto-us': etoMm / 25.4,
      'net-radiation': netMj,
      'solar-radiation': solarMj,
      'vapor-pressure': vaporKpa,
      'wind-2m': wind2MPerS
    }
    if (when.monthDays === undefined) return { value: outputs, steps: worked.steps }
    return {
      value: { ...outputs, 'in-month': etoMm * when.monthDays },
      steps: [...worked.steps, monthStep(etoMm, when.monthDays)]
    }
  },
  example: {
    inputs: {
      latitude: '13.73',
      month: 'Apr',
      elevation: '2 m',
      max: '34.8 °C',
      min: '25.6 °C',
      'vapor-pressure': '2.85 kPa',
      sunshine: '8.5 h',
      wind: '2 m/s',
      'previous-mean': '29.2 °C'
    },
    outputs: { eto: 5.716, 'net-radiation': 14.333, 'solar-radiation': 22.65, 'in-month': 171.5 }
  }
}
