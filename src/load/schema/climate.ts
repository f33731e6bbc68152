import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Climate } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { monthly, monthsOf } from './monthly.ts'
import { number } from './numbers.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { pattern, text } from './texts.ts'

/** Normals often print the hours of the whole month; those of one day are due. */
const MOST_SUN = {
  si: 86_400,
  words: 'is of one day and must be at most 24 h: divide the hours of a month by its days'
}
const ALL = { si: 1, words: 'must be at most 100 %' }

export const CLIMATE_KEYS = {
  name: optional(text('Where the figures come from: the station or the table.', 'North coast, 1991-2020')),
  'reference-et': optional(
    monthly({
      what: 'the reference ET',
      does: 'Reference evapotranspiration (ETo) of each whole month. It goes before anything computed.',
      of: 'the whole month',
      dimension: 'length',
      one: '118 mm',
      row: '14 20 40 62 90 105 118 96 58 32 16 11 mm',
      floor: 'zero'
    })
  ),
  'eto-zone': optional(
    number(
      'Zone of reference ET in California, 1 to 18, by the CIMIS map of its Department of Water Resources (1999).',
      '12',
      { least: 1, most: 18, words: 'must be a zone from 1 to 18' }
    )
  ),
  'mean-high': optional(
    monthly({
      what: 'the mean high',
      does: 'Mean of the highest temperatures of the days, month by month. With the mean low it gives reference ET.',
      of: 'the mean of its days',
      dimension: 'temperature',
      one: '21.4 °C',
      row: '7.1 7.4 9.8 12.4 15.8 18.3 20.2 19.8 17.3 13.5 9.8 7.4 °C',
      floor: 'any'
    })
  ),
  'mean-low': optional(
    monthly({
      what: 'the mean low',
      does: 'Mean of the lowest temperatures of the days.',
      of: 'the mean of its days',
      dimension: 'temperature',
      one: '12.1 °C',
      row: '1.6 1.4 2.6 4.2 6.8 9.7 11.8 11.7 9.6 6.9 4.0 1.8 °C',
      floor: 'any'
    })
  ),
  'dew-point': optional(
    monthly({
      what: 'the dew point',
      does: 'Mean dew point. Dew point or humidity, wind, and sunshine or radiation make the weather full.',
      of: 'the mean of its days',
      dimension: 'temperature',
      one: '9.4 °C',
      row: '1.9 1.8 2.9 4.3 6.9 9.8 11.9 11.8 9.9 7.2 4.3 2.2 °C',
      floor: 'any'
    })
  ),
  humidity: optional(
    monthly({
      what: 'the humidity',
      does: 'Mean relative humidity.',
      of: 'the mean of its days',
      dimension: 'ratio',
      one: '74 %',
      row: '85 82 78 74 72 73 74 76 79 83 85 86 %',
      floor: 'zero',
      most: ALL
    })
  ),
  wind: optional(
    monthly({
      what: 'the wind',
      does: 'Mean speed of the wind.',
      of: 'the mean of its days',
      dimension: 'speed',
      one: '2.4 m/s',
      row: '3.4 3.3 3.2 2.8 2.6 2.4 2.4 2.3 2.5 2.8 3.1 3.2 m/s',
      floor: 'zero'
    })
  ),
  'wind-height': optional(
    quantity('Height that the wind was measured at; 2 m where nothing is written.', 'length', '10 m')
  ),
  sunshine: optional(
    monthly({
      what: 'the sunshine',
      does: 'Hours of bright sunshine of one day, the mean of the month.',
      of: 'the mean of its days',
      dimension: 'duration',
      one: '6.1 h',
      row: '1.6 2.5 3.5 5.0 6.1 5.9 5.7 5.3 4.2 2.9 1.9 1.4 h',
      floor: 'zero',
      most: MOST_SUN
    })
  ),
  'solar-radiation': optional(
    monthly({
      what: 'the solar radiation',
      does: 'Solar radiation of one day, the mean of the month.',
      of: 'the mean of its days',
      dimension: 'radiation',
      one: '18.2 MJ/m²/d',
      row: '2.1 4.3 8.1 13.0 17.1 18.2 17.3 14.2 10.1 5.6 2.7 1.6 MJ/m²/d',
      floor: 'zero'
    })
  ),
  rain: optional(
    monthly({
      what: 'the rain',
      does: 'Rain of each whole month. How much of it counts is told by effective-rain.',
      of: 'the whole month',
      dimension: 'length',
      one: '62 mm',
      row: '95 70 68 55 58 70 72 88 80 105 104 108 mm',
      floor: 'zero'
    })
  ),
  'effective-rain': optional(
    text(
      'How rain is counted: none (as where nothing is written), scs-monthly, tr-21, fao-manual-3, per-event or quarter-of-annual.',
      'scs-monthly'
    )
  ),
  'daily-weather': optional(
    pattern(
      'A record of weather day by day: a CSV file beside the site file or in sites/_shared/, with its units in the head of each column.',
      '_shared/climates/little-tarn-days.csv',
      /\.csv$/iu,
      'the path of a CSV file'
    )
  )
}

export const climate = record(
  'the climate',
  {
    does: 'Month-by-month figures, here or in a shared file.',
    example: '{ reference-et: { Jul: 118 mm }, effective-rain: none }'
  },
  CLIMATE_KEYS
)

/** A climate in a file of its own: the same keys, and a title. */
export const climateFile = record(
  'a climate file',
  { does: 'The climate that several sites share.', example: 'title: North coast' },
  { title: optional(text('Name of the climate.', 'North coast')), ...CLIMATE_KEYS }
)

/** The daily record is joined to it by whoever reads the files. */
export function makeClimate(raw: z.output<typeof climate>, at: At): Climate {
  return made<Climate>({
    at,
    name: given(raw.name),
    referenceEt: monthsOf(raw['reference-et']),
    etoZone: given(raw['eto-zone']),
    meanHigh: monthsOf(raw['mean-high']),
    meanLow: monthsOf(raw['mean-low']),
    dewPoint: monthsOf(raw['dew-point']),
    humidity: monthsOf(raw.humidity),
    wind: monthsOf(raw.wind),
    windHeight: given(raw['wind-height']),
    sunshine: monthsOf(raw.sunshine),
    solarRadiation: monthsOf(raw['solar-radiation']),
    rain: monthsOf(raw.rain),
    effectiveRain: given(raw['effective-rain']),
    dailyWeatherPath: given(raw['daily-weather']),
    dailyWeather: undefined
  })
}

export function makeClimateFile(raw: z.output<typeof climateFile>, at: At): Climate {
  return makeClimate({ ...raw, name: raw.name ?? raw.title }, at)
}
