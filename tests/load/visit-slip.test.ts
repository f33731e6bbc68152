import { describe, expect, it } from 'vitest'
import { slipIn } from '../../src/load/visit-slip.ts'
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
