import { describe, expect, test } from 'vitest'
import type { Finding } from '../../src/diagnostics/finding.ts'
import { meets, parseExpectation } from './expectation.ts'
import { parsePage } from './page.ts'
import { wordFaults } from './words.ts'

const FENCE = '```'
const page = (...lines: string[]) => parsePage(['# wire/loop-over-limit', '', ...lines].join('\n'))
const CASE = ['## quiet: plain', '', `${FENCE}yaml`, 'units: us', FENCE]

describe('a page of cases', () => {
  test('is read whole', () => {
    const read = page(
      '## fires: two of them',
      'on: 2026-05-02',
      `${FENCE}yaml`,
      'units: us',
      FENCE,
      `${FENCE}csv register`,
      'tag,site,box,state,issued,now',
      FENCE,
      `${FENCE}yaml sheet other-one`,
      'stations: 1',
      FENCE,
      `${FENCE}yaml site alder`,
      'title: Alder',
      FENCE,
      `${FENCE}yaml visit`,
      'on: 2026-04-10',
      FENCE,
      `${FENCE}yaml visit 2026-04-12-route`,
      'on: 2026-04-12',
      FENCE,
      `${FENCE}json plan.geojson`,
      '{}',
      FENCE,
      'expect: 1 · subject "Z1" · severity error · values { loop_ohm: 14.84 } · says "a b" · fix "c"',
      'expect: 1',
      '',
      ...CASE
    )
    expect(read.code).toBe('wire/loop-over-limit')
    expect(read.cases).toEqual([
      {
        title: 'two of them',
        fires: true,
        on: '2026-05-02',
        keys: 'units: us\n',
        register: 'tag,site,box,state,issued,now\n',
        sheets: [{ name: 'other-one', keys: 'stations: 1\n' }],
        sites: [{ name: 'alder', keys: 'title: Alder\n' }],
        visits: [
          { name: 'visit-1', keys: 'on: 2026-04-10\n' },
          { name: '2026-04-12-route', keys: 'on: 2026-04-12\n' }
        ],
        plans: [{ name: 'plan.geojson', keys: '{}\n' }],
        expects: [
          { count: 1, subject: 'Z1', severity: 'error', values: { loop_ohm: 14.84 }, says: 'a b', fix: 'c' },
          { count: 1 }
        ]
      },
      { title: 'plain', fires: false, keys: 'units: us\n', sheets: [], sites: [], visits: [], plans: [], expects: [] }
    ])
  })

  test.each([
    ['a title that is no code', () => parsePage('# loop over limit\n')],
    ['a heading that neither fires nor is quiet', () => page('## fire: too thin', ...CASE.slice(1))],
    ['a heading without a title', () => page('## fires: ', ...CASE.slice(1))],
    ['a line that is none', () => page(...CASE, 'expected: 1')],
    ['a sentence between', () => page(...CASE, 'This one is quiet because of the size.')],
    ['a day that does not exist', () => page('## quiet: x', 'on: 2026-02-30', ...CASE.slice(1))],
    ['a day after the keys', () => page(...CASE, 'on: 2026-02-28')],
    ['a block that is none', () => page(...CASE, `${FENCE}yml`, 'units: us', FENCE)],
    ['a sheet without a name', () => page(...CASE, `${FENCE}yaml sheet`, 'stations: 1', FENCE)],
    ['keys twice', () => page(...CASE, `${FENCE}yaml`, 'units: us', FENCE)],
    ['a block without an end', () => page('## quiet: x', `${FENCE}yaml`, 'units: us')],
    ['a line before the first case', () => page('expect: 1')],
    ['a case that fires and expects nothing', () => page('## fires: x', ...CASE.slice(1))],
    ['a quiet case that expects something', () => page(...CASE, 'expect: 1')],
    ['a case that changes nothing', () => page('## quiet: x')],
    ['none of something', () => parseExpectation('0')],
    ['a misspelt expectation', () => parseExpectation('1 · subjekt "Z1"')],
    ['a severity that is none', () => parseExpectation('1 · severity grave')],
    ['a subject without quotes', () => parseExpectation('1 · subject Z1')],
    ['values that are none', () => parseExpectation('1 · values {}')]
  ])('is refused for %s', (_, read) => {
    expect(read).toThrow()
  })
})

describe('an expectation', () => {
  const finding = {
    subject: 'Z1',
    severity: 'error',
    message: 'Z1: 410\u00a0m is a loop.',
    fix: 'Use 2.5\u00a0mm².',
    values: { loop_ohm: 14.84, passing_size: '2.5 mm²' }
  } as unknown as Finding
  const met = (text: string) => meets(finding, parseExpectation(`1 · ${text}`))

  test('is met within half a percent, and no further', () => {
    expect(met('values { loop_ohm: 14.91 }')).toBe(true)
    expect(met('values { loop_ohm: 14.92 }')).toBe(false)
    expect(met('values { loop_ohm: 14.77 }')).toBe(true)
    expect(met('values { loop_ohm: 14.76 }')).toBe(false)
  })

  test('is not met by a key that is not there, another word, another kind of value', () => {
    expect(met('values { loop: 14.84 }')).toBe(false)
    expect(met('values { passing_size: "4 mm²" }')).toBe(false)
    expect(met('values { loop_ohm: "14.84" }')).toBe(false)
    expect(met('subject "Z"')).toBe(false)
    expect(met('severity warning')).toBe(false)
    expect(met('says "411 m"')).toBe(false)
    expect(met('fix "Use 4 mm²"')).toBe(false)
    expect(met('fix "Use 2.5 mm²."')).toBe(true)
    expect(met('subject "Z1" · severity error · values { passing_size: "2.5 mm²" } · says "410 m is"')).toBe(true)
  })
})

describe('words that a person reads', () => {
  test.each([
    'Use 2.5 mm², or a run of 46.7 m.',
    'Run: npx underlid tag base',
    'The program waters as programmed on 2026-07-02.',
    'Write "colour: red / white".'
  ])('%s passes', text => {
    expect(wordFaults(text)).toEqual([])
  })

  test.each([
    '',
    'No period',
    ' Space before.',
    'Error: no such thing.',
    'The value is invalid.',
    'Please look again.',
    'Stop!',
    'It is undefined m long.',
    'NaN days are left.',
    'Two  spaces.',
    'A hole , here.',
    'Due on 4/14/2026.',
    'It is 25.400000000000002 gpm.',
    'In the centre island.',
    'Parts and labour.'
  ])('%s is told', text => {
    expect(wordFaults(text)).not.toEqual([])
  })
})
