import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { csvText } from '../../src/export/csv.ts'
import { dueCsv } from '../../src/export/due-csv.ts'
import { wireScheduleCsv } from '../../src/export/wire-schedule-csv.ts'
import { ON, contexts, demoDue, item } from './due-fixture.ts'

/** RFC 4180 to the letter, with nothing forgiven: records end in CRLF, a quote within quotes is doubled, text outside has none. */
function strictly(text: string): string[][] {
  const records: string[][] = []
  let rest = text
  while (rest !== '') {
    const record: string[] = []
    for (;;) {
      const field = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/u.exec(rest)
      if (!field) throw new Error(`not RFC 4180 at ${JSON.stringify(rest.slice(0, 40))}`)
      record.push(field[1] === undefined ? (field[2] ?? '') : field[1].replaceAll('""', '"'))
      rest = rest.slice(field[0].length)
      if (field[3] === '\r\n') break
    }
    records.push(record)
  }
  return records
}

describe('CSV', () => {
  it.each([
    ['the due list', dueCsv(demoDue, ON)],
    ['the wire schedule', wireScheduleCsv(contexts)]
  ])('of %s reads the same by a library and by the letter of RFC 4180', (_, text) => {
    const strict = strictly(text)
    const library = Papa.parse<string[]>(text.replace(/\r\n$/u, ''))
    expect(library.errors).toEqual([])
    expect(library.data).toEqual(strict)
    expect(new Set(strict.map(record => record.length)).size).toBe(1)
    expect(strict.length).toBeGreaterThan(20)
  })

  it('keeps quotes, commas, line ends and other scripts', () => {
    const cells = ['a "b", c', 'line\nend', '0.75 mm², 4 Ω', 'مرحبا', '']
    expect(strictly(csvText(['a', 'b', 'c', 'd', 'e'], [cells]))[1]).toEqual(cells)
  })

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', ' =1', '\u00a0=1', '＝1', '|cmd', '%x', '\u0000=1'])(
    'never gives a spreadsheet a formula: %j',
    text => {
      const [, [cell] = []] = strictly(csvText(['a'], [[text]]))
      expect(cell?.startsWith("'")).toBe(true)
    }
  )

  it('keeps a cell whole where a spreadsheet parts at semicolons or tabs', () => {
    const text = csvText(['a', 'b'], [['x;=cmd|x', 'y\t=1']])
    for (const delimiter of [';', '\t']) {
      const cells = Papa.parse<string[]>(text, { delimiter }).data.flat()
      expect(cells.filter(cell => /^[=+@-]/u.test(cell))).toEqual([])
    }
  })

  it('leaves numbers numbers, those below zero too', () => {
    expect(csvText(['a', 'b'], [[-17, 4.5]])).toBe('"a","b"\r\n-17,4.5\r\n')
  })

  it('has a row for each thing that is due, those without a date too', () => {
    const rows = strictly(dueCsv([item(), item({ state: 'no-date', dueOn: undefined as never })], ON))
    expect(rows.slice(1).map(row => row.slice(0, 3))).toEqual([
      ['due', '2026-05-20', '19'],
      ['no date', '', '']
    ])
  })
})
