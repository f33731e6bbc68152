import type { Block, ProgramCardBlock } from '../../src/binder/blocks.ts'
import { MONTHS } from '../../src/units/date.ts'

const NEED = [0, 0, 0, 60, 145, 168, 177, 151, 110, 35, 0, 0]
const GIVEN = [0, 0, 0, 35, 111, 136, 148, 127, 86, 25, 0, 0]

const hours = [720, 900, 1080, 1260, 1440, 1620, 1800, 1980, 2160].map(minute => ({
  minute,
  label: `${String((minute / 60) % 24).padStart(2, '0')}:00`
}))

const window = { from: 1380, to: 1740 }

const card = (title: string, runTime: string): ProgramCardBlock => ({
  kind: 'program-card',
  title,
  lines: [
    { label: 'Days', value: 'Mon Wed Fri' },
    { label: 'Start times', value: '23:10' }
  ],
  stations: [{ station: '1', waters: 'Z1 · groundcover, drip', runTime }]
})

/** The figures of water as the invented binder shows them: a night with its load, its week, and a year's need against what is given. */
export const WATER_FIGURES: readonly Block[] = [
  {
    kind: 'figure',
    caption: 'The fullest night of K1, with what it draws.',
    figure: {
      figure: 'day-strip',
      title: 'Watering day, K1, with its load',
      fromMinute: 720,
      toMinute: 2160,
      hours,
      windows: [{ ...window, label: 'hours allowed' }],
      lanes: [
        { label: '1 · Z1', bars: [{ from: 1390, to: 1415, label: 'A' }] },
        { label: '2 · Z2', bars: [{ from: 1415, to: 1440, label: 'A' }] }
      ],
      load: {
        label: 'Flow, L/min',
        steps: [
          { from: 1390, to: 1415, value: 38 },
          { from: 1415, to: 1440, value: 58 }
        ],
        top: 60,
        peak: { value: 58, label: 'most 58 L/min' },
        limit: { value: 60, label: 'limit 60 L/min' }
      }
    }
  },
  {
    kind: 'figure',
    caption: 'The week of that night.',
    figure: {
      figure: 'week-strip',
      title: 'Watering week, K1',
      fromMinute: 720,
      toMinute: 2160,
      hours,
      rows: ['Mon 07-06', 'Tue 07-07', 'Wed 07-08', 'Thu 07-09', 'Fri 07-10', 'Sat 07-11', 'Sun 07-12'].map(
        (label, index) => ({
          label,
          sum: index % 2 === 0 ? '50 min' : '–',
          windows: [window],
          steps: index % 2 === 0 ? [{ from: 1390, to: 1440, value: 38 }] : []
        })
      ),
      top: 60,
      limit: { value: 60, label: 'limit 60 L/min' }
    }
  },
  {
    kind: 'figure',
    caption: 'K1/1: 846 mm needed in the year, 668 mm given.',
    figure: {
      figure: 'need-given',
      title: 'K1/1: needed and given',
      unit: 'mm',
      needLabel: 'needed',
      givenLabel: 'given as set',
      months: MONTHS.map((label, index) => ({ label, need: NEED[index] ?? 0, given: GIVEN[index] ?? 0 })),
      top: { value: 177, label: '177 mm' }
    }
  },
  {
    kind: 'figure',
    caption: 'K1/2: 668 mm given in the year. Need not computed: no plant factor is stated.',
    figure: {
      figure: 'need-given',
      title: 'K1/2: given, its need not known',
      unit: 'mm',
      needLabel: 'needed',
      givenLabel: 'given as set',
      months: MONTHS.map((label, index) => ({ label, given: GIVEN[index] ?? 0 })),
      top: { value: 148, label: '148 mm' }
    }
  },
  {
    kind: 'card-pair',
    left: card('As set: K1, program A', '25 min'),
    right: card('What would meet the need', '31 min')
  }
]
