import { describe, expect, it } from 'vitest'
import { slipIn } from '../../src/load/visit-slip.ts'
import { readVisit } from '../../src/load/read-visit.ts'
import { visitText } from '../../src/load/write-visit.ts'
import { slipText } from '../../src/page/slip.ts'

const SLIP = slipText({
  site: 'Kestrel Cross',
  box: 'VB1',
  tag: '7KQ3F9X',
  on: '2026-05-04',
  by: 'M. Example, Example Landscapes',
  reason: 'route',
  batteries: [{ controller: 'K1', kind: '1 × 9 V alkaline', changed: true, rest: '9.4', load: '8.9' }],
  readings: [{ station: 'K1/1', loop: '4.4', coil: '4.2', flow: '38', flowUnit: 'L/min' }],
  found: 'Z3 opens slowly, and closes only at the second pulse when the battery is cold\n--- no fence',
  done: 'cleaned VB2',
  open: ''
})

/** As a mail program breaks lines: at the last space before so many letters, going on at the margin. */
function broken(text: string, width: number): string {
  return text
    .split('\n')
    .flatMap(line => line.match(new RegExp(`.{1,${width}}(?: |$)|\\S+ ?`, 'gu'))?.map(one => one.trimEnd()) ?? [''])
    .join('\n')
}

describe('a slip in a pasted text', () => {
  it('is the text that the box page made, as it stands', () => {
    expect(slipIn(SLIP)).toMatchObject({ text: SLIP, outside: 0 })
  })

  it('says at which box it was written', () => {
    expect(slipIn(SLIP)?.from).toEqual({ site: 'Kestrel Cross', box: 'VB1', tag: '7KQ3F9X' })
  })

  it('is found between a greeting and a signature, which are counted', () => {
    expect(slipIn(`Hello,\n\n${SLIP}\n-- \nM. Example\n`)).toMatchObject({ text: SLIP, outside: 3 })
  })

  it.each([
    ['CRLF and a byte-order mark', `\uFEFF${SLIP.replaceAll('\n', '\r\n')}`],
    ['old line ends', SLIP.replaceAll('\n', '\r')],
    ['the marks of a quoted answer', SLIP.replaceAll(/^/gmu, '> ')],
    ['the marks of an answer to an answer', SLIP.replaceAll(/^/gmu, '>> ')],
    ['spaces that do not break', SLIP.replaceAll('  - ', '\u00a0\u00a0- ')],
    ['spaces at the ends of lines', SLIP.replaceAll('\n', '  \n')]
  ])('reads the same with %s', (_, pasted) => {
    expect(slipIn(pasted)?.text).toBe(SLIP)
  })

  it.each([40, 60, 72, 78])('reads the same where a mail program broke its lines at %i letters', width => {
    expect(broken(SLIP, width)).not.toBe(SLIP)
    expect(slipIn(broken(SLIP, width))?.text).toBe(SLIP)
  })

  it('knows on which line of the pasted text each of its lines began', () => {
    const found = slipIn(`Hello,\n${SLIP.replace(', coil', ',\ncoil')}`)
    const index = found?.text.split('\n').findIndex(line => line.startsWith('found:')) ?? -1
    const written = `Hello,\n${SLIP.replace(', coil', ',\ncoil')}`.split('\n').indexOf('found:')
    expect(found?.lines[index]).toBe(written + 1)
  })

  it('is not in a text without two lines of three dashes', () => {
    expect(slipIn('on: 2026-05-04')).toBeUndefined()
    expect(slipIn('---\non: 2026-05-04')).toBeUndefined()
    expect(slipIn('')).toBeUndefined()
  })

  it('takes the first of two slips, and counts the other as lines outside', () => {
    const found = slipIn(SLIP + SLIP.replace('2026-05-04', '2026-06-04'))
    expect(found?.text).toBe(SLIP)
    expect(found?.outside).toBeGreaterThan(5)
  })
})

describe('a slip with every field of the form', () => {
  const full = slipText({
    site: 'A',
    box: 'VB1',
    tag: '7KQ3F9X',
    on: '2026-05-04',
    arrived: '09:40',
    left: '10:25',
    by: 'M. Example',
    reason: 'route',
    batteries: [{ controller: 'K1', kind: '1 × 9 V alkaline', changed: true, rest: '9.4', load: '8.9' }],
    programs: [{ controller: 'K1', clock: '4 min fast', found: 'A at 60 %', left: 'A at 100 %' }],
    readings: [
      {
        station: 'K1/1',
        answers: 'opens only',
        loop: '4.4',
        coil: '4.2',
        flow: '38',
        flowUnit: 'L/min',
        pressure: '3.9',
        pressureUnit: 'bar'
      }
    ],
    meters: [{ supply: 'S1', meter: '1284', unit: 'm³' }],
    found: 'a',
    done: 'b',
    parts: '2 × gel-filled connector\ndiaphragm',
    photos: 'vb1.jpg',
    open: 'c',
    owner: 'Example Landscapes',
    drawingChange: true
  })
  const site = {
    file: 'site.md',
    text: '---\nsupplies: [{ id: S1 }]\nboxes: [{ id: VB1 }]\ncontrollers: [{ id: K1 }]\nstations: [{ id: K1/1 }]\n---\n'
  }

  it('is taken as a visit, whole, and written as one that says the same', () => {
    const read = readVisit({ file: 'slip', text: slipIn(full)?.text ?? '' }, site)
    expect(read.faults).toEqual([])
    const again = readVisit({ file: 'visit', text: visitText(read.data) }, site)
    expect(again.data).toEqual(read.data)
    expect(again.visit).toMatchObject({
      batteries: [{ controller: 'K1', fitted: '2026-05-04', count: 1 }],
      programs: [{ controller: 'K1', left: 'A at 100 %' }],
      readings: [{ station: 'K1/1', answers: 'opens only' }, { supply: 'S1' }],
      parts: [
        { item: 'gel-filled connector', count: 2 },
        { item: 'diaphragm', count: 1 }
      ],
      owner: 'Example Landscapes',
      drawingChange: true
    })
  })
})
