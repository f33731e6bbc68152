import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { CHECKS } from '../../src/checks/list.ts'
import { PROJECT } from '../e2e/support.ts'

interface Covered {
  readonly what: string
  readonly codes?: readonly string[]
  /** Where no finding can tell it, since the house sees to it itself: the test that proves it. */
  readonly tests?: readonly string[]
}

/** What a tool can check at closeout, and which code, or which test, does. */
const TABLE: Readonly<Record<string, Covered>> = {
  'D-01': { what: 'contacts, installer license', codes: ['closeout/contacts'] },
  'D-02': {
    what: 'record drawing file',
    codes: ['closeout/record-drawing', 'closeout/attachment-not-there', 'closeout/attachment-not-readable']
  },
  'D-03': { what: 'places of all, filters too, and two ties', codes: ['closeout/no-location', 'box/no-ties'] },
  'D-04': {
    what: 'ids are unique, and none is left out',
    codes: ['file/duplicate-id', 'tag/duplicate', 'closeout/number-skipped']
  },
  'D-05': {
    what: 'station, valve, box, zone',
    codes: ['file/dangling-reference', 'controller/station-shared', 'controller/too-many-stations']
  },
  'D-06': { what: 'kind of coil', codes: ['valve/ac-coil', 'valve/coil-kind-unknown'] },
  'D-07': {
    what: 'coil baseline, of its kind and of its sheet',
    codes: ['valve/ac-coil', 'valve/coil-resistance-off']
  },
  'D-08': { what: 'wire size with a unit', codes: ['wire/size-ambiguous', 'wire/size-disagrees', 'file/unit-missing'] },
  'D-09': {
    what: 'loop, volts, longest run',
    codes: ['wire/loop-over-limit', 'wire/run-over-length', 'wire/coil-voltage-low']
  },
  'D-10': { what: 'coils side by side', codes: ['wire/parallel-valves'] },
  'D-11': { what: 'measured against computed', codes: ['wire/reading-off'] },
  'D-12': { what: 'splice without a box', codes: ['wire/splice-without-box'] },
  'D-13': {
    what: 'starts',
    codes: ['schedule/starts-overlap', 'controller/start-times-exceeded', 'controller/starts-a-day-exceeded']
  },
  'D-14': { what: 'shared supply', codes: ['supply/over-capacity'] },
  'D-15': {
    what: 'watering window',
    codes: ['schedule/outside-window', 'schedule/crosses-midnight', 'water/need-exceeds-window']
  },
  'D-16': {
    what: 'odd, even, intervals',
    codes: ['schedule/odd-even-turnover', 'schedule/interval-against-dates', 'schedule/day-not-allowed']
  },
  'D-17': { what: 'rate above intake', codes: ['water/cycle-over-intake'] },
  'D-18': { what: 'more than the root zone holds', codes: ['water/over-capacity'] },
  'D-19': { what: 'allowance', codes: ['water/over-allowance'] },
  'D-20': { what: 'establishment and established', codes: ['closeout/establishment'] },
  'D-21': { what: 'shortest step', codes: ['controller/run-time-out-of-range'] },
  'D-22': { what: 'least flow of the valve', codes: ['valve/flow-below-minimum'] },
  'D-23': { what: 'slips of units', codes: ['file/unit-unlikely', 'file/unit-wrong-kind', 'water/meter-off-program'] },
  'D-24': { what: 'rain indoors', codes: ['water/rain-indoors'] },
  'D-25': {
    what: 'southern seasons',
    tests: ['tests/binder/closeout-lines.test.ts', 'tests/domain/schedule/months.test.ts', 'tests/plan/climate.test.ts']
  },
  'D-26': {
    what: 'batteries',
    codes: [
      'file/missing-key',
      'power/battery-overdue',
      'power/battery-due-soon',
      'power/battery-no-date',
      'power/pulses-shorten-life'
    ]
  },
  'D-27': { what: 'backflow test and register', codes: ['safety/backflow-overdue', 'closeout/backflow-register'] },
  'D-28': { what: 'test reports', codes: ['closeout/test-reports'] },
  'D-29': { what: 'warranty', codes: ['closeout/warranty-start', 'closeout/warranty-terms'] },
  'D-30': { what: 'inspections at 4 and 9 months', codes: ['closeout/warranty-visits'] },
  'D-31': { what: 'training', codes: ['closeout/training'] },
  'D-32': { what: 'spares, tools, keys', codes: ['closeout/spares'] },
  'D-33': { what: 'photographs', codes: ['closeout/photographs', 'box/no-photo', 'box/photo-not-there'] },
  'D-34': { what: 'signatures or refusals', codes: ['closeout/sign-offs'] },
  'D-35': {
    what: 'the same names everywhere',
    tests: ['tests/binder/closeout-lines.test.ts', 'tests/score/score-card.test.ts']
  },
  'D-36': {
    what: 'safety messages',
    tests: ['tests/domain/safety/caution-words.test.ts', 'tests/render/blocks.test.ts']
  },
  'D-37': { what: 'private words', codes: ['privacy/private-word-public'] },
  'D-38': {
    what: 'pages: contrast, targets, width, no state by color alone',
    tests: [
      'tests/render/blocks.test.ts',
      'tests/render/contrast.test.ts',
      'tests/page/in-browser.test.ts',
      'tests/e2e/box-in-hand.test.ts'
    ]
  },
  'D-39': { what: 'nothing vanishes', tests: ['tests/score/score-card.test.ts', 'tests/binder/binder.test.ts'] },
  'D-40': {
    what: 'data date and revision on each page and label',
    tests: ['tests/score/score-card.test.ts', 'tests/binder/closeout-lines.test.ts']
  }
}

describe('what a tool can check at closeout', () => {
  it('has forty lines', () => {
    expect(Object.keys(TABLE)).toEqual(
      Array.from({ length: 40 }, (_, index) => `D-${String(index + 1).padStart(2, '0')}`)
    )
  })

  it.each(Object.entries(TABLE))(
    '%s is covered by a check that is there, or by a test that is',
    (_, { codes = [], tests = [] }) => {
      expect(codes.length + tests.length).toBeGreaterThan(0)
      const known = CHECKS.map(({ card }) => card.code)
      for (const code of codes) expect(known).toContain(code)
      for (const file of tests) {
        const path = join(PROJECT, file)
        expect(existsSync(path) && /\b(?:it|test)\b/u.test(readFileSync(path, 'utf8')), file).toBe(true)
      }
    }
  )

  it('every closeout check stands in the table', () => {
    const listed = Object.values(TABLE).flatMap(({ codes = [] }) => codes)
    const own = CHECKS.map(({ card }) => card.code).filter(code => code.startsWith('closeout/'))
    expect(own.filter(code => !listed.includes(code))).toEqual([])
  })
})
