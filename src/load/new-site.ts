import { stringify } from 'yaml'
import type { SitePlace } from '../model/site.ts'
import type { UnitSystem } from '../units/show.ts'

export interface NewSite {
  readonly title: string
  readonly units: UnitSystem
  readonly place?: SitePlace
  readonly timeZone?: string
  /** The tag of the first box, drawn by the caller. */
  readonly tag?: string
}

/** What stands before each thing that only a person on the site can know. */
export const GAP_MARK = 'fill in:'

/** Amounts of the examples, in the units of the site. */
const AMOUNTS = {
  us: {
    flow: '10 gpm',
    pressure: '60 psi',
    run: '120 ft',
    area: '2200 ft²',
    depth: '8 in',
    cover: '18 in',
    et: '4.6 in',
    size: '14 AWG'
  },
  metric: {
    flow: '38 L/min',
    pressure: '4.1 bar',
    run: '36 m',
    area: '210 m²',
    depth: '200 mm',
    cover: '450 mm',
    et: '118 mm',
    size: '1.5 mm²'
  }
} as const

/**
 * A new site file: it loads without a fault, says of each key what it is for, and leaves blank whatever nobody has supplied. No amount in it
 * is a guess that could be taken for a reading: examples stand in comments.
 */
export function newSiteText({ title, units, place = 'other', timeZone, tag }: NewSite): string {
  const amount = AMOUNTS[units]
  return `---
# Keys are lower-case with hyphens. Every amount has its unit: ${amount.flow}, ${amount.pressure}, 25 min.
# A blank value means "not supplied" and is printed as such. All keys: docs/site-file.md
title: ${oneLine(title)}
units: ${units}
paper: ${units === 'us' ? 'Letter' : 'A4'}
status: planned
place: ${place}
revision: "1"
location:
  latitude: # ${GAP_MARK} degrees north, 54.97
  longitude: # ${GAP_MARK} degrees east, -1.61
  time-zone: ${timeZone ?? `# ${GAP_MARK} Europe/London, America/Denver`}
  address: # ${GAP_MARK} street address, as a visitor needs it
  country: # ${GAP_MARK} two letters; safety cautions name the codes of that country
contacts:
  # phone and email stay private unless "public: yes"
  - { role: owner, name: , phone: } # ${GAP_MARK} who owns the site
  - { role: maintainer, name: , phone: } # ${GAP_MARK} who looks after it
  - { role: installer, name: , licence: , phone: } # ${GAP_MARK} who built it
season: # ${GAP_MARK} { from: 04-01, to: 10-15 }, month then day
climate: # ${GAP_MARK} { reference-et: { Jul: ${amount.et} }, effective-rain: none }, or a file in _shared/climates/
supplies:
  - id: S1
    kind: potable # potable, reclaimed, well, tank, rainwater
    shut-off: # ${GAP_MARK} where and how to shut the water off
    limit: # ${GAP_MARK} ${amount.flow}, the most that may be drawn at once
    static-pressure: # ${GAP_MARK} ${amount.pressure}
    backflow: # ${GAP_MARK} { kind: double check, serial: "1234", tested: 2026-03-20, interval: 12 months }
watering-rules: # ${GAP_MARK} [{ authority: city, window: 22:00-06:00, days: even dates }]
work-rules:
  road: # ${GAP_MARK} yes or no: is the work in or beside a road?
  lane-closure: # ${GAP_MARK} 22:00-05:00
boxes:
  - id: VB1
    tag: ${tag ?? '# underlid tag draws one'}
    where: # ${GAP_MARK} in words
    ties: # ${GAP_MARK} ["distance from something that stays", "distance from another"]
    load-rating: # ${GAP_MARK} class of the lid
    photos: # ${GAP_MARK} [vb1-open.jpg], in the folder photos
controllers:
  - id: K1
    box: VB1
    supply: S1
    sheet: # ${GAP_MARK} _shared/sheets/name.md, what its product sheet states
    serial: # ${GAP_MARK} number on the plate
    battery: # ${GAP_MARK} { kind: 9 V alkaline, count: 1, fitted: 2026-03-20, interval: 12 months }
    clock: # ${GAP_MARK} { daylight-saving: moved by hand }, by itself, or not followed
    delay-between-stations: # ${GAP_MARK} 5 s
    programs: # ${GAP_MARK} as set; take the next line as a pattern
    # - { id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 25 min, 2: 2 x 6 min soak 30 min } }
stations:
  - id: K1/1 # controller, slash, number of the output
    zone: Z1 # your own name for what it waters
    waters: # ${GAP_MARK} what it waters
    valve:
      box: VB1
      size: # ${GAP_MARK} 1 in
      coil: # ${GAP_MARK} DC latching 2-wire, DC latching 3-wire, 24 V AC, or not known; read the marking
      coil-resistance: # ${GAP_MARK} 4.2 ohm, from its sheet
      lowest-volts: # ${GAP_MARK} 5.5 V, from its sheet
      normal-flow: # ${GAP_MARK} ${amount.flow}
    wire: # ${GAP_MARK} [{ size: ${amount.size}, length: ${amount.run}, colour: "red / white", cover: ${amount.cover} }]
    devices: # ${GAP_MARK} { kind: spray, flow: ${amount.flow} }
    area: # ${GAP_MARK} ${amount.area}
    plants: # ${GAP_MARK} { kind: shrubs, factor: 0.5 }
    soil: # ${GAP_MARK} { texture: loam, root-depth: ${amount.depth} }
    slope: # ${GAP_MARK} 1 %
    readings: # ${GAP_MARK} [{ on: 2026-03-20, coil: 4.3 ohm, loop: 5.1 ohm, by: installer }]
warranty:
  - { item: whole system, start: , end: , terms: } # ${GAP_MARK} days of acceptance and of its end
private:
  # shown on the restricted sheet and nowhere else
  keys: # ${GAP_MARK} where the keys are, codes of gates and doors
---

## Getting there

## What is odd here

## What was agreed
`
}

/** The lines of a site file that still wait for somebody, by their marks. Lines count from 1. */
export function gapsIn(text: string): readonly { readonly line: number; readonly gap: string }[] {
  return text.split(/\r?\n/u).flatMap((line, index) => {
    const marked = line.indexOf(`# ${GAP_MARK}`)
    return marked < 0 ? [] : [{ line: index + 1, gap: line.slice(0, marked).trim() }]
  })
}

/** Text as one YAML value, in quotes where it needs them. */
function oneLine(text: string): string {
  return stringify(text.replace(/\s+/gu, ' ').trim(), { lineWidth: 0 }).trim()
}
