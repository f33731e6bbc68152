import { slipText } from '../../src/page/slip.ts'
import type { Dice } from './dice.ts'
import { fileOf } from './folder.ts'
import type { Entry } from './folder.ts'
import { MUTATIONS } from './mutations.ts'
import { LONG, NAMES, NUMBERS, PROSE } from './words.ts'

/** A file that is handed to a verb, beside a valid folder of sites. */
export interface Input {
  readonly name: string
  readonly bytes: Buffer
}

/** What strangers and other programs hand in; each for the site of the seed `kestrel-cross`. */
export const INPUTS: Readonly<Record<string, (dice: Dice) => Input>> = {
  slips: dice => ({ name: 'slip.txt', bytes: harmedText(dice.pick(SLIPS), SLIP_HARMS, dice) }),
  'import CSV': dice => ({ name: 'rows.csv', bytes: harmedText(dice.pick(TABLES), TABLE_HARMS, dice) }),
  'import GeoJSON': dice => ({ name: 'points.geojson', bytes: harmedPoints(dice) })
}

export const INPUT_KINDS = Object.keys(INPUTS)

const VISIT = { box: 'VB2', tag: 'MHQ8SXJ', on: '2026-05-04', by: 'M. Example', reason: 'call' } as const
const SLIPS = [
  slipText({
    site: 'Kestrel Cross Roundabout',
    ...VISIT,
    batteries: [],
    readings: [{ station: 'K1/3', loop: '6.1', coil: '', flow: '', flowUnit: 'L/min' }],
    found: 'Z3 opens slowly',
    done: 'cleaned the filter',
    open: 'coil to be read'
  }),
  `Hello,\n\n${slipText({ site: 'Kestrel Cross Roundabout', ...VISIT, batteries: [], readings: [], found: 'lid cracked', done: '', open: '' })}\nYours\nM.`,
  [
    '---',
    'on: 2026-05-04',
    'by: M. Example, Example Landscapes',
    'reason: route',
    'batteries: [{ controller: K1, fitted: 2026-05-04, kind: 9 V alkaline, count: 1, rest: 9.4 V, under-load: 8.9 V }]',
    'readings: [{ station: K1/1, loop: 4.4 ohm }, { supply: S1, meter: 1284 m³ }]',
    'programs: [{ controller: K1, clock: 4 min fast }]',
    'parts: [{ item: gel-filled connector, count: 2 }]',
    'found: ["Z3 opens slowly"]',
    'open: [{ text: Z3 coil to be swapped, owner: office }]',
    '---',
    'It rained.',
    ''
  ].join('\n'),
  '> ---\n> on: 2026-05-04\n> by: M. Example\n> found: [a long text that a mail\n> program broke]\n> ---\n'
]

const SLIP_HARMS = [
  ...['types', 'numbers', 'units', 'dates', 'keys', 'names', 'long', 'structure', 'nesting', 'aliases', 'letters'],
  ...['encodings', 'line ends', 'control signs', 'prose']
]

const TABLES = [
  [
    'kind,id,where,lat,lon,ties,station,box,area,surveyor',
    'box,VB1,,54.97012,-1.61034,,,,,x',
    'box,VB4,"west splitter, by the sign",54.97013,-1.61035,1.2 m from sign; 3.4 m from curb,,,,x',
    'valve,,,,,,K1/2,VB4,141 m²,x',
    ''
  ].join('\r\n'),
  'station;zone;waters;area;flow\nK1/1;Z1;meadow, spray;210 m²;38 L/min\nK1/2;Z2;shrubs, drip;141 m²;12 L/min\n',
  '\ufeffName\tLat\tLong\tWhere\nVB1\t54.97012\t-1.61034\tnorth splitter\nVB9\t54.97010\t-1.61030\tsouth\n'
]

const TABLE_HARMS = ['weather', 'weather', 'weather', 'numbers', 'letters', 'encodings', 'line ends', 'control signs']

/** One to three harms, by the kinds that site files are harmed in. */
function harmedText(text: string, kinds: readonly string[], dice: Dice): Buffer {
  let bytes = Buffer.from(text, 'utf8')
  do {
    const kind = dice.pick(kinds)
    const path = kind === 'weather' ? 'x/rows.csv' : 'x/site.md'
    const image = new Map<string, Entry>([[path, fileOf(bytes)]])
    MUTATIONS[kind]?.(image, dice, { name: 'input', site: 'x', weight: 1, image })
    const entry = image.get(path)
    if (entry?.kind === 'file') bytes = Buffer.from(entry.bytes)
  } while (dice.chance(0.3))
  return bytes
}

const POINTS = {
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      id: 'VB1',
      geometry: { type: 'Point', coordinates: [-1.61034, 54.97012] },
      properties: { kind: 'box', ties: ['4.2 m from lamp post 7', '6.0 m from curb'] }
    },
    {
      type: 'Feature',
      geometry: { type: 'Point', coordinates: [-1.61035, 54.97013] },
      properties: { kind: 'box', name: 'VB4', where: 'west splitter' }
    },
    { type: 'Feature', geometry: null, properties: { kind: 'valve', station: 'K1/2', box: 'VB4', area: '141 m²' } }
  ]
}

function harmedPoints(dice: Dice): Buffer {
  const text = JSON.stringify(POINTS, undefined, dice.pick([0, 2]))
  if (dice.chance(0.3)) return harmedText(text, ['letters', 'encodings', 'line ends', 'control signs', 'numbers'], dice)
  const whole = structuredClone(POINTS) as unknown
  do put(whole, dice)
  while (dice.chance(0.3))
  const written = writtenOr(whole, dice.pick([0, 2]))
  return Buffer.from(written.replaceAll('"\u0001', '').replaceAll('\u0001"', ''))
}

/** Several throws may nest deeper than can be written from here; brackets alone then stand for it. */
function writtenOr(whole: unknown, indent: number): string {
  try {
    return JSON.stringify(whole, undefined, indent)
  } catch {
    return '['.repeat(20_000) + ']'.repeat(20_000)
  }
}

/** Something else at one place of a value. */
function put(value: unknown, dice: Dice): void {
  interface Spot {
    readonly holder: Record<string, unknown>
    readonly key: string
  }
  const spotsIn = (one: unknown): Spot[] =>
    typeof one === 'object' && one !== null
      ? Object.keys(one).map(key => ({ holder: one as Record<string, unknown>, key }))
      : []
  const places: Spot[] = []
  // With a list of its own, since an earlier throw may have nested deeper than calls can.
  const open = spotsIn(value).reverse()
  for (let spot = open.pop(); spot; spot = open.pop()) {
    places.push(spot)
    for (const inner of spotsIn(spot.holder[spot.key]).reverse()) open.push(inner)
  }
  // An earlier throw may have left nothing.
  if (places.length === 0) return
  const { holder, key } = dice.pick(places)
  const others: readonly (() => unknown)[] = [
    () => null,
    () => [],
    () => ({}),
    () => dice.below(1e9) * dice.pick([1, -1, 1e-9, 1e9, 1e290]),
    // Between these signs stands what JSON.stringify would not write.
    () => `\u0001${dice.pick(NUMBERS)}\u0001`,
    () => dice.pick(NAMES),
    () => dice.pick(LONG)(),
    () => dice.pick(PROSE)(),
    () => true,
    () => deep(dice.pick([10, 400, 3000])),
    () => structuredClone(value)
  ]
  const made = dice.pick(others)()
  const how = dice.below(6)
  if (how === 0) delete holder[key]
  else if (how === 1)
    holder[dice.pick(['id', 'kind', 'name', 'lat', 'toString', '__proto__', 'private', 'constructor'])] = made
  else holder[key] = made
}

function deep(levels: number): unknown {
  let made: unknown = 'x'
  for (let level = 0; level < levels; level += 1) made = [made]
  return made
}
