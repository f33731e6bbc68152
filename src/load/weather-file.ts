import type { DailyWeather, WeatherDay } from '../model/site.ts'
import { DIMENSIONS } from '../units/dimension.ts'
import { parseDate } from '../units/date.ts'
import { quantity, unitsOf } from '../units/quantity.ts'
import { cellStart, csvRows } from './csv.ts'
import type { CsvRow } from './csv.ts'
import { mildFault, sortFaults } from './faults/fault.ts'
import type { Details } from './faults/fault.ts'
import { dateWrong } from './improve/date.ts'
import { nearest } from './improve/nearest.ts'
import { likelyUnits, nearestUnit } from './improve/unit.ts'
import { linesOfData, placeAt } from './lines.ts'
import type { Lines } from './lines.ts'
import type { Fault, SourceText } from './loaded.ts'
import { WEATHER_COLUMNS, headOf } from './weather-columns.ts'
import type { WeatherColumn } from './weather-columns.ts'

export interface LoadedWeather {
  /** Undefined where the head of the table cannot be understood. */
  readonly weather: DailyWeather | undefined
  readonly faults: readonly Fault[]
}

/** More faults than this tell nothing new of a table: the rest is left to the next reading. */
const MOST_FAULTS = 20

/** What stands for a day on which nothing was recorded. */
const BLANK = /^(?:|-+|–|NA|N\/A|NaN|null)$/iu

const known = new WeakMap<SourceText, LoadedWeather>()

/**
 * A daily record as a CSV file: a column "date", and columns named in `WEATHER_COLUMNS` with the unit in brackets. Other columns are passed
 * over unless they look like a slip. A cell that cannot be taken is left out and told of, with its line and column. Read once a text.
 */
export function loadWeather(source: SourceText): LoadedWeather {
  const found = known.get(source) ?? readWeather(source)
  known.set(source, found)
  return found
}

interface Column {
  readonly index: number
  readonly of: WeatherColumn
  readonly unit: string
}

interface Table {
  readonly lines: Lines
  readonly faults: Fault[]
}

function readWeather(source: SourceText): LoadedWeather {
  const lines = linesOfData(source)
  const table: Table = { lines, faults: [] }
  if (source.trouble) {
    tell(table, undefined, 0, 'file/front-matter', { kind: 'unreadable', trouble: source.trouble })
    return { weather: undefined, faults: table.faults }
  }
  const [head, ...rows] = csvRows(lines.text)
  const columns = head ? columnsOf(table, head) : []
  const dates = head?.cells.findIndex(cell => headOf(cell).name === 'date') ?? -1
  if (!head || dates < 0 || columns.length === 0) {
    const missing = dates < 0 ? { key: 'date', example: '2026-07-01' } : { key: 'high (°C)', example: '24.1' }
    tell(table, head, 0, 'file/missing-key', { ...missing, under: 'in the head of the table' })
    return { weather: undefined, faults: sortFaults(table.faults) }
  }
  const days = daysOf(table, rows, dates, columns)
  return {
    weather: { at: { file: source.file, path: [head.line] }, days },
    faults: sortFaults(table.faults).slice(0, MOST_FAULTS)
  }
}

function columnsOf(table: Table, head: CsvRow): Column[] {
  return head.cells.flatMap((cell, index) => {
    const { name, unit } = headOf(cell)
    const of = WEATHER_COLUMNS.find(one => one.name === name)
    if (of) return columnOf(table, head, { index, of, unit })
    const near = name === 'date' ? undefined : nearest(name, ['date', ...WEATHER_COLUMNS.map(one => one.name)])
    if (near !== undefined) {
      const details = { key: cell.trim(), what: 'a daily record', nearest: near, known: [], corrected: near }
      tell(table, head, index, 'file/unknown-key', details)
    }
    return []
  })
}

function columnOf(
  table: Table,
  head: CsvRow,
  { index, of, unit }: { readonly index: number; readonly of: WeatherColumn; readonly unit: string | undefined }
): Column[] {
  if (unit !== undefined && unitsOf(of.dimension).includes(unit)) return [{ index, of, unit }]
  const { noun } = DIMENSIONS[of.dimension]
  const shared = { key: of.name, written: head.cells[index]?.trim() ?? '', noun, corrected: of.example }
  const units = likelyUnits(of.dimension, of.example.replace(/^.*\(|\)$/gu, ''))
  if (unit === undefined) tell(table, head, index, 'file/unit-missing', { ...shared, number: of.name, units })
  else {
    const near = nearestUnit(unit, of.dimension)
    const corrected = near === undefined ? of.example : of.example.replace(/\(.*\)/u, `(${near})`)
    tell(table, head, index, 'file/unit-unknown', { ...shared, unit, units, example: of.example, corrected })
  }
  return []
}

function daysOf(table: Table, rows: readonly CsvRow[], dates: number, columns: readonly Column[]): WeatherDay[] {
  const lineOf = new Map<string, number>()
  return rows.flatMap(row => {
    if (row.cells.every(cell => cell.trim() === '')) return []
    const written = row.cells[dates]?.trim() ?? ''
    const on = parseDate(written)
    if (!on) {
      const { code, details, value } = dateWrong(written)
      const corrected: Details = value === undefined ? {} : { corrected: value }
      tell(table, row, dates, code, { key: 'date', written, ...details, ...corrected })
      return []
    }
    const firstLine = lineOf.get(on)
    if (firstLine !== undefined) {
      tell(table, row, dates, 'file/duplicate-id', { id: on, kind: 'days of the record', firstLine })
      return []
    }
    lineOf.set(on, row.line)
    return [dayOf(table, row, on, columns)]
  })
}

function dayOf(table: Table, row: CsvRow, on: WeatherDay['on'], columns: readonly Column[]): WeatherDay {
  const day = { on, ...Object.fromEntries(columns.flatMap(column => factOf(table, row, column))) } as WeatherDay
  const { highC, lowC, ...others } = day
  if (highC === undefined || lowC === undefined || highC >= lowC) return day
  const column = columns.find(one => one.of.name === 'high')
  const details = {
    key: 'high',
    written: `high ${highC} °C`,
    range: `must not be below the low of ${on}`,
    example: '24.1'
  }
  tell(table, row, column?.index ?? 0, 'file/out-of-range', details)
  return others
}

function factOf(table: Table, row: CsvRow, { index, of, unit }: Column): [string, number][] {
  const written = row.cells[index]?.trim().replace(/^\u2212/u, '-') ?? ''
  if (BLANK.test(written)) return []
  const shared = { key: of.name, written }
  if (/^[+-]?\d+,\d+$/u.test(written)) {
    tell(table, row, index, 'file/decimal-comma', { ...shared, noun: 'a number', corrected: written.replace(',', '.') })
    return []
  }
  if (!/^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/iu.test(written)) {
    tell(table, row, index, 'file/not-understood', { ...shared, expected: `a number of ${unit}`, example: '24.1' })
    return []
  }
  const { si } = quantity(Number(written), unit, of.dimension)
  if (si >= of.least - 1e-9 && si <= of.most * (1 + 1e-9)) return [[of.fact, si]]
  const example = 'a blank cell where nothing was recorded'
  tell(table, row, index, 'file/out-of-range', { ...shared, written: `${written} ${unit}`, range: of.range, example })
  return []
}

function tell(table: Table, row: CsvRow | undefined, column: number, code: string, details: Details): void {
  const { lines, faults } = table
  if (faults.length >= MOST_FAULTS) return
  const offset = row ? cellStart(lines.text, row, column) : 0
  const length = row?.cells[column]?.trim().length ?? 0
  faults.push(mildFault(code, '', placeAt(lines, offset, length), details))
}
