import { describe, expect, test } from 'vitest'
import { readdirSync } from 'node:fs'
import { isAbsent, isPresent } from '../../../src/base/absent.ts'
import { CAUTIONS, cautionCard, chooseCautions } from '../../../src/domain/safety/cautions.ts'
import type { CautionId } from '../../../src/domain/safety/cautions.ts'
import { SIGNALS, editionsHere } from '../../../src/domain/safety/card.ts'
import { NOTHING_KNOWN } from '../../../src/domain/safety/facts.ts'
import type { SafetyFacts, SupplyFacts } from '../../../src/domain/safety/facts.ts'
import { REGIONS, regionOf } from '../../../src/domain/safety/region.ts'
import { seasonFacts } from '../../../src/domain/safety/season-half.ts'
import { waterOf } from '../../../src/domain/safety/water.ts'
import { SOURCES } from '../../../src/reference/sources.ts'

const facts = (stated: Partial<SafetyFacts>): SafetyFacts => ({ ...NOTHING_KNOWN, ...stated })
const chosen = (stated: Partial<SafetyFacts>): CautionId[] => chooseCautions(facts(stated)).map(({ id }) => id)

const MAIN: SupplyFacts = { id: 'S1', water: 'drinking water', backflow: 'fitted', metered: true }
const AT_WORK: Partial<SafetyFacts> = {
  boxes: 3,
  stations: 4,
  batteries: ['9 V alkaline'],
  coils: ['DC latching 2-wire'],
  supplies: [MAIN]
}

/** What any place with boxes, valves, batteries and soil calls for. */
const OF_EVERY_BOX: CautionId[] = [
  'box-animals',
  'stored-pressure',
  'lids',
  'battery-handling',
  'valve-stays-open',
  'ac-on-latching',
  'polarity',
  'cable-cover',
  'battery-disposal'
]

describe('the list of cautions', () => {
  test('holds every file of the folder, once, under its own name', () => {
    const files = readdirSync('src/domain/safety/cautions').map(file => file.replace('.ts', ''))
    expect(CAUTIONS.map(card => card.id).sort()).toEqual(files.sort())
  })

  test('runs from the worst signal word to the mildest, and by rank within one', () => {
    const keys = CAUTIONS.map(card => SIGNALS.indexOf(card.signal) * 100 + card.rank)
    expect(keys).toEqual([...keys].sort((a, b) => a - b))
    expect(new Set(keys).size).toBe(CAUTIONS.length)
  })

  test('names an edition for every region, of sources that the register knows', () => {
    for (const card of CAUTIONS)
      for (const region of [...REGIONS, undefined]) {
        const { sources } = editionsHere(card.editions, region)
        expect(sources.length, `${card.id} in ${region}`).toBeGreaterThan(0)
        for (const source of sources) expect(SOURCES, card.id).toHaveProperty([source])
      }
  })

  test('refuses an id that it does not hold', () => {
    expect(() => cautionCard('wolves' as CautionId)).toThrow('wolves is not a caution')
  })
})

describe.each(CAUTIONS)('the worked case of $id', ({ applies, worked }) => {
  test('is chosen, with a reason in a sentence', () => {
    const reason = applies(facts(worked.example))
    expect(isPresent(reason)).toBe(true)
    expect(reason).toMatch(/^[A-Z0-9].*\.$/u)
  })
})

describe.each(CAUTIONS.filter(card => card.worked.instead))('the other case of $id', ({ applies, worked }) => {
  test('is left out where the facts speak against it, and says why', () => {
    expect(isAbsent(applies(facts(worked.instead ?? {})))).toBe(true)
  })
})

describe('cautions by the facts of a place', () => {
  test('only heat holds whatever the facts say', () => {
    expect(CAUTIONS.filter(card => !card.worked.instead).map(card => card.id)).toEqual(['heat'])
  })

  test('a roundabout puts traffic first', () => {
    expect(chosen({ ...AT_WORK, place: 'roundabout', deepestPitM: 0.5, vault: false })).toEqual([
      'traffic',
      'buried-utilities',
      'backflow',
      'lightning',
      'heat',
      ...OF_EVERY_BOX
    ])
  })

  test('a roof has its edge, and neither digging nor buried cable nor pits', () => {
    const ids = chosen({ ...AT_WORK, place: 'roof' })
    expect(ids[0]).toBe('fall-edge')
    for (const id of ['traffic', 'buried-utilities', 'trench', 'confined-space', 'cable-cover'] as const)
      expect(ids).not.toContain(id)
  })

  test('a nursery that doses feed from a pump has mains, chemical and backflow', () => {
    const dosed = { ...MAIN, injection: 'liquid feed' }
    const ids = chosen({ ...AT_WORK, place: 'nursery', pump: true, supplies: [dosed] })
    expect(ids).toEqual(expect.arrayContaining(['mains', 'chemical-injection', 'backflow']))
    expect(ids).not.toContain('traffic')
  })

  test('a park on drinking water with its depths and vaults stated has no DANGER', () => {
    const ids = chosen({ ...AT_WORK, place: 'park', deepestPitM: 0.6, vault: false })
    expect(ids.map(id => cautionCard(id).signal)).not.toContain('DANGER')
    expect(ids).not.toContain('trench')
  })

  test('where nothing is known, traffic, depth, vault, backflow and the kind of coil count as present', () => {
    expect(chosen({})).toEqual([
      'traffic',
      'confined-space',
      'buried-utilities',
      'trench',
      'backflow',
      'lightning',
      'heat',
      'valve-stays-open',
      'ac-on-latching',
      'polarity'
    ])
  })

  test('a stated "no road" takes traffic away from a planter, and never from a median', () => {
    expect(chosen({ place: 'planter' })).toContain('traffic')
    expect(chosen({ place: 'planter', road: false })).not.toContain('traffic')
    expect(chosen({ place: 'median', road: false })).toContain('traffic')
    expect(chosen({ place: 'park', road: true })).toContain('traffic')
  })

  test('the trench appears from 4 ft on, exactly', () => {
    expect(chosen({ deepestPitM: 4 * 0.3048 })).toContain('trench')
    expect(chosen({ deepestPitM: 4 * 0.3048 - 0.001 })).not.toContain('trench')
    expect(chosen({})).toContain('trench')
  })

  test('reclaimed water is named, and raw water alone needs no backflow caution', () => {
    const reclaimed: SupplyFacts = { id: 'S1', water: 'reclaimed', backflow: 'not stated', metered: true }
    expect(chosen({ supplies: [reclaimed] })).toContain('reclaimed-water')
    expect(chosen({ supplies: [{ ...reclaimed, water: 'raw', metered: false }] })).not.toContain('backflow')
    expect(chosen({ supplies: [{ ...reclaimed, water: 'raw' }, MAIN] })).toContain('backflow')
  })

  test('air is never assumed for winter', () => {
    expect(chosen(AT_WORK)).not.toContain('blow-out')
    expect(chosen({ ...AT_WORK, winterizedByAir: true })).toContain('blow-out')
  })

  test('coils that are all known to be 24 V AC need none of the latching notices', () => {
    const ids = chosen({ coils: ['24 V AC'] })
    for (const id of ['valve-stays-open', 'ac-on-latching', 'polarity'] as const) expect(ids).not.toContain(id)
  })

  test('three-wire coils have no polarity to reverse, a coil of unknown kind may', () => {
    expect(chosen({ coils: ['DC latching 3-wire'] })).not.toContain('polarity')
    expect(chosen({ coils: ['DC latching 3-wire', 'not known'] })).toContain('polarity')
  })

  test('the reason tells what a box’s own list names', () => {
    const reasons = chooseCautions(facts({ boxes: 1, boxHazards: ['wasps', 'glass'] }))
    expect(reasons.find(({ id }) => id === 'box-animals')?.reason).toBe('The boxes’ own lists name: wasps, glass.')
  })
})

describe('the codes of a country', () => {
  test('a country is known by its code, whatever the case; the Union stands for its states', () => {
    expect(['US', 'us', ' gb ', 'DE', 'AU', 'NZ'].map(regionOf)).toEqual(['US', 'US', 'GB', 'EU', 'AU', 'NZ'])
    expect(regionOf('JP')).toBeUndefined()
    expect(regionOf(undefined)).toBeUndefined()
  })

  test('Britain names its own street-works code, Japan and an unknown country the US code as an example', () => {
    const { editions } = cautionCard('traffic')
    expect(editionsHere(editions, 'GB')).toEqual({ sources: ['gb-street-works', 'en-iso-20471'], example: false })
    expect(editionsHere(editions, undefined)).toMatchObject({ sources: editions.US, example: true })
    expect(editionsHere(editions, 'US').example).toBe(false)
  })

  test('what holds everywhere is no example', () => {
    expect(editionsHere(cautionCard('polarity').editions, 'GB')).toEqual({
      sources: ['common-practice'],
      example: false
    })
  })
})

describe('the season', () => {
  test('follows the hemisphere: January is cool in Britain and warm in Australia', () => {
    expect(seasonFacts(1, 54.97)).toEqual({ month: 1, half: 'cool' })
    expect(seasonFacts(1, -33.9)).toEqual({ month: 1, half: 'warm' })
    expect(seasonFacts(7, -33.9)).toEqual({ month: 7, half: 'cool' })
  })

  test('turns on the first of April and of October', () => {
    expect([3, 4, 9, 10].map(month => seasonFacts(month, 40).half)).toEqual(['cool', 'warm', 'warm', 'cool'])
  })

  test('is warm all year in the tropics, on the line and on the equator, and unknown without a latitude', () => {
    expect(seasonFacts(1, 23.4).half).toBe('warm')
    expect(seasonFacts(1, 23.5).half).toBe('cool')
    expect(seasonFacts(7, 0).half).toBe('warm')
    expect(seasonFacts(7, undefined)).toEqual({ month: 7 })
  })
})

describe('the kind of water', () => {
  test.each([
    ['potable', 'drinking water'],
    ['mains', 'drinking water'],
    ['reclaimed', 'reclaimed'],
    ['recycled water', 'reclaimed'],
    ['treated effluent', 'reclaimed'],
    ['greywater', 'reclaimed'],
    ['pond pump', 'raw'],
    ['rainwater tank', 'raw'],
    ['non-potable', 'raw'],
    ['drain-down main', 'drinking water'],
    ['', 'drinking water']
  ])('"%s" is %s', (kind, water) => expect(waterOf(kind)).toBe(water))
})
