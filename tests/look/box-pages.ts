import type { BoxPage, GonePage, TagEntryPage } from '../../src/binder/pages.ts'
import type { IsoDate, MonthDay } from '../../src/units/date.ts'
import { BINDER_METRIC } from './binder-metric.ts'
import type { CautionBlock } from '../../src/binder/blocks.ts'
import { PHOTO, computed, gap, measured, mono, open, plate, stated, withState } from './values.ts'

const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December'
]
const PERCENT = [0, 0, 0, 0.6, 0.8, 0.95, 1, 0.95, 0.7, 0.35, 0, 0]

const cautions = BINDER_METRIC.sections
  .flatMap(section => section.blocks)
  .filter((block): block is CautionBlock => block.kind === 'caution')

/** A box in a road: hazard line, photograph, two stations here, a battery that is overdue. */
export const BOX_METRIC: BoxPage = {
  kind: 'live',
  tag: '7KQ3F9X',
  language: 'en-US',
  site: { id: 'kestrel-cross', title: 'Kestrel Cross Roundabout' },
  box: 'VB1',
  hazardLine: 'LIVE TRAFFIC. Close the lane first, 22:00–05:00.',
  rightBox: {
    serves: 'This box holds controller K1, valve Z1 and valve Z3.',
    where: stated('centre island, NE'),
    ties: ['4.2 m from lamp post 7', '6.0 m from curb'],
    photo: { file: PHOTO, alt: 'Valve box VB1, lid open' }
  },
  stopTheWater: [
    { title: 'S1 · potable', steps: ['Meter pit, 2 m north of lamp post 4: quarter turn clockwise with the T-key.'] },
    {
      title: 'At the valve',
      steps: [
        'Close the valve by hand: turn the flow control down, or turn the coil until the flow stops.',
        'A latching valve does not close by itself when the battery is taken out.'
      ]
    }
  ],
  hazards: [
    {
      signal: 'DANGER',
      text: 'Vehicles pass within an arm’s length.',
      instead: 'Close the lane by the plan for this site.'
    },
    { signal: 'WARNING', text: 'Opening a valve by hand lets pressure out.', instead: 'Shut the supply off first.' },
    { signal: 'NOTICE', text: 'DC latching coils: 24 V AC burns them out.', instead: 'Never connect an AC controller.' }
  ],
  masters: [],
  wiredHere: [
    {
      station: 'K1/1',
      zone: 'Z1',
      waters: 'groundcover, drip',
      wire: '0.75 mm², 3 m',
      wireColour: stated('red / white'),
      valveSize: stated('1 in'),
      valveBox: 'VB1',
      normalFlow: computed('51.1 L/min'),
      coil: stated('DC latching 2-wire'),
      loopReading: computed('4.35 Ω', 'wire-loop'),
      coilReading: plate('4.2 Ω'),
      baseline: measured('4.4 Ω on 2025-04-14')
    },
    {
      station: 'K1/3',
      zone: 'Z3',
      waters: 'meadow, spray',
      wire: '0.75 mm² + 1.5 mm², 36 m',
      wireColour: gap(),
      valveSize: stated('1 in'),
      valveBox: 'VB1',
      normalFlow: measured('38 L/min'),
      coil: stated('DC latching 2-wire'),
      loopReading: open('The size of the second segment is not stated.'),
      coilReading: plate('4.2 Ω'),
      baseline: gap()
    }
  ],
  batteries: [
    {
      controller: 'K1',
      kind: '1 × 9 V alkaline',
      fitted: mono('2025-04-14'),
      due: computed('2026-04-14', 'due-date'),
      state: 'bad',
      word: 'OVERDUE'
    }
  ],
  today: [
    {
      controller: 'K1',
      asOf: 'As of 2026-05-01',
      lines: ['No watering on this day.'],
      months: MONTH_NAMES.map((label, index) => {
        const percent = PERCENT[index] ?? 0
        return percent === 0
          ? { label, percent: '–', minutes: '–' }
          : { label, percent: `${Math.round(percent * 100)} %`, minutes: `${Math.round(percent * 72)} min` }
      }),
      rules: [
        'Program A: every 2 days from 2026-04-02, start 23:10',
        'Off outside 04-01 to 10-15.',
        'Watering allowed 23:00–05:00 (Harrow Mere Council).',
        'Lane closure 22:00–05:00.'
      ]
    }
  ],
  known: {
    lastVisit: 'Last visit 2026-03-04 by M. Example, Fenwick & Daughter',
    items: ['Open: Z3 opens slowly'],
    found: ['Z4: 128 m of 0.75 mm² leaves 3.41 V at the coil; it needs 5.5 V.'],
    readings: ['K1 battery: 9.4 V at rest, 8.9 V under load', 'K1/1: loop 4.4 Ω', 'S1 meter: 1284 m³']
  },
  tell: [
    { role: 'maintainer', name: 'Fenwick & Daughter', phone: '+44 1632 960 114', quote: 'Quote 7KQ3F9X' },
    { role: 'owner', name: 'Harrow Mere Council', quote: 'Quote 7KQ3F9X' }
  ],
  trust: {
    dataDate: 'Data of 2026-05-01',
    revision: 'Revision 3',
    printed: 'A printed binder is with the owner.',
    tag: '7KQ3F9X'
  },
  programs: [
    {
      kind: 'program-card',
      title: 'K1 · program A · summer',
      lines: [
        { label: 'Days', value: 'every 2 days from 2026-04-02' },
        { label: 'Start times', value: '23:10' },
        {
          label: 'Monthly percent',
          value:
            'Jan 0 · Feb 0 · Mar 0 · Apr 60 · May 80 · Jun 95 · Jul 100 · Aug 95 · Sep 70 · Oct 35 · Nov 0 · Dec 0 %'
        },
        { label: 'Last station ends', value: '00:52' }
      ],
      stations: [
        { station: '1', waters: 'Z1 · groundcover, drip', runTime: '25 min' },
        { station: '2', waters: 'Z2 · shrubs, drip', runTime: '25 min' },
        { station: '3', waters: 'Z3 · meadow, spray', runTime: '2 x 6 min soak 30 min' },
        { station: '4', waters: 'Z4 · splitter island', runTime: '10 min' }
      ]
    }
  ],
  faults: [
    {
      title: '1 · Open the valve by hand',
      steps: [
        'CAUTION: A valve that is opened by hand lets water out under pressure. Turn it slowly, with your face to one side.',
        'See that water reaches the box.',
        'Runs and stops by hand: The water side is sound. Go on.'
      ]
    },
    {
      title: '5 · From the controller end',
      steps: [
        'K1/1: expect 4.40 Ω; 3.52 Ω to 5.28 Ω is good. Wires alone 0.15 Ω.',
        'Much higher: Bad splice or nicked wire.'
      ]
    }
  ],
  cautions,
  otherCautions: ['A trench or pit that caves in'],
  languages: [],
  supplies: ['S1'],
  visit: { jobs: ['Z3 opens slowly'], sets: { K1: '1 × 9 V alkaline' }, threeLeads: ['K1/3'] },
  script: {
    units: 'metric',
    batteries: [{ controller: 'K1', due: '2026-04-14' }],
    words: {},
    controllers: [
      {
        controller: 'K1',
        units: 'metric',
        season: { from: '04-01' as MonthDay, to: '10-15' as MonthDay },
        delayBetweenStationsS: 5,
        stepS: 60,
        programs: [
          {
            id: 'A',
            days: { kind: 'every-n-days', every: 2, from: '2026-04-02' as IsoDate },
            starts: [1390],
            stations: [
              { number: 1, waters: 'Z1 · groundcover, drip', runTime: { cycles: 1, cycleS: 1500, soakS: 0 } },
              { number: 2, waters: 'Z2 · shrubs, drip', runTime: { cycles: 1, cycleS: 1500, soakS: 0 } },
              { number: 3, waters: 'Z3 · meadow, spray', runTime: { cycles: 2, cycleS: 360, soakS: 1800 } },
              { number: 4, waters: 'Z4 · splitter island', runTime: { cycles: 1, cycleS: 600, soakS: 0 } }
            ],
            monthlyPercent: PERCENT
          }
        ]
      }
    ]
  }
}

const { hazardLine: _, ...quiet } = BOX_METRIC

/** A box of one valve in a median, US units, with little on file and no line of hazard. */
export const BOX_US: BoxPage = {
  ...quiet,
  tag: 'M4WT8CE',
  site: { id: 'larkmoor-avenue', title: 'Larkmoor Avenue Median, segments 3 to 7' },
  box: 'C4',
  rightBox: { serves: 'This box holds controller C4 and valve Z4.', where: gap(), ties: [] },
  masters: [],
  wiredHere: [
    {
      station: 'C4/1',
      zone: 'Z4',
      waters: 'shrubs, spray',
      wire: '18 AWG, 5 ft',
      wireColour: stated('black / yellow stripe'),
      valveSize: stated('1-1/2 in'),
      valveBox: 'C4',
      normalFlow: measured('8.8 gpm'),
      coil: stated('DC latching 2-wire'),
      loopReading: computed('8.06 Ω', 'wire-loop'),
      coilReading: plate('8 Ω'),
      baseline: gap()
    }
  ],
  batteries: [
    {
      controller: 'C4',
      kind: '1 × 9 V alkaline',
      fitted: gap(),
      due: withState(open('No fitted date.'), 'unknown'),
      state: 'unknown',
      word: 'NO DATE'
    }
  ],
  programs: [],
  faults: [],
  cautions: cautions.slice(1),
  otherCautions: [],
  languages: [],
  supplies: ['S1'],
  visit: { jobs: [], sets: {}, threeLeads: [] },
  script: {
    units: 'us',
    batteries: [{ controller: 'C4' }],
    words: {},
    controllers: [
      {
        controller: 'C4',
        units: 'us',
        delayBetweenStationsS: 0,
        stepS: 60,
        programs: [
          {
            id: 'A',
            days: { kind: 'even-dates' },
            starts: [1350],
            stations: [{ number: 1, waters: 'Z4 · shrubs', runTime: { cycles: 1, cycleS: 2700, soakS: 0 } }]
          }
        ]
      }
    ]
  }
}

export const GONE: GonePage = {
  kind: 'gone',
  tag: 'ZR62HNA',
  language: 'en-US',
  title: 'Tag ZR62HNA',
  text: 'This tag was replaced. It was VB3.',
  now: { tag: '7KQ3F9X', href: '../7KQ3F9X/' }
}

export const TAG_ENTRY: TagEntryPage = {
  language: 'en-US',
  title: 'Find a box',
  lead: 'Type the seven characters of the tag under the lid.',
  label: 'Tag',
  button: 'Open',
  help: 'There is no 0, 1, I, L or O in a tag.',
  tags: ['7KQ3F9X', 'M4WT8CE', 'ZR62HNA', '2B7VXKD', 'Q9CM4JT', 'H3KP8WR', 'T6NB2YF']
}
