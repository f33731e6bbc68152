import type { FindingsPage, FleetPage, Label, LabelSheet, SitePage } from '../../src/binder/pages.ts'
import { BINDER_METRIC } from './binder-metric.ts'
import { WATER_FIGURES } from './water-figures.ts'
import type { FindingBlock } from '../../src/binder/blocks.ts'
import { computed, gap, mono, open, qr, stated, withState } from './values.ts'

const label: Label = {
  tag: '7KQ3F9X',
  site: 'Kestrel Cross Roundabout',
  box: 'VB1',
  hazardLine: 'LIVE TRAFFIC. Close the lane first.',
  shutOff: 'Meter pit, 2 m north of lamp post 4, quarter turn, T-key',
  stations: [
    { station: 'K1/1', waters: 'Z1 · groundcover, drip' },
    { station: 'K1/3', waters: 'Z3 · meadow, spray' }
  ],
  battery: '1 × 9 V alkaline',
  coil: 'DC latching 2-wire',
  url: 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/',
  qr: qr('7KQ3F9X'),
  foot: 'Data of 2026-05-01 · revision 3'
}

const { hazardLine: _, ...calm } = label

/** One with a hazard, one calm, one with many stations, one with nothing on file and a long address. */
export const LABELS_METRIC: LabelSheet = {
  site: 'kestrel-cross',
  language: 'en-US',
  paper: 'A4',
  title: 'Lid labels · Kestrel Cross Roundabout',
  lead: [
    'Print on white matt synthetic sheet, in black. Cut along the marks.',
    'Clean and dry the inside of the lid first. Where glue does not hold, fix a plate with rivets or ties.'
  ],
  labels: [
    label,
    { ...calm, tag: 'M4WT8CE', box: 'VB2', qr: qr('M4WT8CE'), url: 'HTTPS://EXAMPLE.ORG/B/M4WT8CE/' },
    {
      ...label,
      tag: 'ZR62HNA',
      box: 'P1',
      stations: Array.from({ length: 12 }, (_, index) => ({
        station: `P1/${index + 1}`,
        waters: `Z${index + 1} · turf rotors`
      })),
      qr: qr('ZR62HNA'),
      url: 'HTTPS://EXAMPLE.ORG/B/ZR62HNA/'
    },
    {
      ...calm,
      tag: 'Q9CM4JT',
      box: 'MR-13',
      site: 'Mercer Row Streetscape Planters, from Tollhaven Quay to the Old Weigh House',
      shutOff: 'Shut-off: not supplied',
      stations: Array.from({ length: 6 }, (_, index) => ({
        station: `K2/${index + 1}`,
        waters: `planter ${index + 1}, drip`
      })),
      battery: 'no battery in this box',
      coil: 'coil kind not stated',
      url: 'HTTPS://BOXES.TOLLHAVEN-STREETS.EXAMPLE/B/Q9CM4JT/',
      qr: {
        text: 'HTTPS://BOXES.TOLLHAVEN-STREETS.EXAMPLE/B/Q9CM4JT/',
        level: 'H',
        moduleMm: 1.1,
        version: 5,
        sideMm: 1.1 * 45
      }
    }
  ]
}

export const LABELS_US: LabelSheet = {
  ...LABELS_METRIC,
  site: 'larkmoor-avenue',
  paper: 'Letter',
  title: 'Lid labels · Larkmoor Avenue Median'
}

const findings = BINDER_METRIC.sections
  .flatMap(section => section.blocks)
  .filter((block): block is FindingBlock => block.kind === 'finding')

export const SITE: SitePage = {
  site: 'kestrel-cross',
  watering: { title: 'Watering day and week', blocks: [] },
  visits: {
    title: 'Visits',
    blocks: [
      {
        kind: 'table',
        columns: ['Date', 'By', 'Done'].map(label => ({ label })),
        rows: [['2025-10-20', 'R. Example', 'shut and drained'].map(text => ({ text, standing: 'stated' as const }))]
      },
      {
        kind: 'picture',
        file: 'data:image/gif;base64,R0lGODlhAQABAAAAACw=',
        alt: 'lid open',
        caption: '2025-10-20, lid open'
      }
    ]
  },
  needGiven: {
    title: 'Needed and given, month by month',
    lead: 'Depth over the whole area.',
    figures: WATER_FIGURES.flatMap(one => (one.kind === 'figure' && one.figure.figure === 'need-given' ? [one] : [])),
    tables: []
  },
  language: 'en-US',
  title: 'Kestrel Cross Roundabout',
  facts: [
    { label: 'Place', value: stated('Roundabout') },
    { label: 'Address', value: stated('Kestrel Cross, Harrow Mere') },
    { label: 'Owner', value: stated('Harrow Mere Council') },
    { label: 'Maintained by', value: gap() },
    { label: 'Winterize by', value: open('No first-freeze date is stated.') }
  ],
  links: [
    { label: 'Binder', href: 'binder.html', note: 'the whole site on paper' },
    { label: 'Lid labels', href: 'labels.html', note: 'one for each box' },
    { label: 'Binder, PDF', href: '../../print/kestrel-cross-binder.pdf', note: 'made by "underlid print"' }
  ],
  boxes: [
    {
      box: 'VB1',
      tag: '7KQ3F9X',
      href: '../../public/B/7KQ3F9X/',
      where: 'centre island, NE',
      serves: 'controller K1, valve Z1, valve Z3'
    },
    { box: 'VB2', tag: 'M4WT8CE', href: '../../public/B/M4WT8CE/', where: 'centre island, SW', serves: 'valve Z2' },
    { box: 'VB3', tag: '', where: 'not supplied', serves: 'valve Z4' }
  ],
  batteries: [
    {
      controller: 'K1',
      kind: '1 × 9 V alkaline',
      fitted: mono('2025-04-14'),
      due: computed('2026-04-14'),
      state: 'bad',
      word: 'OVERDUE'
    },
    {
      controller: 'K2',
      kind: '4 × AA alkaline',
      fitted: mono('2025-06-20'),
      due: computed('2026-06-20'),
      state: 'soon',
      word: 'DUE SOON'
    },
    {
      controller: 'K3',
      kind: '4 × AA alkaline',
      fitted: mono('2026-03-20'),
      due: computed('2027-03-20'),
      state: 'good',
      word: 'OK'
    },
    {
      controller: 'K4',
      kind: '4 × AA alkaline',
      fitted: gap(),
      due: open('No fitted date.'),
      state: 'unknown',
      word: 'NO DATE'
    }
  ],
  findings,
  counts: { error: 1, warning: 1, note: 1 },
  foot: 'Underlid 0.1.0 · as of 2026-05-01 · for the office, not for hosting'
}

const row = (
  id: string,
  title: string,
  place: string,
  boxes: number,
  stations: number,
  nextDue: FleetPage['sites'][number]['nextDue'],
  counts: FleetPage['sites'][number]['counts']
) => ({
  id,
  title,
  href: `${id}/index.html`,
  place,
  boxes,
  stations,
  nextDue,
  counts,
  marks: { place, status: 'in-service', findings: counts.error > 0 ? 'error' : 'none', due: 'ok' }
})

export const FLEET: FleetPage = {
  language: 'en-US',
  title: 'Sites',
  asOf: 'As of 2026-05-01',
  findings: { label: 'All findings', href: 'findings.html' },
  filters: [
    {
      key: 'findings',
      label: 'Findings',
      choices: [
        { value: 'error', label: 'with errors' },
        { value: 'none', label: 'with nothing found' }
      ]
    }
  ],
  totals: [
    { label: 'Sites', value: '6' },
    { label: 'Valve boxes', value: '43' },
    { label: 'Controllers', value: '33' },
    { label: 'Stations', value: '54' },
    { label: 'Batteries overdue', value: '4' },
    { label: 'Batteries due within 60 days', value: '16' },
    { label: 'Errors', value: '21' },
    { label: 'Warnings', value: '17' }
  ],
  sites: [
    row(
      'kestrel-cross',
      'Kestrel Cross Roundabout',
      'Roundabout',
      3,
      4,
      withState(computed('2026-04-14 OVERDUE'), 'bad'),
      { error: 4, warning: 2, note: 1 }
    ),
    row(
      'larkmoor-avenue',
      'Larkmoor Avenue Median, segments 3 to 7',
      'Median',
      5,
      5,
      withState(computed('NO DATE'), 'unknown'),
      { error: 7, warning: 3, note: 0 }
    ),
    row(
      'mercer-row',
      'Mercer Row Streetscape Planters',
      'Planters',
      22,
      22,
      withState(computed('2026-05-20 DUE SOON'), 'soon'),
      { error: 6, warning: 9, note: 2 }
    ),
    row('brindle-common', 'Brindle Common Park', 'Park', 8, 10, withState(computed('2027-03-20'), 'good'), {
      error: 4,
      warning: 3,
      note: 0
    }),
    row('osmund-vale', 'Osmund Vale Nursery', 'Nursery', 6, 6, stated('nothing dated'), {
      error: 0,
      warning: 0,
      note: 0
    }),
    {
      ...row('tinder-street', 'tinder-street', '–', 0, 0, stated('–'), { error: 2, warning: 0, note: 0 }),
      problem: 'Not built: 2 faults in its files. The last good pages stand.'
    }
  ],
  due: [
    {
      date: withState(computed('NO DATE'), 'unknown'),
      site: 'Larkmoor Avenue Median',
      subject: 'C5',
      what: 'Battery, 1 × 9 V alkaline',
      href: 'larkmoor-avenue/index.html'
    },
    {
      date: withState(computed('2026-03-10 OVERDUE'), 'bad'),
      site: 'Larkmoor Avenue Median',
      subject: 'C3',
      what: 'Battery, 1 × 9 V alkaline',
      href: 'larkmoor-avenue/index.html'
    },
    {
      date: withState(computed('2026-04-14 OVERDUE'), 'bad'),
      site: 'Kestrel Cross Roundabout',
      subject: 'K1',
      what: 'Battery, 1 × 9 V alkaline',
      href: 'kestrel-cross/index.html'
    },
    {
      date: withState(computed('2026-05-20 DUE SOON'), 'soon'),
      site: 'Mercer Row Streetscape Planters',
      subject: 'MR-01',
      what: 'Battery, 1 × 9 V alkaline',
      href: 'mercer-row/index.html'
    },
    {
      date: withState(computed('2027-03-20'), 'good'),
      site: 'Brindle Common Park',
      subject: 'S1',
      what: 'Backflow test',
      href: 'brindle-common/index.html'
    }
  ],
  foot: 'Underlid 0.1.0 · as of 2026-05-01 · for the office, not for hosting'
}

export const FINDINGS: FindingsPage = {
  language: 'en-US',
  title: 'Findings',
  asOf: 'As of 2026-05-01',
  lookedAt: 'Looked at 6 sites, 43 valve boxes, 33 controllers and 54 stations.',
  fleet: { label: 'Sites', href: 'index.html' },
  kinds: [
    { code: 'wire/loop-over-limit', severity: 'error', count: 7, sites: 2 },
    { code: 'tag/missing', severity: 'warning', count: 1, sites: 1 }
  ],
  sites: [
    {
      id: SITE.site,
      title: SITE.title,
      href: `${SITE.site}/index.html`,
      counts: SITE.counts,
      groups: SITE.findings.map((first, index) =>
        index === 0 ? { first, alike: 'The same holds for 2 more: Z2, Z3.' } : { first }
      )
    },
    { id: 'quay-street', title: 'quay-street', counts: { error: 0, warning: 0, note: 0 }, groups: [] }
  ],
  empty: 'Nothing was found.',
  foot: 'Underlid 0.1.0 · as of 2026-05-01 · for the office, not for hosting'
}
