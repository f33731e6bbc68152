import { dayOfYear, midMonthDay } from '../../../src/domain/climate/day-of-year.ts'
import { hargreavesMm } from '../../../src/domain/climate/eto-hargreaves.ts'
import { penmanMonteith } from '../../../src/domain/climate/penman-monteith.ts'
import type { PenmanMonteith, Weather } from '../../../src/domain/climate/penman-monteith.ts'
import { solarDay } from '../../../src/domain/climate/solar-geometry.ts'
import { soilHeatMj, soilHeatSoFarMj } from '../../../src/domain/climate/soil-heat.ts'
import {
  airKpa,
  meanSaturationKpa,
  psychrometricKpaPerC,
  saturationKpa,
  slopeKpaPerC,
  vaporKpa
} from '../../../src/domain/climate/vapor.ts'
import { windAt2M } from '../../../src/domain/climate/wind.ts'
import { MONTHS, date } from '../../../src/units/date.ts'
import { calcNumber } from '../../support/calc.ts'
import { example, weatherDays } from './fixtures.ts'
import { present, rows } from './row.ts'
import type { Row } from './row.ts'

const FAO = 'FAO paper 56 (1998)'
const PRINTED = 'the last digit printed'
const ROUNDED = 'the example rounds on its way'

const radiationOn = (latitudeDeg: number, day: number) => solarDay(latitudeDeg, day).extraterrestrialMj
const weatherOn = (latitudeDeg: number, day: number, weather: Weather): PenmanMonteith =>
  present(penmanMonteith(weather, { latitudeDeg, dayOfYear: day, words: '' })).value

function solarRows(): Row[] {
  const one = example<{ latDeg: number; doy: number }, Record<'dr' | 'declination' | 'sunsetAngle' | 'raMJ', number>>(
    'P1'
  )
  const two = example<{ latDeg: number; doy: number }, { hours: number }>('P2')
  const three = example<{ doys: readonly number[] }, Readonly<Record<string, readonly number[]>>>('P3')
  const sun = solarDay(one.inputs.latDeg, one.inputs.doy)
  const geometry = { calculation: 'solar-geometry', source: `${FAO}, example 8`, because: PRINTED }
  const table = { calculation: 'solar-geometry', source: `${FAO}, annex table 2.6`, tolerance: 0.1, because: PRINTED }
  const north48 = [10.1, 15.7, 23.3, 32.2, 38.8, 41.8]
  return [
    ...rows({ ...geometry, tolerance: 0.001 }, [
      ['distance factor at 20° S on day 246', one.expected.dr, sun.distanceFactor],
      ['declination', one.expected.declination, sun.declinationRad],
      ['sunset angle', one.expected.sunsetAngle, sun.sunsetAngleRad]
    ]),
    ...rows({ ...geometry, tolerance: 0.05 }, [['radiation, MJ/m² a day', one.expected.raMJ, sun.extraterrestrialMj]]),
    ...rows({ ...geometry, source: 'worked on paper', tolerance: 0.000006 }, [
      ['distance factor at 20° S on day 246', 0.98483, sun.distanceFactor],
      ['declination', 0.11966, sun.declinationRad],
      ['sunset angle', 1.52702, sun.sunsetAngleRad]
    ]),
    ...rows({ ...geometry, source: 'worked on paper', tolerance: 0.0006 }, [
      ['radiation, MJ/m² a day', 32.194, sun.extraterrestrialMj]
    ]),
    ...rows({ ...geometry, source: `${FAO}, example 9`, tolerance: 0.05 }, [
      ['day length, h', two.expected.hours, solarDay(two.inputs.latDeg, two.inputs.doy).daylightH]
    ]),
    ...rows(
      table,
      Object.entries(three.expected).flatMap(([latitude, months]) =>
        months.map(
          (published, index) =>
            [
              `radiation at ${latitude}° N, 15 ${MONTHS[index]}`,
              published,
              radiationOn(Number(latitude), three.inputs.doys[index] ?? 0)
            ] as const
        )
      )
    ),
    ...rows(
      table,
      north48.map(
        (published, index) =>
          [`radiation at 48° N, 15 ${MONTHS[index]}`, published, radiationOn(48, midMonthDay(index + 1))] as const
      )
    ),
    ...rows(
      { ...table, source: `${FAO}, annex table 2.7` },
      [8.6, 10.0, 11.6, 13.4, 15.0].map(
        (published, index) =>
          [
            `day length at 48° N, 15 ${MONTHS[index]}, h`,
            published,
            solarDay(48, midMonthDay(index + 1)).daylightH
          ] as const
      )
    )
  ]
}

function vaporRows(): Row[] {
  const table = { calculation: 'eto-penman-monteith', tolerance: 0.001, because: PRINTED }
  const printed = (source: string, places: number) => ({
    ...table,
    source: `${FAO}, ${source}`,
    // Half a unit of the last place, and a little for the paper's rounded intermediates.
    tolerance: 0.6 * 10 ** -places
  })
  return [
    ...rows(
      { ...table, source: `${FAO}, annex table 2.2` },
      [
        [0, 0.067],
        [1000, 0.06],
        [1800, 0.054],
        [2000, 0.053],
        [3000, 0.047]
      ].map(
        ([z = 0, published = 0]) =>
          [`psychrometric constant at ${z} m`, published, psychrometricKpaPerC(airKpa(z))] as const
      )
    ),
    ...rows(
      { ...table, source: `${FAO}, annex table 2.3` },
      [
        [1, 0.657],
        [10, 1.228],
        [20, 2.338],
        [30, 4.243]
      ].map(([t = 0, published = 0]) => [`saturation pressure at ${t} °C, kPa`, published, saturationKpa(t)] as const)
    ),
    ...rows(
      { ...table, source: `${FAO}, annex table 2.4` },
      [
        [1, 0.047],
        [10, 0.082],
        [20, 0.145]
      ].map(
        ([t = 0, published = 0]) => [`slope of the saturation curve at ${t} °C`, published, slopeKpaPerC(t)] as const
      )
    ),
    ...rows(
      { ...table, source: 'ASCE standardized reference evapotranspiration (2005), table C-3' },
      [
        [21.65, 0.1585],
        [22.9, 0.1692],
        [23.7, 0.1762],
        [24.3, 0.182],
        [26.4, 0.2027]
      ].map(
        ([t = 0, published = 0]) => [`slope of the saturation curve at ${t} °C`, published, slopeKpaPerC(t)] as const
      )
    ),
    ...rows(printed('example 2', 1), [['air pressure at 1800 m, kPa', 81.8, airKpa(1800)]]),
    ...rows(printed('example 2', 3), [['psychrometric constant at 1800 m', 0.054, psychrometricKpaPerC(airKpa(1800))]]),
    ...rows(printed('example 3', 3), [
      ['saturation pressure at 24.5 °C', 3.075, saturationKpa(24.5)],
      ['saturation pressure at 15 °C', 1.705, saturationKpa(15)]
    ]),
    ...rows(printed('example 3', 2), [['mean saturation pressure', 2.39, meanSaturationKpa(24.5, 15)]]),
    ...rows(printed('example 4', 1), [['air pressure at 1200 m, kPa', 87.9, airKpa(1200)]]),
    ...rows(printed('example 4', 2), [
      [
        'vapor pressure from 19.5 °C wet and 25.6 °C dry at 1200 m',
        1.91,
        vaporKpa({ by: 'wet-bulb', wetC: 19.5, dryC: 25.6 }, 25.6, 19.5, airKpa(1200)).kPa
      ]
    ]),
    ...rows(printed('example 5', 2), [
      [
        'vapor pressure from 82 % at 18 °C and 54 % at 25 °C',
        1.7,
        vaporKpa({ by: 'max-min', max: 0.82, min: 0.54 }, 25, 18, 101.3).kPa
      ],
      ['vapor pressure from their mean of 68 %', 1.78, vaporKpa({ by: 'mean', mean: 0.68 }, 25, 18, 101.3).kPa]
    ]),
    ...rows(printed('example 14', 1), [
      ['wind of 3.2 m/s at 10 m, at 2 m', 2.4, windAt2M({ speedMPerS: 3.2, heightM: 10 })]
    ]),
    ...rows(printed('example 13', 2), [
      ['soil heat from 14.1 to 18.8 °C, MJ/m² a day', 0.33, soilHeatMj(14.1, 18.8)],
      ['the same as water, mm a day', 0.13, 0.408 * soilHeatMj(14.1, 18.8)]
    ])
  ]
}

function exampleRows(): Row[] {
  const lyon = example<{ latDeg: number; doy: number; tmax: number; tmin: number }, { etoMm: number }>('P4')
  const lyonSun = example<object, { rsMJ: number }>('P4b')
  type Bangkok = Record<'latDeg' | 'elev' | 'doy' | 'tmax' | 'tmin' | 'ea' | 'u2' | 'n' | 'G', number>
  const five = example<Bangkok, Record<'raMJ' | 'N' | 'rsoMJ' | 'rnsMJ' | 'rnMJ' | 'etoMm', number>>('P5')
  const six = example<Omit<Bangkok, 'u2' | 'n' | 'G'>, { rnMJ: number }>('P6')
  const still = { wind: { speedMPerS: 2, heightM: 2 }, soilHeatMj: 0 } as const
  const lyonWeather = weatherOn(lyon.inputs.latDeg, lyon.inputs.doy, {
    ...still,
    maxC: lyon.inputs.tmax,
    minC: lyon.inputs.tmin,
    elevationM: 200,
    humidity: { by: 'nothing' },
    sunlight: { by: 'temperature', setting: 'interior' }
  })
  const bangkok = {
    ...still,
    maxC: five.inputs.tmax,
    minC: five.inputs.tmin,
    elevationM: five.inputs.elev,
    humidity: { by: 'vapor-pressure', kPa: five.inputs.ea }
  } as const
  const april = weatherOn(five.inputs.latDeg, five.inputs.doy, {
    ...bangkok,
    sunlight: { by: 'sunshine', hours: five.inputs.n },
    wind: { speedMPerS: five.inputs.u2, heightM: 2 },
    soilHeatMj: five.inputs.G
  })
  const coast = weatherOn(six.inputs.latDeg, six.inputs.doy, {
    ...bangkok,
    sunlight: { by: 'temperature', setting: 'coast' }
  })
  const monthly = { calculation: 'eto-penman-monteith', source: `${FAO}, example 17` }
  return [
    ...rows({ calculation: 'eto-hargreaves', source: `${FAO}, example 20`, tolerance: 0.05, because: PRINTED }, [
      [
        'Lyon in July, mm a day',
        lyon.expected.etoMm,
        present(
          hargreavesMm(
            { maxC: lyon.inputs.tmax, minC: lyon.inputs.tmin },
            radiationOn(lyon.inputs.latDeg, lyon.inputs.doy)
          )
        )
      ]
    ]),
    ...rows({ ...monthly, source: `${FAO}, example 15`, tolerance: 0.05, because: PRINTED }, [
      ['solar radiation at Lyon from temperatures', lyonSun.expected.rsMJ, lyonWeather.solarMj]
    ]),
    ...rows({ ...monthly, source: `${FAO}, example 20`, tolerance: 0.006, because: PRINTED }, [
      ['vapor pressure at Lyon from the minimum', 1.68, lyonWeather.vaporKpa]
    ]),
    ...rows({ ...monthly, source: 'worked on paper', tolerance: 0.01, because: 'the same constants' }, [
      ['net radiation at Lyon', 13.48, lyonWeather.netMj],
      ['Lyon by temperatures alone, wind of 2 m/s, mm a day', 4.56, lyonWeather.etoMm]
    ]),
    ...rows({ ...monthly, tolerance: 0.01, because: PRINTED }, [
      [
        'radiation above the air at Bangkok in April',
        five.expected.raMJ,
        radiationOn(five.inputs.latDeg, five.inputs.doy)
      ],
      ['day length, h', five.expected.N, solarDay(five.inputs.latDeg, five.inputs.doy).daylightH],
      ['radiation of a clear day', five.expected.rsoMJ, april.clearMj],
      ['short-wave radiation kept', five.expected.rnsMJ, april.netShortMj],
      ['net radiation', five.expected.rnMJ, april.netMj]
    ]),
    ...rows({ ...monthly, tolerance: 0.001, because: PRINTED }, [
      ['slope of the saturation curve', 0.246, april.slopeKpaPerC],
      ['psychrometric constant', 0.0674, april.psychrometricKpaPerC]
    ]),
    ...rows({ ...monthly, tolerance: 0.006, because: PRINTED }, [
      ['soil heat from 29.2 to 30.2 °C', 0.14, soilHeatSoFarMj(29.2, 30.2)]
    ]),
    ...rows({ ...monthly, tolerance: 0.02, because: ROUNDED }, [
      ['Bangkok in April, mm a day', five.expected.etoMm, april.etoMm]
    ]),
    ...rows({ ...monthly, source: `${FAO}, example 16`, tolerance: 0.1, because: ROUNDED }, [
      ['net radiation at the coast from temperatures', six.expected.rnMJ, coast.netMj]
    ])
  ]
}

/** Maricopa, Arizona. */
const STATION = { latitudeDeg: 33.069, elevationM: 361, windHeightM: 3 } as const

function dailyRows(): Row[] {
  type Day = readonly [string, number, number, number, number, number, number]
  const eight = example<{ rows: readonly Day[] }, null>('P8')
  const etoOn = (day: string, maxC: number, minC: number, solarMj: number, wind: number, dewC: number) =>
    weatherOn(STATION.latitudeDeg, dayOfYear(date(day)), {
      maxC,
      minC,
      elevationM: STATION.elevationM,
      humidity: { by: 'dew-point', dewC },
      sunlight: { by: 'measured', solarMj },
      wind: { speedMPerS: wind, heightM: STATION.windHeightM },
      soilHeatMj: 0
    }).etoMm
  const daily = {
    calculation: 'eto-penman-monteith',
    source: 'USDA Agricultural Research Service, Maricopa weather with FAO-56 output'
  }
  return [
    ...eight.inputs.rows.flatMap(([day, maxC, minC, solarMj, wind, dewC, published]) =>
      rows(
        { ...daily, tolerance: published >= 10 ? 0.05 : 0.02, because: `${PRINTED}, and inputs of one or two digits` },
        [[`${day}, mm a day`, published, etoOn(day, maxC, minC, solarMj, wind, dewC)]]
      )
    ),
    ...weatherDays().flatMap(one =>
      rows(
        {
          ...daily,
          tolerance: 0.06,
          because: 'inputs printed to one or two digits; 18 years of such days came within 0.054'
        },
        [
          [
            `${one.date} of the record, mm a day`,
            one.etoMm,
            etoOn(one.date, one.maxC, one.minC, one.solarMj, one.windMPerS, one.dewC)
          ]
        ]
      )
    )
  ]
}

/** Fallon, Nevada, 1 July 2015, by the ASCE form, which computes a clear day another way. */
function fallonRows(): Row[] {
  const celsius = (f: number) => (f - 32) / 1.8
  const solarMj = 674.07 * 0.041868
  const weather = weatherOn(39.4575, 182, {
    maxC: celsius(102.8),
    minC: celsius(66.65),
    elevationM: 1208.5,
    humidity: { by: 'dew-point', dewC: celsius(49.84) },
    sunlight: { by: 'measured', solarMj },
    wind: { speedMPerS: 4.8 * 0.44704, heightM: 3 },
    soilHeatMj: 0
  })
  const source = 'published tests of a reference evapotranspiration library, Fallon, Nevada'
  const calculation = 'eto-penman-monteith'
  return [
    ...rows({ calculation, source, tolerance: 0.01, because: 'other rounding of the declination' }, [
      ['radiation above the air on 2015-07-01', 41.648, radiationOn(39.4575, 182)]
    ]),
    ...rows({ calculation, source, tolerance: 0.033, because: 'elevation as printed, 0.1 %' }, [
      ['radiation of a clear day', 32.264, weather.clearMj]
    ]),
    ...rows(
      { calculation, source, tolerance: 0.08, because: 'another formula of a clear day and other constants, 1 %' },
      [['2015-07-01, mm a day', 7.942, weather.etoMm]]
    )
  ]
}

/** Means of 18 years at Maricopa: highest, lowest, solar, wind at 3 m, dew point; from the monthly means by this formula, and from temperatures. */
const MONTHLY = [
  [1, 19.72, 2.58, 12.14, 1.55, 0.61, 2.11, 2.16],
  [4, 29.73, 11.13, 25.97, 2.41, -0.95, 6.45, 5.61],
  [7, 40.92, 25.47, 26.26, 2.38, 13.55, 8.36, 7.66],
  [10, 31.68, 13.01, 17.8, 1.69, 5.36, 4.31, 4.24],
  [12, 18.73, 2.13, 10.97, 1.48, 0.17, 1.85, 1.93]
] as const

function monthlyRows(): Row[] {
  return MONTHLY.flatMap(([month, max, min, solar, wind, dew, penman, hargreaves]) => {
    const place = { latitude: '33.069', month: MONTHS[month - 1] ?? '', max: `${max} °C`, min: `${min} °C` }
    const of = { source: 'worked on paper', tolerance: 0.02, because: 'means printed to two digits' }
    return [
      ...rows({ ...of, calculation: 'eto-penman-monteith' }, [
        [
          `${MONTHS[month - 1]} from monthly means, mm a day`,
          penman,
          calcNumber(
            'eto-penman-monteith',
            {
              ...place,
              elevation: '361 m',
              'solar-radiation': `${solar} MJ/m²/d`,
              wind: `${wind} m/s`,
              'wind-height': '3 m',
              'dew-point': `${dew} °C`
            },
            'eto'
          )
        ]
      ]),
      ...rows({ ...of, calculation: 'eto-hargreaves' }, [
        [`${MONTHS[month - 1]} from monthly means, mm a day`, hargreaves, calcNumber('eto-hargreaves', place, 'eto')]
      ])
    ]
  })
}

export const CLIMATE_ROWS: readonly Row[] = [
  ...solarRows(),
  ...vaporRows(),
  ...exampleRows(),
  ...dailyRows(),
  ...fallonRows(),
  ...monthlyRows()
]
