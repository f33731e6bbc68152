import type { SourceText } from '../../src/load/loaded.ts'

/** The day on which the base site is quiet. */
export const BASE_ON = '2026-05-01'
export const BASE_ID = 'base'
export const BASE_FILE = 'sites/base/site.md'
export const BASE_TAGS = { VB1: '7KQ3F9X', VB2: 'P5DAU38' } as const

const KEYS = `title: Base Site
units: metric
paper: A4
status: in-service
place: park
revision: "1"
location:
  { latitude: 54.97, longitude: -1.61, elevation: 60 m, time-zone: Europe/London, country: GB, address: "Plain Lane, Testwick" }
contacts:
  - { role: owner, name: Testwick Council, phone: "01632 960001", public: yes }
  - { role: maintainer, name: Plain Gardens, phone: "01632 960002", public: yes }
  - { role: installer, name: Plain Irrigation, licence: TW-100, phone: "01632 960003", public: yes }
season: { from: 04-01, to: 10-15 }
climate:
  name: Testwick
  reference-et:
    { Jan: 14 mm, Feb: 20 mm, Mar: 40 mm, Apr: 62 mm, May: 90 mm, Jun: 105 mm, Jul: 112 mm, Aug: 92 mm, Sep: 58 mm, Oct: 32 mm, Nov: 16 mm, Dec: 11 mm }
  effective-rain: none
supplies:
  - id: S1
    kind: potable
    shut-off: "meter pit by the gate, quarter turn"
    limit: 60 L/min
    static-pressure: 4.1 bar
    backflow: { kind: double check, serial: BF-1, tested: 2026-03-10, tester: A. Tester, interval: 12 months }
watering-rules:
  - { authority: Testwick Water, window: 22:00-06:00 }
work-rules: { road: no }
boxes:
  - id: VB1
    tag: 7KQ3F9X
    where: north bed
    ties: ["4.2 m from lamp post 7", "6.0 m from curb"]
    load-rating: A15
    photos: [vb1-open.jpg]
  - id: VB2
    tag: P5DAU38
    where: south bed
    ties: ["3.0 m from bench", "5.5 m from curb"]
    load-rating: A15
    photos: [vb2-open.jpg]
controllers:
  - id: K1
    box: VB1
    supply: S1
    sheet: _shared/sheets/plain.md
    serial: K-0001
    battery: { kind: 9 V alkaline, count: 1, fitted: 2026-03-20, interval: 12 months }
    clock: { daylight-saving: moved by hand, moved-by: maintainer }
    delay-between-stations: 5 s
    programs:
      - { id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 25 min, 2: 2 x 8 min soak 30 min } }
stations:
  - id: K1/1
    zone: Z1
    waters: shrubs, drip
    valve: { box: VB1, size: 1 in, coil: DC latching 2-wire, coil-resistance: 6 ohm, lowest-volts: 6 V, normal-flow: 12 L/min, minimum-flow: 2 L/min }
    wire: [{ size: 1.5 mm², length: 3 m, colour: red / white, cover: 450 mm, under: planting bed }]
    devices: { kind: drip, flow: 12 L/min }
    area: 120 m²
    plants: { kind: shrubs, factor: 0.5 }
    soil: { texture: loam, root-depth: 400 mm }
    slope: 1 %
    readings: [{ on: 2026-03-20, coil: 6.1 ohm, loop: 6.2 ohm, temperature: 12 °C, by: installer }]
  - id: K1/2
    zone: Z2
    waters: lawn, spray
    valve: { box: VB2, size: 1 in, coil: DC latching 2-wire, coil-resistance: 6 ohm, lowest-volts: 6 V, normal-flow: 28 L/min, minimum-flow: 2 L/min }
    wire: [{ size: 1.5 mm², length: 30 m, colour: blue / white, cover: 450 mm, under: lawn }]
    devices: { kind: spray, flow: 28 L/min }
    area: 150 m²
    plants: { kind: turf, factor: 0.8 }
    soil: { texture: loam, root-depth: 200 mm }
    slope: 1 %
    readings: [{ on: 2026-03-20, coil: 6.0 ohm, loop: 6.8 ohm, temperature: 12 °C, by: installer }]
warranty:
  - { item: whole system, start: 2026-03-20, end: 2027-03-20, terms: parts and labor, contact: installer }
`

const SHEET = `title: Plain four-station controller
mounting: in box
stations: 4
programs: 3
starts: 4
run-time: { least: 1 min, most: 12 h, step: 1 min }
limits: { pulse-volts: 9 V }
battery: { kind: 9 V alkaline, count: 1, interval: 12 months, pulses: 8000 }
ingress: IP68
`

const PROSE = `
## Getting there

Through the gate on Plain Lane.
`

export interface BaseOptions {
  /** Front matter of visits, each with the name of its file: [["2026-04-10-route.md", "on: 2026-04-10\\nby: A. Hand\\n"]]. */
  readonly visits?: readonly (readonly [name: string, keys: string])[]
  /** Top-level keys of the product sheet that replace those of the base. */
  readonly sheet?: string
  /** Whole files that join the shared ones. */
  readonly shared?: readonly SourceText[]
  readonly prose?: string
}

export interface SiteInput {
  readonly id: string
  readonly files: readonly SourceText[]
  readonly shared: readonly SourceText[]
  /** Drawings beside the site file. */
  readonly plans?: readonly SourceText[]
}

/**
 * A small clean site for tests: two boxes, one controller with its sheet, two stations, one supply. `overrides` are top-level keys in YAML,
 * each replacing that of the base: `season: { from: 05-01, to: 09-30 }`; a key with nothing after it takes the key out.
 */
export function baseSite(overrides = '', options: BaseOptions = {}): SiteInput {
  const { visits = [], sheet = '', shared = [], prose = PROSE } = options
  return {
    id: BASE_ID,
    files: [
      { file: BASE_FILE, text: frontMatter(replaceKeys(KEYS, overrides), prose) },
      ...visits.map(([name, keys]) => ({ file: `sites/base/visits/${name}`, text: frontMatter(keys, '') }))
    ],
    shared: [
      { file: 'sites/_shared/sheets/plain.md', text: frontMatter(replaceKeys(SHEET, sheet), 'As submitted.\n') },
      ...shared
    ]
  }
}

/** The register that knows the tags of the base site. */
export const baseRegister: SourceText = {
  file: 'sites/tags.csv',
  text: `tag,site,box,state,issued,now
${BASE_TAGS.VB1},${BASE_ID},VB1,live,2026-03-20,
${BASE_TAGS.VB2},${BASE_ID},VB2,live,2026-03-20,
`
}

/** By text, so that the writing of what is not replaced, and of what replaces it, stays as it is. */
export function replaceKeys(base: string, overrides: string): string {
  const replaced = blocks(overrides)
  const kept = [...blocks(base)].filter(([key]) => !replaced.has(key))
  return [...kept, ...replaced].map(([, block]) => block).join('')
}

function blocks(yaml: string): Map<string, string> {
  const found = new Map<string, string>()
  const ended = yaml === '' || yaml.endsWith('\n') ? yaml : `${yaml}\n`
  for (const block of ended.split(/^(?=[^\s#-][^\n]*?:)/mu)) {
    const key = block.slice(0, block.indexOf(':')).trim()
    if (block.trim() !== '') found.set(key, (found.get(key) ?? '') + block)
  }
  return found
}

function frontMatter(keys: string, body: string): string {
  return `---\n${keys}---\n${body}`
}
