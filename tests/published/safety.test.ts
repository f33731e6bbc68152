import { describe, expect, it } from 'vitest'
import { isPresent } from '../../src/base/absent.ts'
import { ingressCovers } from '../../src/domain/box/ingress.ts'
import { leastCover } from '../../src/domain/burial/cover-depth.ts'
import { AASHTO_CLASSES, EN_124_CLASSES, SCTE_TIERS } from '../../src/reference/box-loads.ts'
import { COVER_COLUMNS, COVER_LOCATIONS } from '../../src/reference/nec-300-5.ts'
import { calc, calcNumber } from '../support/calc.ts'
import { expectClose } from '../support/close.ts'

describe('NEC table 300.5(A), whole table as a public code reader prints it, mm (in) (37 figures in both units, 74 values)', () => {
  // Columns: direct burial, rigid metal, nonmetallic raceway, 120 V 20 A with GFCI, irrigation control. Two figures in a cell: direct / raceway.
  const printed: readonly (readonly [string, string])[] = [
    ['open ground', '600 (24), 150 (6), 450 (18), 300 (12), 150 (6)'],
    ['trench under 2 in concrete', '450 (18), 150 (6), 300 (12), 150 (6), 150 (6)'],
    ['under a building', '0 (0), 0 (0), 0 (0), 0 (0), 0 (0)'],
    ['under a 4 in slab without vehicles', '450 (18), 100 (4), 100 (4), 150 (6) / 100 (4), 150 (6) / 100 (4)'],
    ['street, road, driveway or parking lot', '600 (24), 600 (24), 600 (24), 600 (24), 600 (24)'],
    ['one- or two-family driveway', '450 (18), 450 (18), 450 (18), 300 (12), 450 (18)'],
    ['airport runway', '450 (18), 450 (18), 450 (18), 450 (18), 450 (18)']
  ]

  it('has every row', () => {
    expect(printed.map(([location]) => location)).toEqual(COVER_LOCATIONS)
  })

  it.each(printed)('%s: %s', (location, cells) => {
    const words = (raceway: boolean) =>
      COVER_COLUMNS.map(column => {
        const { inches, mm } = leastCover(location as (typeof COVER_LOCATIONS)[number], column, raceway)
        return `${mm} (${inches})`
      })
    const [direct, raceway] = [words(false), words(true)]
    expect(
      direct.map((cell, index) => (cell === raceway[index] ? cell : `${cell} / ${raceway[index]}`)).join(', ')
    ).toBe(cells)
  })
})

describe('cover and trench (P14 to P16; 9 values)', () => {
  it('P14: control wire of 30 V or less takes 6 in under a bed, 24 in under a public road, 18 in under a house’s drive (NEC table 300.5(A), column 5)', () => {
    const cover = (location: string) => calcNumber('cover-depth', { location }, 'cover-in')
    expect(cover('open ground')).toBe(6)
    expect(cover('street, road, driveway or parking lot')).toBe(24)
    expect(cover('one- or two-family driveway')).toBe(18)
  })

  it('P15: 6 in of cover, a cable of 0.5 in and 2 in of bedding are a trench of 8.5 in, exactly', () => {
    expect(calcNumber('trench', { cover: '6 in', cable: '0.5 in', bedding: '2 in' }, 'depth-in')).toBeCloseTo(8.5, 9)
  })

  it('P16: a trench of 4.5 ft in which a competent person saw no sign takes a ladder and no protective system (29 CFR 1926.651, 1926.652)', () => {
    const seen = calc('trench', { depth: '4.5 ft', ground: 'examined, no sign of a cave-in' })
    expect(seen).toMatchObject({ ladder: true, 'protective-system': false })
    expect(calc('trench', { depth: '4.5 ft' })).toMatchObject({ ladder: true, 'protective-system': true })
  })

  it.each([
    ['40 ft', 1],
    ['60 ft', 2],
    ['120 ft', 3]
  ])('P16: a trench of 4 ft and %s takes %d ways out (25 ft of travel)', (length, ways) => {
    expect(calcNumber('trench', { depth: '4 ft', length }, 'exits')).toBe(ways)
  })
})

describe('boxes and lids (P17, load tables; 22 values)', () => {
  it('P17: a median that vehicles can reach takes Tier 15 at least; in a carriageway every tier is refused and H-20 or D400 asked for', () => {
    const median = { location: 'median or verge that vehicles can reach' }
    expect(calc('box-load', median)['scte-tier']).toBe('Tier 15')
    expect(calc('box-load', { ...median, rating: 'Tier 8' })['enough']).toBe(false)
    expect(calc('box-load', { ...median, rating: 'Tier 15' })['enough']).toBe(true)
    const road = { location: 'carriageway' }
    expect(calc('box-load', road)['scte-tier']).toBe('none will do')
    expect(calc('box-load', { ...road, rating: 'Tier 22' })['enough']).toBe(false)
    expect(calc('box-load', { ...road, rating: 'D400' })['enough']).toBe(true)
    expect(calc('box-load', { ...road, rating: 'H-20' })['enough']).toBe(true)
  })

  // kN as an enclosure catalog prints the tiers of ANSI/SCTE 77: test load is 1.5 times the design load, within its rounding.
  it.each([
    ['Tier 5', 22.2, 33.3],
    ['Tier 8', 35.6, 53.4],
    ['Tier 15', 66.7, 100.1],
    ['Tier 22', 100.1, 150.1]
  ])('ANSI/SCTE 77 %s is %d kN by design and %d in the test', (tier, design, test) => {
    const ours = SCTE_TIERS.find(one => one.tier === tier)
    expect(ours).toMatchObject({ designKn: design, testKn: test })
    expectClose(test / design, 1.5, 0.2)
  })

  it('EN 124 classes are named by their test load in kN, and AASHTO H-20 is 16,000 lb on a wheel', () => {
    expect(EN_124_CLASSES.map(one => `${one.name} ${one.testKn}`)).toEqual([
      'A15 15',
      'B125 125',
      'C250 250',
      'D400 400',
      'E600 600',
      'F900 900'
    ])
    expect(AASHTO_CLASSES[0].wheelLb).toBe(16000)
  })
})

describe('ingress codes (P21, IEC 60529 and NEMA 250; 12 values)', () => {
  it.each([
    ['IP67', 'jets', false],
    ['IP67', 'temporary immersion', true],
    ['IP68', 'powerful jets', false],
    ['IP68', 'temporary immersion', true],
    ['IP67', 'continuous immersion', false],
    ['IP66/IP68', 'powerful jets', true],
    ['IP66/IP68', 'continuous immersion', true],
    ['IP66', 'jets', true],
    ['IP66', 'temporary immersion', false],
    ['IP55', 'powerful jets', false],
    ['NEMA 6P', 'temporary immersion', true],
    ['NEMA 4X', 'temporary immersion', false]
  ] as const)('P21: %s against %s: %s', (code, exposure, covered) => {
    const verdict = ingressCovers(code, exposure)
    expect(isPresent(verdict) && verdict).toBe(covered)
    expect(isPresent(verdict)).toBe(true)
  })
})

describe('backflow tests (P20, Uniform Plumbing Code 603.4.2; 2 values)', () => {
  it('P20: tested 2025-03-31 at 12 months is due 2026-03-31; a repair on 2025-07-02 asks for a test that day', () => {
    const tested = { fitted: '2025-03-31', interval: '12 months' }
    expect(calc('due-date', tested)['due']).toBe('2026-03-31')
    expect(calc('due-date', { ...tested, event: '2025-07-02' })).toEqual({ due: '2025-07-02', because: 'event' })
  })
})
