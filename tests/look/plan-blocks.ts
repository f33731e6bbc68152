import type { PlanFigure } from '../../src/binder/figures/plan.ts'
import type { BoxFindBlock, ChartBlock, SheetBlock } from '../../src/binder/sheet-blocks.ts'

const at = (eastM: number, northM: number) => ({ eastM, northM })

/** A small invented plan with one of everything that a plan can show. */
export const PLAN: PlanFigure = {
  figure: 'plan',
  title: 'Record drawing, Kestrel Cross Roundabout',
  alt: 'Plan at 1:200, north up. Drawn: VB1 (K1, Z1), S1 shut-off. Zones by pattern: Z1, Z2.',
  widthMm: 169,
  heightMm: 242,
  map: { xMm: 0.3, yMm: 0.3, widthMm: 168.4, heightMm: 184 },
  ratio: 200,
  middle: at(10, 6),
  north: 'N',
  scale: {
    text: '1:200',
    bars: [
      { lengthM: 5, parts: 5, from: '0', to: '5 m' },
      { lengthM: 6.096, parts: 4, from: '0', to: '20 ft' }
    ]
  },
  areas: [
    { points: [at(0, 0), at(8, 0), at(8, 6), at(0, 6)], pattern: 0, label: 'Z1' },
    { points: [at(9, 0), at(20, 0), at(20, 3), at(12, 3), at(12, 10), at(9, 10)], pattern: 1, label: 'Z2' },
    { points: [at(0, 8), at(6, 8), at(6, 12)], label: '' }
  ],
  lines: [
    { kind: 'curb', label: 'curb', points: [at(-4, -2), at(24, -2)] },
    { kind: 'main', label: '', points: [at(-3, 12), at(8.5, 12), at(8.5, 7)] },
    { kind: 'wall', label: '', points: [], circle: { ...at(16, 9), radiusM: 2 } }
  ],
  marks: [
    { ...at(8.5, 7), symbol: 'valve box', label: 'VB1', holds: 'K1, Z1, 1 splice' },
    { ...at(-3, 12), symbol: 'shut-off', label: 'S1 shut-off' },
    { ...at(-1, 12), symbol: 'backflow', label: 'S1 backflow' }
  ],
  points: [
    { ...at(2, 7), label: 'lamp post 7' },
    { ...at(14, 12), label: 'lamp post 8' }
  ],
  ties: [
    { from: at(2, 7), to: at(8.5, 7), text: '6.5 m' },
    { from: at(14, 12), to: at(8.5, 7), text: '7.4 m' }
  ],
  legend: {
    areas: [
      { pattern: 0, text: 'Z1, K1/1, 51 L/min, groundcover, drip' },
      { pattern: 1, text: 'Z2, K1/2, 40 L/min, shrubs, drip' }
    ],
    symbols: [
      { symbol: 'valve box', text: 'Valve box with valves' },
      { symbol: 'point', text: 'Permanent point' },
      { symbol: 'tie', text: 'Tie, measured distance' }
    ],
    lines: [{ kind: 'curb', text: 'Curb' }],
    notes: ['Not on this drawing: VB3']
  },
  titleBlock: {
    heading: 'RECORD DRAWING',
    rows: [
      { label: 'Dated', value: '2025-05-06' },
      { label: 'Scale', value: '1:200' }
    ]
  }
}

const { legend: _legend, titleBlock: _titleBlock, ...bare } = PLAN

/** The same on a smaller piece of paper, as it stands beside its words. */
export const DETAIL: PlanFigure = {
  ...bare,
  widthMm: 84,
  heightMm: 62,
  map: { xMm: 0.3, yMm: 0.3, widthMm: 83.4, heightMm: 61.4 },
  scale: { text: '', bars: PLAN.scale.bars.slice(0, 1) }
}

export const SHEET: SheetBlock = { kind: 'sheet', figure: PLAN, wide: false, caption: 'As installed, 1:200.' }

export const boxFind = (file: string): BoxFindBlock => ({
  kind: 'box-find',
  title: 'VB1',
  where: 'center island',
  ties: ['6.5 m from lamp post 7', '7.4 m from lamp post 8'],
  figure: DETAIL,
  picture: { file, alt: 'Box VB1', caption: 'VB1 with the lid off' }
})

export const CHART: ChartBlock = {
  kind: 'chart',
  id: 'chart-k1',
  title: 'Controller K1',
  site: 'Kestrel Cross Roundabout',
  keep: 'KEEP AT THE CONTROLLER',
  asOf: 'Program as of 2026-05-01, revision 3',
  figure: DETAIL,
  columns: ['Pattern', 'Station', 'Zone', 'Waters', 'Valve', 'Box', 'Jan–Mar', 'Apr–Jun', 'Jul–Sep', 'Oct–Dec'],
  spanned: { label: 'Minutes on a watering day', columns: 4 },
  rows: [
    { cells: ['MV', 'K1', 'Master valve', '1-1/2 in', 'VB1', '', '', '', ''] },
    { pattern: 0, cells: ['1', 'Z1', 'groundcover, drip', '1 in', 'VB1', 'off', '10–18', '17–20', '6'] }
  ],
  facts: [
    { label: 'Shut-off', value: 'meter pit, quarter turn', missing: false },
    { label: 'Warranty', value: 'not supplied', missing: true }
  ],
  foot: 'Three copies: one sealed at the controller, two for the owner.'
}
