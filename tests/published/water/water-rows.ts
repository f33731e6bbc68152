import { sum } from '../../../src/base/collections.ts'
import { pipeHeadLossM, pipeVelocityMPerS } from '../../../src/domain/supply/pipe-loss.ts'
import { appliedDepthM, applicationRate } from '../../../src/domain/water/application-rate.ts'
import { longestCycleS, splitCycles } from '../../../src/domain/water/cycle-soak.ts'
import { effectiveRainM, storageFactor } from '../../../src/domain/water/effective-rain.ts'
import type { RainFacts } from '../../../src/domain/water/effective-rain.ts'
import { depthOnAreaM } from '../../../src/domain/water/meter-units.ts'
import { applyDepthM } from '../../../src/domain/water/run-time.ts'
import { soilIntake } from '../../../src/domain/water/soil-lookup.ts'
import { scheduleMultiplier, uniformity } from '../../../src/domain/water/uniformity.ts'
import { allowanceGal, meanAdjustment, specialUseGal, zoneUseGal } from '../../../src/domain/water/water-budget.ts'
import { volumeM3 } from '../../../src/domain/water/water-allowance.ts'
import type { RainMethod } from '../../../src/reference/effective-rain.ts'
import { ETO_ZONES, etoZone } from '../../../src/reference/eto-zones.ts'
import { MONTHS } from '../../../src/units/date.ts'
import type { Dimension } from '../../../src/units/dimension.ts'
import { fromSi, quantity } from '../../../src/units/quantity.ts'
import { calc, calcNumber } from '../../support/calc.ts'
import { example } from './fixtures.ts'
import { BITS, present, rows } from './row.ts'
import type { Row } from './row.ts'

const PRINTED = 'the last digit printed'
const EXACT = 'exact'
const SAME_FORMULA = 'figures worked from the same published formula'

const si = (value: number, unit: string, dimension: Dimension) => quantity(value, unit, dimension).si
const inches = (value: number) => si(value, 'in', 'length')
const perHour = (value: number) => si(value, 'in/h', 'rate')
const feet2 = (value: number) => si(value, 'ft²', 'area')

function rateRows(): Row[] {
  const ten = example<{ gpm: number; areaFt2: number }, { prInH: number; prMmH: number }>('P10')
  const eleven = example<{ prInH: number; minutes: number }, { depthIn: number }>('P11')
  const rate = { flow: `${ten.inputs.gpm} gpm`, area: `${ten.inputs.areaFt2} ft²` }
  const calculation = 'application-rate'
  return [
    ...rows({ calculation, source: 'a lecture on precipitation rates', tolerance: 0.005, because: PRINTED }, [
      ['8 gpm on 900 ft², in/h', ten.expected.prInH, calcNumber('application-rate', rate, 'rateUs')],
      ['the same, mm/h', ten.expected.prMmH, calcNumber('application-rate', rate, 'rate')]
    ]),
    ...rows({ calculation, source: 'UC Cooperative Extension Santa Cruz (2017)', tolerance: 0.003, because: PRINTED }, [
      [
        '0.27 in/h for 45 min, in',
        eleven.expected.depthIn,
        appliedDepthM(perHour(eleven.inputs.prInH), eleven.inputs.minutes * 60) / inches(1)
      ]
    ]),
    ...rows({ calculation, source: 'worked on paper', tolerance: 0.05, because: PRINTED }, [
      [
        'drippers of 2.3 L/h at 0.30 by 0.45 m, mm/h',
        17.0,
        calcNumber('application-rate', { flow: '2.3 L/h', spacing: '0.30 m', 'row-spacing': '0.45 m' }, 'rate')
      ],
      [
        'drippers of 2.0 L/h at 0.30 by 0.30 m, mm/h',
        22.2,
        calcNumber('application-rate', { flow: '2.0 L/h', spacing: '0.30 m', 'row-spacing': '0.30 m' }, 'rate')
      ]
    ])
  ]
}

function conversionRows(): Row[] {
  const inOnFoot = volumeM3(inches(1), feet2(1))
  return rows(
    { calculation: 'meter-units', source: 'exact: a gallon is 231 cubic inches', tolerance: 0.05, because: PRINTED },
    [
      ['an acre-inch, gal', 27154.3, fromSi(volumeM3(inches(1), si(1, 'acre', 'area')), 'gal', 'volume')],
      ['a hundred cubic feet, gal', 748.05, fromSi(si(1, 'HCF', 'volume'), 'gal', 'volume')]
    ]
  ).concat(
    rows(
      {
        calculation: 'meter-units',
        source: 'exact: a gallon is 231 cubic inches',
        tolerance: 0.00001,
        because: PRINTED
      },
      [
        ['a gallon on a square foot, in', 1.60417, depthOnAreaM(si(1, 'gal', 'volume'), feet2(1)) / inches(1)],
        ['an inch on a square foot, gal', 0.62338, fromSi(inOnFoot, 'gal', 'volume')],
        ['a gallon a minute, L/min', 3.785412, fromSi(si(1, 'gpm', 'flow'), 'L/min', 'flow')],
        ['1 gpm on 1 ft², in/h', 96.25, fromSi(applicationRate(si(1, 'gpm', 'flow'), feet2(1)), 'in/h', 'rate')]
      ]
    )
  )
}

function uniformityRows(): Row[] {
  const twelve = example<{ meanIn: number; minutes: number; needIn: number }, { prInH: number; minutes: number }>('P12')
  const thirteen = example<{ ml: readonly number[] }, Record<'dulq' | 'dulh' | 'cu', number>>('P13')
  const found = present(uniformity(thirteen.inputs.ml))
  const printedTable = [
    [0.4, 1.56],
    [0.5, 1.43],
    [0.55, 1.37],
    [0.6, 1.32],
    [0.65, 1.27],
    [0.7, 1.22],
    [0.75, 1.18],
    [0.8, 1.14],
    [0.85, 1.1],
    [0.9, 1.06]
  ] as const
  return [
    ...rows(
      {
        calculation: 'uniformity',
        source: 'North Carolina State University, sprinkler evaluation data',
        tolerance: 0.001,
        because: PRINTED
      },
      [
        ['lowest quarter of 15 cans, %', thirteen.expected.dulq, found.lowQuarter * 100],
        ['lower half, %', thirteen.expected.dulh, found.lowHalf * 100],
        ['Christiansen, %', thirteen.expected.cu, found.christiansen * 100]
      ]
    ),
    ...rows(
      { calculation: 'uniformity', source: 'City of Fort Collins water utility', tolerance: BITS, because: EXACT },
      [
        [
          '2/8 in in 15 min, in/h',
          twelve.expected.prInH,
          calcNumber(
            'uniformity',
            { catches: `${`${twelve.inputs.meanIn} `.repeat(6)}in`, time: `${twelve.inputs.minutes} min` },
            'rate-us'
          )
        ],
        [
          '1.5 in at 1 in/h, min',
          twelve.expected.minutes,
          calcNumber('run-time', { need: `${twelve.inputs.needIn} in`, rate: '1 in/h' }, 'total')
        ]
      ]
    ),
    ...rows(
      {
        calculation: 'uniformity',
        source: 'scheduling multipliers, worked from 1 / (0.4 + 0.6 DULQ)',
        tolerance: 0.006,
        because: PRINTED
      },
      printedTable.map(([dulq, multiplier]) => [`multiplier at ${dulq}`, multiplier, scheduleMultiplier(dulq)] as const)
    )
  ]
}

function runTimeRows(): Row[] {
  const nine = example<{ etlIn: number; ie: readonly number[] }, readonly number[]>('P9')
  const fourteen = example<
    Record<'needIn' | 'prInH' | 'daysPerWeek', number>,
    Record<'minPerWeek' | 'minPerDay', number>
  >('P14')
  type Year = { etoIn: readonly number[]; K: number; pr: number; dulq: number; eventsPerWeek: number }
  type Minutes = {
    sm: number
    minPerMonth: readonly number[]
    perEventAverage: readonly number[]
    perEventCalendar: readonly number[]
  }
  const year = example<Year, Minutes>('C1')
  const month = (index: number) => {
    const eto = year.inputs.etoIn[index] ?? 0
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][index] ?? 0
    return calc('run-time', {
      eto: `${eto} in`,
      factor: String(year.inputs.K),
      rate: `${year.inputs.pr} in/h`,
      dulq: `${year.inputs.dulq * 100} %`,
      'events-per-week': String(year.inputs.eventsPerWeek),
      days: String(days)
    })
  }
  const weekly = calc('run-time', {
    need: `${fourteen.inputs.needIn} in`,
    rate: `${fourteen.inputs.prInH} in/h`,
    events: String(fourteen.inputs.daysPerWeek)
  })
  const composed = { calculation: 'run-time', source: 'worked on paper for zone 12', tolerance: 0.1, because: PRINTED }
  return [
    ...rows(
      {
        calculation: 'run-time',
        source: 'University of California, landscape coefficient guide (2000), case 1',
        tolerance: 0.05,
        because: PRINTED
      },
      nine.inputs.ie.map(
        (share, index) =>
          [
            `3.72 in at an efficiency of ${share}, in`,
            nine.expected[index] ?? 0,
            applyDepthM(inches(nine.inputs.etlIn), { by: 'efficiency', share }) / inches(1)
          ] as const
      )
    ),
    ...rows(
      { calculation: 'run-time', source: 'City of Aurora, Colorado, watering times', tolerance: BITS, because: EXACT },
      [
        ['1.25 in at 1.5 in/h, min a week', fourteen.expected.minPerWeek, weekly['total'] as number],
        ['the same on two days, min a day', fourteen.expected.minPerDay, weekly['per-event'] as number]
      ]
    ),
    ...rows({ ...composed, tolerance: 0.00001 }, [
      ['multiplier at 0.80', year.expected.sm, scheduleMultiplier(year.inputs.dulq)]
    ]),
    ...rows(
      composed,
      MONTHS.flatMap((name, index) => {
        const { total, 'per-event': each } = month(index)
        return [
          [`${name}, min in the month`, year.expected.minPerMonth[index] ?? 0, total as number],
          [`${name}, min a watering`, year.expected.perEventAverage[index] ?? 0, each as number]
        ] as const
      })
    )
  ]
}

function percentRows(): Row[] {
  const sixteen = example<{ baseMin: number; pct: Readonly<Record<string, number>> }, readonly number[]>('P16')
  const base = sixteen.inputs.baseMin
  // The table gives percents of July; as amounts they must come back as the same percents.
  const amounts = MONTHS.map(month => `${sixteen.inputs.pct[month] ?? 0}`).join(' ')
  const colville = calc('monthly-percent', { eto: `${amounts} mm`, basis: 'month' })
  const wholePercents = (zone: number, printed: readonly number[]) => {
    const value = calc('monthly-percent', { zone: String(zone), basis: 'month' })
    return rows(
      {
        calculation: 'monthly-percent',
        source: `worked from the CIMIS zones map (1999), zone ${zone}`,
        tolerance: 0.5,
        because: 'whole percents'
      },
      MONTHS.map(
        (month, index) => [`${month} of zone ${zone}, %`, printed[index] ?? 0, value[month] as number] as const
      )
    )
  }
  return [
    ...rows(
      {
        calculation: 'monthly-percent',
        source: 'Washington State University Extension, Colville',
        tolerance: 0.05,
        because: PRINTED
      },
      Object.keys(sixteen.inputs.pct).map(
        (month, index) =>
          [`20 min in ${month}, min`, sixteen.expected[index] ?? 0, (base * (colville[month] as number)) / 100] as const
      )
    ),
    ...wholePercents(12, [15, 24, 42, 63, 85, 97, 100, 88, 67, 46, 22, 12]),
    ...wholePercents(1, [20, 30, 53, 71, 87, 97, 100, 87, 71, 53, 26, 13])
  ]
}

function zoneRows(): Row[] {
  // "Agree with the map's printed totals": five of them are known, to one digit.
  const printed = [
    [5, 43.9],
    [8, 49.4],
    [7, 43.3],
    [9, 55.1],
    [14, 57.0]
  ] as const
  return [
    ...rows(
      {
        calculation: 'monthly-percent',
        source: 'CIMIS zones map (1999), totals of the rows',
        tolerance: 0.005,
        because: PRINTED
      },
      ETO_ZONES.map(({ zone, etoIn, totalIn }) => [`year of zone ${zone}, in`, totalIn, sum(etoIn)] as const)
    ),
    ...rows(
      {
        calculation: 'monthly-percent',
        source: 'CIMIS zones map (1999), totals printed on it (from memory)',
        tolerance: 0.05,
        because: PRINTED
      },
      printed.map(([zone, total]) => [`year of zone ${zone}, in`, total, sum(etoZone(zone)?.etoIn ?? [])] as const)
    ),
    ...rows(
      {
        calculation: 'monthly-percent',
        source: 'San Joaquin County record, zone 12',
        tolerance: 0.005,
        because: PRINTED
      },
      [
        ['January, in', 1.24, etoZone(12)?.etoIn[0] ?? 0],
        ['December, in', 0.93, etoZone(12)?.etoIn[11] ?? 0],
        ['year, in', 53.37, sum(etoZone(12)?.etoIn ?? [])]
      ]
    )
  ]
}

function cycleRows(): Row[] {
  type Ground = { readonly ir: number; readonly asa: number; readonly pr: number }
  const fifteen = example<readonly Ground[], readonly (number | null)[]>('P15')
  const formula = {
    calculation: 'cycle-soak',
    source: 'Irrigation Association (2005), intake and surface storage',
    because: PRINTED
  }
  const byTable = (texture: string, rate: number, printed: readonly number[]) =>
    rows(
      { ...formula, tolerance: 0.05 },
      printed.map((published, band) => {
        const slope = [0.03, 0.06, 0.12, 0.2][band] ?? 0
        const ground = present(soilIntake(texture, slope))
        const longest = longestCycleS(perHour(rate), ground.intakeMPerS, ground.surfaceM)
        return [`${texture} on ${slope * 100} % at ${rate} in/h, min`, published, Number(longest) / 60] as const
      })
    )
  return [
    ...rows(
      { ...formula, tolerance: 0.05 },
      fifteen.inputs.flatMap(({ ir, asa, pr }, index) => {
        const published = fifteen.expected[index]
        const longest = longestCycleS(perHour(pr), perHour(ir), inches(asa))
        return published === null || published === undefined
          ? []
          : [[`${asa} in held, ${ir} in/h taken, ${pr} in/h given, min`, published, Number(longest) / 60] as const]
      })
    ),
    ...byTable('clay', 1.5, [8.6, 6.4, 4.3, 4.3]),
    ...byTable('clay loam', 1.5, [12.0, 10.2, 8.3, 6.9]),
    ...byTable('loam', 1.5, [15.7, 13.0, 11.0, 8.9]),
    ...byTable('clay', 0.75, [18.5, 13.8, 9.2, 9.2]),
    ...byTable('loam', 0.75, [45, 37.5, 31.5, 25.5]),
    ...rows(
      { ...formula, source: 'Castle Rock and Left Hand water districts, Colorado', tolerance: BITS, because: EXACT },
      [
        ['15 min at 5 min a cycle, cycles', 3, present(splitCycles(900, 300, 1800, 60)).cycles],
        ['each, min', 5, present(splitCycles(900, 300, 1800, 60)).cycleS / 60],
        [
          'first start to last end with soaks of 30 min, min',
          75,
          present(splitCycles(900, 300, 1800, 60)).elapsedS / 60
        ]
      ]
    ),
    ...rows({ ...formula, source: 'City of Tucson water, Arizona', tolerance: BITS, because: EXACT }, [
      ['10 min at 5 min a cycle, cycles', 2, present(splitCycles(600, 300, 3300, 60)).cycles],
      ['from start to start, min', 60, (present(splitCycles(600, 300, 3300, 60)).cycleS + 3300) / 60]
    ])
  ]
}

function reservoirRows(): Row[] {
  const seventeen = example<Record<'pawIn' | 'mad' | 'pawGal', number>, Record<'applyIn' | 'applyGal', number>>('P17')
  const { pawIn, mad, pawGal } = seventeen.inputs
  const held = calc('soil-reservoir', {
    'available-water': `${pawIn} in`,
    depletion: `${mad * 100} %`,
    need: '0.125 in/d'
  })
  const cylinderM2 = (Math.PI * 1 ** 2) / 4
  const calculation = 'soil-reservoir'
  return [
    ...rows(
      {
        calculation,
        source: 'University of California, irrigation trials at Davis',
        tolerance: 0.01,
        because: PRINTED
      },
      [
        ['half of 3.68 in, in', seventeen.expected.applyIn, held['allowed-us'] as number],
        ['the same of 19.41 gal, gal', seventeen.expected.applyGal, pawGal * mad],
        ['19.41 gal on a cylinder of 1 m, in', pawIn, depthOnAreaM(si(pawGal, 'gal', 'volume'), cylinderM2) / inches(1)]
      ]
    ),
    ...rows({ calculation, source: 'worked on paper', tolerance: BITS, because: EXACT }, [
      ['1.84 in at 0.25 in a day × 0.5, days', 14, held['interval'] as number]
    ])
  ]
}

function rainRows(): Row[] {
  const effective = (method: RainMethod, facts: RainFacts) => present(effectiveRainM(method, facts))
  const twenty = example<readonly number[], readonly number[]>('P20')
  const scs = example<readonly number[], readonly number[]>('P21')
  const tr21 = example<readonly { P: number; ETc: number; D: number }[], readonly number[]>('P21b')
  const manual = [
    [35, 11],
    [90, 47],
    [116, 67.8],
    [5, 0],
    [260, 183],
    [75, 35]
  ] as const
  const calculation = 'effective-rain'
  const mm = (value: number) => value / 1000
  return [
    ...rows(
      { calculation, source: 'Texas evapotranspiration network', tolerance: 0.001, because: SAME_FORMULA },
      twenty.inputs.map(
        (rain, index) =>
          [
            `one rain of ${rain} in, in`,
            twenty.expected[index] ?? 0,
            effective('per-event', { rainM: inches(rain) }) / inches(1)
          ] as const
      )
    ),
    ...rows(
      { calculation, source: 'FAO paper 46 (1992), USDA monthly method', tolerance: 0.01, because: SAME_FORMULA },
      [...scs.inputs.map((rain, index) => [rain, scs.expected[index] ?? 0] as const), [450, 170] as const].map(
        ([rain, published]) =>
          [`${rain} mm in a month, mm`, published, effective('scs-monthly', { rainM: mm(rain) }) * 1000] as const
      )
    ),
    ...rows(
      {
        calculation,
        source: 'National Engineering Handbook 623 (1993), eq. 2-84',
        tolerance: 0.005,
        because: SAME_FORMULA
      },
      tr21.inputs.map(
        ({ P, ETc, D }, index) =>
          [
            `${P} in of rain, ${ETc} in used, ${D} in stored, in`,
            tr21.expected[index] ?? 0,
            effective('tr-21', { rainM: inches(P), useM: inches(ETc), storageM: inches(D) }) / inches(1)
          ] as const
      )
    ),
    ...rows(
      {
        calculation,
        source: 'National Engineering Handbook 623 (1993), eq. 2-85',
        tolerance: 0.0001,
        because: PRINTED
      },
      [['storage factor of 3 in', 1.0007, storageFactor(3)]]
    ),
    ...rows(
      { calculation, source: 'FAO training manual 3 (1986), from memory', tolerance: 0.01, because: SAME_FORMULA },
      manual.map(
        ([rain, published]) =>
          [`${rain} mm in a month, mm`, published, effective('fao-manual-3', { rainM: mm(rain) }) * 1000] as const
      )
    )
  ]
}

function budgetRows(): Row[] {
  type Site = { etoIn: number; zones: readonly (readonly [number, number, number])[]; sla: number }
  type Sheet = Record<'slaGal' | 'totalGal' | 'avgEtaf' | 'siteEtaf' | 'correctMawaRes', number> & {
    zoneGal: readonly number[]
  }
  const eighteen = example<Site, Sheet>('P18')
  const { etoIn, zones, sla } = eighteen.inputs
  const etoM = inches(etoIn)
  const hydrozones = zones.map(([factor, efficiency, area]) => ({ factor, efficiency, areaM2: feet2(area) }))
  const special = feet2(sla)
  const areaM2 = sum(hydrozones.map(zone => zone.areaM2)) + special
  const used = [...hydrozones.map(zone => zoneUseGal(etoM, zone)), specialUseGal(etoM, special)]
  // The sheet rounds each adjustment factor to three digits.
  const percent = 0.0012
  const sheet = {
    calculation: 'water-budget',
    source: 'completed ordinance worksheet, California (2021)',
    because: 'the sheet rounds its factors to 3 digits'
  }
  const twentyTwo = example<
    readonly (readonly [number, number])[],
    { gal: readonly number[]; areaFt2: number; totalGal: number; avg: number }
  >('P22')
  const perFoot = (gallons: number) => depthOnAreaM(si(gallons, 'gal', 'volume'), feet2(1))
  const volumes = twentyTwo.inputs.map(([area, gallons]) =>
    fromSi(volumeM3(perFoot(gallons), feet2(area)), 'gal', 'volume')
  )
  const city = { calculation: 'water-allowance', source: 'City of Fort Collins, Colorado, annual water use table' }
  return [
    ...zones.flatMap(([factor, efficiency, area], index) =>
      rows({ ...sheet, tolerance: (eighteen.expected.zoneGal[index] ?? 0) * percent }, [
        [`${factor} at ${efficiency} on ${area} ft², gal`, eighteen.expected.zoneGal[index] ?? 0, used[index] ?? 0]
      ])
    ),
    ...rows({ ...sheet, tolerance: 0.01 }, [
      ['special area of 68 ft², gal', eighteen.expected.slaGal, used.at(-1) ?? 0]
    ]),
    ...rows({ ...sheet, tolerance: eighteen.expected.totalGal * 0.0005 }, [
      ['whole site, gal', eighteen.expected.totalGal, sum(used)]
    ]),
    ...rows({ ...sheet, source: 'worked on paper, unrounded', tolerance: 0.01, because: PRINTED }, [
      ['whole site, gal', 34322.54, sum(used)]
    ]),
    ...rows({ ...sheet, tolerance: 0.0006, because: PRINTED }, [
      ['adjustment of the zones', eighteen.expected.avgEtaf, meanAdjustment(hydrozones, 0)],
      ['adjustment of the site', eighteen.expected.siteEtaf, meanAdjustment(hydrozones, special)]
    ]),
    ...rows(
      { ...sheet, source: 'California title 23, section 490, worked on paper', tolerance: 0.05, because: PRINTED },
      [
        [
          'allowance, special area within the area, gal',
          eighteen.expected.correctMawaRes,
          allowanceGal({ etoM, rainM: 0, adjustment: 0.55, areaM2, specialAreaM2: special })
        ]
      ]
    ),
    ...rows(
      { ...city, tolerance: 1e-6, because: EXACT },
      twentyTwo.inputs.map(
        ([area, gallons], index) =>
          [`${area} ft² at ${gallons} gal/ft², gal`, twentyTwo.expected.gal[index] ?? 0, volumes[index] ?? 0] as const
      )
    ),
    ...rows({ ...city, tolerance: 1e-6, because: EXACT }, [
      ['together, gal', twentyTwo.expected.totalGal, sum(volumes)]
    ]),
    ...rows({ ...city, tolerance: 0.05, because: PRINTED }, [
      ['gal/ft² on the whole', twentyTwo.expected.avg, sum(volumes) / twentyTwo.expected.areaFt2]
    ])
  ]
}

function pipeRows(): Row[] {
  type Pipe = Record<'gpm' | 'idIn' | 'C' | 'lengthFt', number>
  const nineteen = example<Pipe, Record<'ftPer100' | 'lossFt' | 'velocityFtS', number>>('P19')
  const { gpm, idIn, C, lengthFt } = nineteen.inputs
  const [flow, inside, length] = [si(gpm, 'gpm', 'flow'), inches(idIn), si(lengthFt, 'ft', 'length')]
  const pipe = calc('pipe-loss', { flow: `${gpm} gpm`, inside: `${idIn} in`, length: '100 ft', roughness: String(C) })
  const { ftPer100, lossFt, velocityFtS } = nineteen.expected
  const of = {
    calculation: 'pipe-loss',
    source: 'an engineering handbook page on Hazen-Williams',
    because: 'printed to one or two digits, 1 %'
  }
  return [
    ...rows({ ...of, tolerance: ftPer100 * 0.01 }, [
      ['200 gpm in 3.048 in, C 140, ft in 100 ft', ftPer100, pipe['head-per-100'] as number]
    ]),
    ...rows({ ...of, tolerance: lossFt * 0.01 }, [
      ['on 30 ft, ft', lossFt, pipeHeadLossM(flow, inside, length, C) / 0.3048]
    ]),
    ...rows({ ...of, tolerance: velocityFtS * 0.01 }, [
      ['velocity, ft/s', velocityFtS, pipeVelocityMPerS(flow, inside) / 0.3048]
    ]),
    ...rows({ ...of, source: 'worked on paper', tolerance: 0.01, because: PRINTED }, [
      ['the same, psi in 100 ft', 3.9, pipe['loss-us'] as number]
    ]),
    ...rows(
      {
        ...of,
        source: 'US EPA network model, metric form with 4.871',
        tolerance: 8.89 * 0.02,
        because: 'another exponent of the diameter, 2 %'
      },
      [['200 gpm in 3.048 in, C 140, ft in 100 ft', 8.89, pipe['head-per-100'] as number]]
    )
  ]
}

export const WATER_ROWS: readonly Row[] = [
  ...rateRows(),
  ...conversionRows(),
  ...uniformityRows(),
  ...runTimeRows(),
  ...percentRows(),
  ...zoneRows(),
  ...cycleRows(),
  ...reservoirRows(),
  ...rainRows(),
  ...budgetRows(),
  ...pipeRows()
]
