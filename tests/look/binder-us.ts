import type { Binder } from '../../src/binder/blocks.ts'
import { BINDER_METRIC } from './binder-metric.ts'
import { computed, measured, mono, plate, stated, withState } from './values.ts'

const HOURS = ['12 pm', '3 pm', '6 pm', '9 pm', '12 am', '3 am', '6 am', '9 am', '12 pm']
const RAIN = [0, 210, 640, 1180, 1730, 2240, 2410, 2160, 1520, 830, 240, 0]
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

/** An invented median on Letter with 22 boxes: the cover must still hold. */
export const BINDER_US: Binder = {
  ...BINDER_METRIC,
  site: 'larkmoor-avenue',
  title: 'Larkmoor Avenue Median, segments 3 to 24',
  paper: 'Letter',
  running: { left: 'Larkmoor Avenue Median, segments 3 to 24 · revision B', right: 'Data of 2026-05-01' },
  cover: {
    ...BINDER_METRIC.cover,
    lines: BINDER_METRIC.cover.lines.map(({ label, value }) => ({
      label,
      value: label === 'Address' ? '2418 Larkmoor Avenue, Port Sable' : value
    })),
    revision: 'B',
    counts: [
      { label: 'Valve boxes', value: '22' },
      { label: 'Controllers', value: '22' },
      { label: 'Stations', value: '22' },
      { label: 'Water supplies', value: '1' }
    ],
    tags: Array.from({ length: 22 }, (_, index) => ({
      box: `VB${index + 3}`,
      tag: `${'23456789ABCDEFGHJKMNPQ'[index]}${'KQ3F9X'}`
    }))
  },
  sections: [
    {
      id: 'zones',
      title: 'Zones',
      newPage: true,
      blocks: [
        {
          kind: 'table',
          columns: [
            { label: 'Station' },
            { label: 'Waters' },
            { label: 'Area', unit: 'ft²', align: 'right' },
            { label: 'Normal flow', unit: 'gpm', align: 'right' },
            { label: 'Application rate', unit: 'in/h', align: 'right' },
            { label: 'Start' },
            { label: 'Battery due' }
          ],
          rows: Array.from({ length: 34 }, (_, index) => [
            mono(`C${index + 3}/1`),
            stated('shrubs, spray'),
            stated('2,050'),
            measured('9.2'),
            computed('0.43'),
            mono('10:00 pm'),
            index % 5 === 0
              ? withState(computed('2026-03-10 OVERDUE'), 'bad')
              : withState(computed('2026-09-02'), 'good')
          ])
        }
      ]
    },
    {
      id: 'schedule',
      title: 'Month-by-month schedule',
      newPage: true,
      blocks: [
        {
          kind: 'figure',
          caption: 'Water given by the programs as they stand, month by month.',
          figure: {
            figure: 'months',
            title: 'Water given by month',
            unit: 'gal',
            months: MONTHS.map((label, index) => ({
              label,
              value: RAIN[index] ?? 0,
              text: (RAIN[index] ?? 0).toLocaleString('en-US')
            }))
          }
        },
        {
          kind: 'figure',
          caption: 'One watering day of five controllers on one meter, noon to noon.',
          figure: {
            figure: 'day-strip',
            title: 'Watering day, all controllers',
            fromMinute: 720,
            toMinute: 2160,
            hours: HOURS.map((label, index) => ({ minute: 720 + index * 180, label })),
            windows: [
              { from: 1320, to: 1800, label: 'window' },
              { from: 2040, to: 2160, label: 'no spray' }
            ],
            lanes: [
              {
                label: 'C3 · shrubs, spray on the west side',
                bars: [{ from: 1320, to: 1370, label: '10:00 pm, 50 min' }]
              },
              { label: 'C4 · shrubs', bars: [{ from: 1350, to: 1395, label: '10:30 pm, 45 min' }] },
              {
                label: 'C5 · shrubs',
                bars: [
                  { from: 1360, to: 1400, label: '10:40 pm' },
                  { from: 1405, to: 1420, label: '11:25 pm' },
                  { from: 1425, to: 1440, label: '11:45 pm' }
                ]
              },
              {
                label: 'C6 · drip',
                bars: [
                  { from: 1410, to: 1445, label: '11:30 pm' },
                  { from: 2120, to: 2155, label: '11:20 am' }
                ]
              }
            ]
          }
        },
        {
          kind: 'figure',
          caption: 'From the point of connection to the devices of C3/1: 2.1 psi short of what is needed.',
          figure: {
            figure: 'pressure-way',
            title: 'Pressure along the way, station C3/1',
            points: [
              { label: 'supply, psi', value: 62, text: '62' },
              { label: 'meter', value: 60, text: '60' },
              { label: 'backflow assembly', value: 48, text: '48' },
              { label: 'main 1', value: 45.2, text: '45.2' },
              { label: 'main 2', value: 39.6, text: '39.6' },
              { label: 'valve', value: 36.1, text: '36.1' },
              { label: 'lateral 1', value: 31, text: '31' },
              { label: 'lateral 2', value: 27.9, text: '27.9' }
            ],
            needed: { value: 30, label: 'needed 30 psi' }
          }
        },
        {
          kind: 'figure',
          caption: 'Run of station C6/1: PASSES.',
          figure: {
            figure: 'wire-run',
            title: 'Wire run, station C6/1',
            from: 'C6',
            to: 'Z6',
            segments: [{ label: '18 AWG, 5 ft', share: 1 }],
            splices: 0,
            verdict: 'PASSES · 0.06 Ω',
            state: 'good'
          }
        },
        {
          kind: 'facts',
          caption: 'Limits',
          rows: [
            { label: 'Supply S1', value: plate('20 gpm') },
            { label: 'Static pressure', value: measured('62 psi') }
          ]
        }
      ]
    }
  ]
}
