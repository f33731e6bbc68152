import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { visit } from '../../src/load/schema/visit.ts'
import { slipText } from '../../src/page/slip.ts'
import type { SlipFields } from '../../src/page/slip.ts'

const empty: SlipFields = {
  site: 'Kestrel Cross',
  box: 'VB1',
  tag: '7KQ3F9X',
  on: '2026-05-04',
  by: '',
  reason: '',
  arrived: '',
  left: '',
  batteries: [],
  programs: [],
  readings: [],
  meters: [],
  found: '',
  done: '',
  parts: '',
  photos: '',
  open: '',
  owner: '',
  drawingChange: false
}
const battery = { controller: 'K1', kind: '1 × 9 V alkaline', changed: false, rest: '', load: '' }
const reading = {
  station: 'K1/1',
  answers: '',
  loop: '',
  coil: '',
  flow: '',
  pressure: '',
  flowUnit: 'L/min',
  pressureUnit: 'bar'
}

/** As a visit file is read: between its fences, by YAML 1.2. */
function asVisit(text: string): Record<string, unknown> {
  const [, matter] = /^---\n([\s\S]*)\n---\n$/u.exec(text) ?? []
  return parse(matter ?? '') as Record<string, unknown>
}

describe('the visit slip', () => {
  it('is a visit file: what it says passes the reader of visits', () => {
    const text = slipText({
      ...empty,
      by: 'M. Example, Example Landscapes',
      reason: 'route',
      batteries: [{ ...battery, changed: true, rest: '9.4', load: '8.9' }],
      readings: [{ ...reading, loop: '4.4', coil: '4.2', flow: '38' }],
      found: 'Z3 opens slowly\n\n  lid cracked  ',
      done: 'cleaned VB2'
    })
    const read = asVisit(text)
    expect(read).toEqual({
      on: '2026-05-04',
      by: 'M. Example, Example Landscapes',
      reason: 'route',
      batteries: [
        { controller: 'K1', fitted: '2026-05-04', kind: '9 V alkaline', count: 1, rest: '9.4 V', 'under-load': '8.9 V' }
      ],
      readings: [{ station: 'K1/1', loop: '4.4 ohm', coil: '4.2 ohm', flow: '38 L/min' }],
      found: ['Z3 opens slowly', 'lid cracked'],
      done: ['cleaned VB2']
    })
    expect(visit.safeParse(read).success).toBe(true)
  })

  it('carries all that a visit is asked for: times, clock and program, what each valve did, meter, parts, photographs, who sees to the rest', () => {
    const text = slipText({
      ...empty,
      arrived: '09:40',
      left: '10:25',
      programs: [
        { controller: 'K1', clock: '4 min fast', found: 'A at 60 %', left: '' },
        { controller: 'K2', clock: '', found: '', left: '' }
      ],
      readings: [{ ...reading, answers: 'opens only', pressure: '3,9' }],
      meters: [{ supply: 'S1', meter: '1284', unit: 'm³' }],
      parts: '2 × gel-filled connector\n1 diaphragm\nvalve key',
      photos: 'vb1.jpg\nvb1-open.jpg',
      open: 'Z3 coil to be swapped',
      owner: 'Example Landscapes',
      drawingChange: true
    })
    const read = asVisit(text)
    expect(read).toEqual({
      on: '2026-05-04',
      arrived: '09:40',
      left: '10:25',
      programs: [{ controller: 'K1', clock: '4 min fast', found: 'A at 60 %' }],
      readings: [
        { station: 'K1/1', answers: 'opens only', pressure: '3.9 bar' },
        { supply: 'S1', meter: '1284 m³' }
      ],
      parts: [{ item: 'gel-filled connector', count: 2 }, { item: 'diaphragm', count: 1 }, { item: 'valve key' }],
      photos: ['vb1.jpg', 'vb1-open.jpg'],
      open: ['Z3 coil to be swapped'],
      owner: 'Example Landscapes',
      'drawing-change': 'yes'
    })
    expect(visit.safeParse(read).success).toBe(true)
  })

  it('reads a coil of three leads twice, with the warmth of the air beside the ohms and nowhere else', () => {
    const text = slipText({
      ...empty,
      temperature: '−4,5',
      temperatureUnit: '°C',
      readings: [
        { ...reading, loop: '12.1', closingLoop: '14,1', coil: '10.2', closingCoil: '12.6' },
        { ...reading, station: 'K1/2', flow: '8' }
      ]
    })
    const read = asVisit(text)
    expect(read['readings']).toEqual([
      {
        station: 'K1/1',
        loop: '12.1 ohm',
        coil: '10.2 ohm',
        'closing-loop': '14.1 ohm',
        'closing-coil': '12.6 ohm',
        temperature: '-4.5 °C'
      },
      { station: 'K1/2', flow: '8 L/min' }
    ])
    expect(visit.safeParse(read).success).toBe(true)
  })

  it('says what of an earlier visit is done now, in its words', () => {
    const repaired = ['coil of Z3 to be read: "AC"?', 'lid']
    expect(asVisit(slipText({ ...empty, repaired }))['repaired']).toEqual(repaired)
  })

  it.each([
    ['4 x AA lithium', { kind: 'AA lithium', count: 4 }],
    ['2 × 9 V alkaline', { kind: '9 V alkaline', count: 2 }],
    ['AA lithium', { kind: 'AA lithium' }],
    ['', {}]
  ])('a set of another kind is told as %j', (kind, said) => {
    const read = asVisit(slipText({ ...empty, batteries: [{ ...battery, kind, changed: true }] }))
    expect(read['batteries']).toEqual([{ controller: 'K1', fitted: '2026-05-04', ...said }])
  })

  it('says where it was written, in a comment', () => {
    expect(slipText(empty).split('\n')[1]).toBe('# Kestrel Cross · VB1 · 7KQ3F9X')
  })

  it('leaves out what was not filled in', () => {
    expect(asVisit(slipText({ ...empty, batteries: [battery], readings: [reading] }))).toEqual({ on: '2026-05-04' })
  })

  it('cells that were only measured are not said to be fitted', () => {
    const read = asVisit(slipText({ ...empty, batteries: [{ ...battery, rest: '9' }] }))
    expect(read['batteries']).toEqual([{ controller: 'K1', rest: '9 V' }])
  })

  it.each(['a: b # c', '"quoted"', '- dash', '{ brace }', 'tab\there', '\u2028line', '---', 'yes', "it's"])(
    'text cannot break the file: %j',
    typed => {
      expect(asVisit(slipText({ ...empty, found: typed }))['found']).toEqual([typed.trim()])
    }
  )

  it('keeps a unit that was typed, reads a decimal comma, and keeps what it does not understand for a person', () => {
    const volts = (rest: string) => asVisit(slipText({ ...empty, batteries: [{ ...battery, rest }] }))['batteries']
    expect(volts('9,4')).toEqual([{ controller: 'K1', rest: '9.4 V' }])
    expect(volts('9.4 V')).toEqual([{ controller: 'K1', rest: '9.4 V' }])
    expect(volts('flat')).toEqual([{ controller: 'K1', rest: 'flat' }])
  })

  it('a line break in the name of a site cannot leave the comment', () => {
    expect(asVisit(slipText({ ...empty, site: 'A\non: 1999-01-01' }))).toEqual({ on: '2026-05-04' })
  })
})
