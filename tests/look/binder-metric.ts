import { boxFind, CHART, SHEET } from './plan-blocks.ts'
import { WATER_FIGURES } from './water-figures.ts'
import type { Binder, Block, TableBlock } from '../../src/binder/blocks.ts'
import { PHOTO, common, computed, gap, measured, mono, open, plate, qr, standard, stated, withState } from './values.ts'

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']
const MINUTES = [0, 0, 0, 312, 486, 640, 775, 690, 402, 180, 0, 0]

const wires: TableBlock = {
  kind: 'table',
  wide: true,
  columns: [
    { label: 'Station' },
    { label: 'Zone' },
    { label: 'Wire' },
    { label: 'Colors' },
    { label: 'One way', align: 'right' },
    { label: 'Loop', align: 'right' },
    { label: 'Coil', align: 'right' },
    { label: 'Expect at controller', align: 'right' },
    { label: 'Volts at coil', align: 'right' },
    { label: 'Limit' },
    { label: 'Longest run', align: 'right' },
    { label: 'Verdict' }
  ],
  rows: [
    wireRow('K1/1', 'Z1', '3 m', '0.15 Ω', '4.35 Ω', '8.21 V', '94.7 m', true),
    wireRow('K1/2', 'Z2', '41 m', '2.01 Ω', '6.21 Ω', '5.75 V', '46.8 m', true),
    [
      mono('K1/3'),
      stated('Z3'),
      stated('0.75 mm² + 1.5 mm²'),
      gap(),
      computed('36 m'),
      open('The size of the second segment is not stated.'),
      plate('4.2 Ω'),
      open('The size of the second segment is not stated.'),
      open('The size of the second segment is not stated.'),
      plate('5.5 V at coil'),
      open('The size of the second segment is not stated.'),
      withState(computed('NO LIMIT STATED'), 'unknown')
    ],
    wireRow('K1/4', 'Z4', '128 m', '6.27 Ω', '10.47 Ω', '3.41 V', '46.8 m', false)
  ],
  notes: ['Resistance at 20 °C. IEC 60228, class 1 and 2, plain copper.']
}

function wireRow(
  station: string,
  zone: string,
  length: string,
  loop: string,
  expected: string,
  volts: string,
  longest: string,
  passes: boolean
): TableBlock['rows'][number] {
  return [
    mono(station),
    stated(zone),
    stated('0.75 mm²'),
    stated('red / white'),
    computed(length),
    computed(loop, 'wire-loop'),
    plate('4.2 Ω'),
    computed(expected, 'wire-loop'),
    computed(volts, 'coil-voltage'),
    plate('5.5 V at coil'),
    computed(longest, 'wire-limit'),
    withState(computed(passes ? 'PASSES' : 'FAILS'), passes ? 'good' : 'bad')
  ]
}

const schedule: TableBlock = {
  kind: 'table',
  wide: true,
  caption: 'K1: minutes on a watering day',
  columns: [
    { label: 'Station' },
    { label: 'Waters' },
    ...MONTHS.map(label => ({ label, align: 'right' as const })),
    { label: 'Year', align: 'right' }
  ],
  rows: [
    ['A', 'Monthly percent', ['0', '0', '0', '60', '80', '95', '100', '95', '70', '35', '0', '0'], ''],
    [
      'A 1',
      'Z1 · groundcover, drip',
      ['–', '–', '–', '15', '20', '23.8', '25', '23.8', '17.5', '8.8', '–', '–'],
      '2,310'
    ],
    ['A 2', 'Z2 · shrubs, drip', ['–', '–', '–', '15', '20', '23.8', '25', '23.8', '17.5', '8.8', '–', '–'], '2,310'],
    ['A 3', 'Z3 · meadow, spray', ['–', '–', '–', '7.2', '9.6', '11.4', '12', '11.4', '8.4', '4.2', '–', '–'], '1,109'],
    ['A 4', 'Z4 · splitter island', ['–', '–', '–', '6', '8', '9.5', '10', '9.5', '7', '3.5', '–', '–'], '924']
  ].map(([station, waters, months, year]) => [
    mono(station as string),
    stated(waters as string),
    ...(months as string[]).map(text => computed(text)),
    computed(year as string)
  ])
}

const figures: Block[] = [
  {
    kind: 'figure',
    caption: 'One watering day of K1, noon to noon, at 100 %. Hatched: the watering window.',
    figure: {
      figure: 'day-strip',
      title: 'Watering day, K1',
      fromMinute: 720,
      toMinute: 2160,
      hours: [720, 900, 1080, 1260, 1440, 1620, 1800, 1980, 2160].map(minute => ({
        minute,
        label: `${String((minute / 60) % 24).padStart(2, '0')}:00`
      })),
      windows: [{ from: 1380, to: 1740, label: 'window' }],
      lanes: [
        { label: '1 · Z1', bars: [{ from: 1390, to: 1415, label: 'A' }] },
        { label: '2 · Z2', bars: [{ from: 1415, to: 1440, label: 'A' }] },
        {
          label: '3 · Z3',
          bars: [
            { from: 1440, to: 1446, label: 'A 23:10' },
            { from: 1476, to: 1482, label: 'A 23:46' }
          ]
        },
        { label: '4 · Z4', bars: [{ from: 1482, to: 1492, label: 'A' }] }
      ]
    }
  },
  {
    kind: 'figure',
    caption: 'Open-valve minutes of the whole site, month by month. The same figures stand in the table.',
    figure: {
      figure: 'months',
      title: 'Minutes of watering by month, all stations',
      unit: 'min',
      months: MONTHS.map((label, index) => ({ label, value: MINUTES[index] ?? 0, text: String(MINUTES[index]) }))
    }
  },
  {
    kind: 'figure',
    caption: 'Run of station K1/4: FAILS.',
    figure: {
      figure: 'wire-run',
      title: 'Wire run, station K1/4',
      from: 'K1',
      to: 'Z4',
      segments: [
        { label: '0.75 mm², 96 m', share: 96 },
        { label: '1.5 mm², 32 m', share: 32 }
      ],
      splices: 2,
      verdict: 'FAILS · 6.27 Ω',
      state: 'bad'
    }
  }
]

/** An invented roundabout on A4. Every kind of block stands in it at least once. */
export const BINDER_METRIC: Binder = {
  site: 'kestrel-cross',
  title: 'Kestrel Cross Roundabout',
  subtitle: 'Maintenance binder',
  language: 'en-US',
  paper: 'A4',
  running: { left: 'Kestrel Cross Roundabout · revision 3', right: 'Data of 2026-05-01' },
  contentsTitle: 'Contents',
  cover: {
    lines: [
      { label: 'Place', value: 'Roundabout' },
      { label: 'Address', value: 'Kestrel Cross, Harrow Mere' },
      { label: 'Owner', value: 'Harrow Mere Council' },
      { label: 'Maintained by', value: 'Fenwick & Daughter, Landscape Care' },
      { label: 'Installed by', value: 'not supplied' },
      { label: 'Watering season', value: '04-01 to 10-15' },
      { label: 'Status', value: 'In service' }
    ],
    company: 'Fenwick & Daughter',
    dataDate: 'Data of 2026-05-01',
    revision: '3',
    counts: [
      { label: 'Valve boxes', value: '3' },
      { label: 'Controllers', value: '1' },
      { label: 'Stations', value: '4' },
      { label: 'Water supplies', value: '1' }
    ],
    openItems: 'Open items: 4 errors, 2 warnings, 1 note. They are listed under Open items.',
    tags: [
      { box: 'VB1', tag: '7KQ3F9X' },
      { box: 'VB2', tag: 'M4WT8CE' },
      { box: 'VB3', tag: 'ZR62HNA' }
    ]
  },
  sections: [
    {
      id: 'safety',
      title: 'Safety first',
      newPage: true,
      blocks: [
        {
          kind: 'paragraph',
          text: 'Read these before you open a box. DANGER will kill or badly injure, WARNING can, CAUTION can injure, NOTICE is about damage only.'
        },
        {
          kind: 'caution',
          signal: 'DANGER',
          title: 'Working beside live traffic',
          hazard: 'The boxes stand on an island in the road, and drivers do not expect anybody there.',
          consequence: 'A vehicle that leaves its lane kills.',
          avoidance: [
            'Close the lane by the plan for this site before anybody steps onto the island.',
            'Wear high-visibility clothing. Face the traffic, and keep a way out.'
          ],
          edition: 'Traffic Signs Manual, chapter 8, 2009.',
          deference: 'The road authority decides how a lane is closed; this page does not.'
        },
        {
          kind: 'caution',
          signal: 'WARNING',
          title: 'Water under pressure',
          hazard: 'Opening a valve by hand lets pressure out.',
          consequence: 'A cap or a coil that flies off can take an eye.',
          avoidance: ['Shut the supply off first.', 'Turn slowly, with the face to the side.'],
          edition: '',
          deference: 'Common practice, no source. Local rules come first.'
        },
        {
          kind: 'caution',
          signal: 'CAUTION',
          title: 'Sharp things in the box',
          hazard: 'Glass and insects gather under a lid.',
          consequence: 'Cuts and stings.',
          avoidance: ['Look before you reach. Wear gloves.'],
          edition: '',
          deference: 'Common practice, no source.'
        },
        {
          kind: 'caution',
          signal: 'NOTICE',
          title: 'DC latching coils',
          hazard: 'The coils of this site take a short pulse from a battery.',
          consequence: '24 V AC burns them out.',
          avoidance: ['Never connect an AC controller or transformer.'],
          edition: '',
          deference: 'The product sheet decides.'
        }
      ]
    },
    {
      id: 'boxes',
      title: 'Valve boxes and how to find them',
      newPage: true,
      blocks: [
        {
          kind: 'table',
          columns: ['Box', 'Tag', 'Where', 'Measured ties', 'Holds', 'Load rating'].map(label => ({ label })),
          rows: [
            [
              stated('VB1'),
              mono('7KQ3F9X'),
              stated('centre island, NE'),
              stated('4.2 m from lamp post 7; 6.0 m from curb'),
              stated('controller K1, valve Z1'),
              stated('B125')
            ],
            [
              stated('VB2'),
              mono('M4WT8CE'),
              stated('centre island, SW'),
              stated('3.1 m from lamp post 9; 5.5 m from curb'),
              stated('valve Z2, valve Z3'),
              gap()
            ],
            [stated('VB3'), mono('ZR62HNA'), gap(), gap(), stated('valve Z4'), common('C250')]
          ],
          notes: ['Scan the code, or type the tag at HTTPS://EXAMPLE.ORG']
        },
        {
          kind: 'tag-plate',
          tag: '7KQ3F9X',
          box: 'VB1',
          site: 'Kestrel Cross Roundabout',
          url: 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/',
          qr: qr('7KQ3F9X')
        },
        {
          kind: 'tag-plate',
          tag: 'M4WT8CE',
          box: 'VB2',
          site: 'Kestrel Cross Roundabout',
          url: 'HTTPS://EXAMPLE.ORG/B/M4WT8CE/',
          qr: qr('M4WT8CE')
        },
        { kind: 'picture', file: PHOTO, alt: 'Valve box VB1, lid open', caption: 'VB1, lid open, from the north' },
        {
          kind: 'attachment',
          file: PHOTO,
          picture: true,
          page: 1,
          wide: false,
          caption: 'RD-1 irrigation as installed (plan.png)'
        },
        SHEET,
        boxFind(PHOTO),
        CHART
      ]
    },
    {
      id: 'controllers',
      title: 'Controllers and their programs',
      newPage: true,
      blocks: [
        { kind: 'heading', id: 'controller-k1', text: 'Controller K1' },
        {
          kind: 'facts',
          rows: [
            { label: 'Box', value: stated('VB1') },
            { label: 'Product sheet', value: stated('Four-station in-box controller, sheet of 2024') },
            { label: 'Serial number', value: gap() },
            { label: 'Battery', value: stated('1 × 9 V alkaline') },
            { label: 'Pulse at the terminals', value: plate('8.5 V') },
            { label: 'Pulse life', value: plate('8,000 pulses') },
            { label: 'Change interval', value: standard('12 months', 'None is stated.') },
            { label: 'Change below', value: common('8 V under load') },
            { label: 'Battery under load', value: measured('8.9 V', 'on 2026-05-01') },
            { label: 'Charge used a year', value: computed('1.4 Ah', 'pulse-charge') },
            { label: 'Winter days', value: open('No elevation is stated.') }
          ]
        },
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
        },
        figures[0] as Block,
        ...WATER_FIGURES
      ]
    },
    {
      id: 'zones',
      title: 'Zones',
      newPage: false,
      blocks: [
        {
          kind: 'table',
          columns: [
            { label: 'Station' },
            { label: 'Zone' },
            { label: 'Waters' },
            { label: 'Area', unit: 'm²', align: 'right' },
            { label: 'Normal flow', unit: 'L/min', align: 'right' },
            { label: 'Application rate', unit: 'mm/h', align: 'right' }
          ],
          rows: [
            [
              mono('K1/1'),
              stated('Z1'),
              stated('groundcover, drip'),
              stated('180'),
              computed('51.1'),
              computed('17.0', 'application-rate')
            ],
            [
              mono('K1/2'),
              stated('Z2'),
              stated('shrubs, drip'),
              stated('140'),
              computed('39.8'),
              computed('17.0', 'application-rate')
            ],
            [
              mono('K1/3'),
              stated('Z3'),
              stated('meadow, spray'),
              stated('210'),
              measured('38'),
              computed('10.9', 'application-rate')
            ],
            [mono('K1/4'), stated('Z4'), stated('splitter island, drip'), gap(), gap(), open('No area is stated.')]
          ]
        }
      ]
    },
    {
      id: 'wires',
      title: 'Wire schedule',
      newPage: true,
      blocks: [
        {
          kind: 'paragraph',
          text: 'One-way lengths. Loop is both wires at 20 °C. The limit named is the one that governs.'
        },
        wires,
        figures[2] as Block,
        {
          kind: 'list',
          lead: 'Splices',
          ordered: false,
          items: ['K1/4: VB3, sealed connector', 'K1/4: pit by lamp post 9, gel-filled']
        },
        {
          kind: 'table',
          caption: 'Readings on file',
          columns: ['Station', 'Date', 'Loop', 'Expect at controller', 'Coil', 'By'].map(label => ({ label })),
          rows: [
            [mono('K1/1'), mono('2025-04-14'), measured('4.4 Ω'), computed('4.35 Ω'), stated('–'), stated('installer')],
            [mono('K1/3'), mono('2025-04-14'), stated('–'), stated('–'), measured('33 Ω'), stated('installer')]
          ],
          blankRows: 6
        }
      ]
    },
    { id: 'schedule', title: 'Month-by-month schedule', newPage: true, blocks: [schedule, figures[1] as Block] },
    {
      id: 'batteries',
      title: 'Battery log',
      newPage: true,
      blocks: [
        {
          kind: 'table',
          columns: ['Controller', 'Box', 'Kind', 'Fitted', 'Due', 'State'].map(label => ({ label })),
          rows: [
            [
              stated('K1'),
              stated('VB1'),
              stated('1 × 9 V alkaline'),
              mono('2025-04-14'),
              computed('2026-04-14', 'due-date'),
              withState(stated('OVERDUE'), 'bad')
            ],
            [
              stated('K2'),
              stated('VB2'),
              stated('4 × AA alkaline'),
              mono('2025-06-20'),
              computed('2026-06-20', 'due-date'),
              withState(stated('DUE SOON'), 'soon')
            ],
            [
              stated('K3'),
              stated('VB3'),
              stated('4 × AA alkaline'),
              mono('2026-03-20'),
              computed('2027-03-20', 'due-date'),
              withState(stated('OK'), 'good')
            ],
            [
              stated('K4'),
              stated('VB3'),
              stated('4 × AA alkaline'),
              gap(),
              open('No fitted date.'),
              withState(stated('NO DATE'), 'unknown')
            ]
          ]
        },
        {
          kind: 'figure',
          caption: 'K3: due by 12 months after 2026-03-20. Months at either end are counted in part.',
          figure: {
            figure: 'battery-year',
            title: 'K3: fitted 2026-03-20, due 2027-03-20, 744 pulses between, change at: visit that ends the season.',
            unit: 'pulses a month',
            months: [
              ['Mar', 0, '2026'],
              ['Apr', 90],
              ['May', 124],
              ['Jun', 120],
              ['Jul', 124],
              ['Aug', 124],
              ['Sep', 120],
              ['Oct', 42],
              ['Nov', 0],
              ['Dec', 0],
              ['Jan', 0, '2027'],
              ['Feb', 0],
              ['Mar', 0]
            ].map(([label, pulses, year]) => ({
              label: String(label),
              pulses: Number(pulses),
              text: String(pulses),
              ...(year === undefined ? {} : { year: String(year) })
            })),
            seasons: [{ from: 31 / 396, to: 229 / 396 }],
            seasonLabel: 'watering season',
            marks: [
              { kind: 'fitted', at: 19 / 396, label: 'fitted 2026-03-20' },
              { kind: 'today', at: 61 / 396, label: 'data date' },
              { kind: 'visit', at: 228 / 396, label: 'visit that ends the season 2026-10-15' },
              { kind: 'due', at: 384 / 396, label: 'due 2027-03-20' }
            ]
          }
        },
        {
          kind: 'table',
          caption: 'Log: fill in at every change',
          columns: [
            'Date',
            'Controller',
            'Kind',
            'Volts at rest',
            'Volts under load',
            'Who',
            'Valves open and close'
          ].map(label => ({ label })),
          rows: [],
          blankRows: 14
        }
      ]
    },
    {
      id: 'season',
      title: 'Season start-up',
      newPage: true,
      blocks: [
        {
          kind: 'fault-step',
          why: 'Why: one reading holds the coil, both wires and every splice. You need: ohmmeter.',
          caution: 'NOTICE: Swapped leads make a valve work backward.',
          doLead: 'Do',
          todo: ['Take the pair off the controller and measure across it.', 'Measure each lead to ground.'],
          seenLead: 'Look for',
          seen: ['Within the band: sound.', 'Much higher: bad splice or nicked wire.', 'Much lower: wires that touch.']
        },
        {
          kind: 'figure',
          caption: 'Terminals of K9, not to scale.',
          figure: {
            figure: 'wiring',
            title: 'Wiring, controller K9',
            alt: 'Controller K9. Terminal 1 to Z1 in VB1; terminal 2 to Z2, two coils; master valve, pump relay and a sensor.',
            controller: 'K9',
            common: {
              terminal: 'C',
              label: 'common: white',
              sensors: [
                { name: 'RS1', contact: 'closed' },
                { name: 'FS1', contact: 'open' }
              ]
            },
            rows: [
              {
                terminal: '1',
                wires: 'red · 1.5 mm² 84 m + 2.5 mm² 12 m',
                conductors: 1,
                shared: true,
                splices: ['VB2'],
                end: 'coil',
                name: 'Z1',
                place: 'VB1',
                note: '6.00 Ω'
              },
              {
                terminal: '2',
                wires: 'blue · 1.5 mm² 40 m',
                conductors: 1,
                shared: true,
                splices: [],
                end: 'coils',
                name: 'Z2',
                place: 'VB2',
                note: '2 coils, 3.00 Ω'
              },
              {
                terminal: '3',
                wires: 'white 3 / red 3 · 1.5 mm² 205 m',
                conductors: 2,
                shared: true,
                splices: ['VB2', 'VB3'],
                end: 'three leads',
                name: 'Z3',
                place: 'VB3',
                note: '10.2 / 12.6 Ω'
              },
              {
                terminal: 'MV',
                wires: 'black / gray · 1.5 mm² 3 m',
                conductors: 2,
                shared: false,
                splices: [],
                end: 'coil',
                name: 'Master valve',
                place: 'VB1',
                note: '6.00 Ω'
              },
              {
                terminal: 'P',
                wires: '',
                conductors: 2,
                shared: false,
                splices: [],
                end: 'relay',
                name: 'Pump relay',
                place: 'MAINS BEYOND',
                note: ''
              },
              {
                terminal: 'SM1',
                wires: 'brown / blue · 1.5 mm² 88 m',
                conductors: 2,
                shared: false,
                splices: [],
                end: 'open contact',
                name: 'soil moisture',
                place: 'VB2',
                note: 'contact open'
              }
            ]
          }
        },
        {
          kind: 'checklist',
          sheet: 'Before the first watering',
          lead: 'Before the first watering',
          items: [
            'Open the shut-off slowly; look for leaks at every box.',
            'Fit a fresh battery; set clock, date and am/pm.',
            'Run each station by hand; see it open and shut fully.',
            'Compare flow and ohms with the values on the box page.'
          ]
        },
        {
          kind: 'list',
          lead: 'To stop the water at S1',
          ordered: true,
          items: [
            'Lift the lid of the meter pit, 2 m north of lamp post 4.',
            'Quarter turn clockwise with the T-key.',
            'See the meter stand still.'
          ]
        },
        {
          kind: 'prose',
          markdown:
            'Drive in from the **north arm**; the gate on the south arm is locked.\n\n- Park on the hatched bay.\n- The lid of VB2 sticks: {{ lift }} the far edge first.\n\nThe council keeps [its own page](https://example.org/kestrel) on the roundabout.\n\n### Odd here\n\nLamp post 7 was moved in 2024. <b>Ties</b> to it are new.'
        }
      ]
    },
    {
      id: 'warranty',
      title: 'Warranty',
      newPage: false,
      notSupplied: true,
      blocks: [{ kind: 'not-supplied', text: 'not supplied' }]
    },
    {
      id: 'open-items',
      title: 'Open items',
      newPage: true,
      blocks: [
        {
          kind: 'finding',
          code: 'wire/loop-over-limit',
          severity: 'error',
          severityWord: 'ERROR',
          subject: 'Z4',
          message: 'Z4: 128 m of 0.75 mm² leaves 3.41 V at the coil; it needs 5.5 V.',
          why: 'The pulse may be too weak to move the valve, and fails first when the battery is low. 8.5 V × 4.2 Ω ÷ (4.2 Ω + 6.27 Ω).',
          source: 'IEC 60228, class 1 and 2, plain copper.',
          fix: '2.5 mm² passes (5.86 V), or a run of 46.8 m.',
          place: 'sites/kestrel-cross/site.md:57:13'
        },
        {
          kind: 'finding',
          code: 'safety/traffic-control',
          severity: 'warning',
          severityWord: 'WARNING',
          subject: 'VB1',
          message: 'Lane closure 22:00–05:00, and no traffic-control plan on file.',
          why: 'Nobody may open these boxes without one.',
          source: '',
          fix: 'Put the plan with the site and name it under work-rules.',
          place: 'sites/kestrel-cross/site.md:21:3'
        },
        {
          kind: 'finding',
          code: 'power/season-not-covered',
          severity: 'note',
          severityWord: 'NOTE',
          subject: 'K1',
          message: 'The battery of K1 falls due inside the watering season.',
          why: 'A change at the start-up visit costs no extra trip.',
          source: '',
          fix: 'Change it at the visit before 04-01.',
          place: 'sites/kestrel-cross/site.md:34:5'
        }
      ]
    },
    {
      id: 'sign-offs',
      title: 'Sign-offs',
      newPage: false,
      blocks: [
        { kind: 'paragraph', text: 'Sign when the binder was handed over and walked through on site.' },
        {
          kind: 'signatures',
          sheet: 'Sign-offs',
          rows: ['Installer', 'Owner or representative', 'Maintainer'].map(role => ({
            role,
            fields: ['Name', 'Signature', 'Date']
          }))
        }
      ]
    },
    {
      id: 'numbers',
      title: 'How these numbers were made',
      newPage: true,
      blocks: [
        {
          kind: 'paragraph',
          text: 'Every figure comes from a named calculation. Run one alone with: npx underlid calc NAME.'
        },
        {
          kind: 'working',
          name: 'wire-loop',
          title: 'Resistance of a pair of wires',
          does: 'Both wires, there and back, at 20 °C.',
          steps: [
            { subject: 'K1/2', lines: ['2 × 41 m × 24.5 Ω/km ÷ 1000 = 2.01 Ω'] },
            { subject: 'K1/4', lines: ['2 × 128 m × 24.5 Ω/km ÷ 1000 = 6.27 Ω'] }
          ],
          sources: ['IEC 60228:2023, table 1', 'NFPA 70:2023, chapter 9, table 8 (read in a copy)'],
          limits: 'Splices add a little; the table gives maxima.'
        },
        { kind: 'paragraph', text: 'Letters that must be there: Ω µ ² ³ ° × − – — · ½ ¼ ≤ ≥ ≈ √ → ″ Łódź', small: true }
      ]
    },
    {
      id: 'index',
      title: 'Index of boxes, zones and parts',
      newPage: false,
      blocks: [
        {
          kind: 'index',
          entries: [
            { name: 'K1', kind: 'controller', targets: ['controllers', 'controller-k1', 'numbers'] },
            { name: 'VB1', kind: 'valve box', targets: ['boxes'] },
            { name: 'Z3', kind: 'zone', targets: ['zones', 'numbers'] }
          ]
        }
      ]
    }
  ]
}
