import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { wordFault } from '../../src/checks/run.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { WEATHER_COLUMNS } from '../../src/load/weather-columns.ts'
import { loadWeather } from '../../src/load/weather-file.ts'
import { loadSite } from '../../src/load/site.ts'
import { baseSite } from '../support/base-site.ts'

const read = (...lines: string[]) => loadWeather({ file: 'sites/base/days.csv', text: lines.join('\n') })

const told = (...lines: string[]) =>
  read(...lines).faults.map(fault => {
    const { message, fix } = wordFault('base', fault, CHECKS)
    return `${fault.place.line}:${fault.place.column} ${fault.code} ${message} ${fix}`
  })

describe('a daily record', () => {
  it('is read in any order of columns, in US units too, and what nobody knows is left out', () => {
    const { weather, faults } = read(
      'Rain (in);Low [°F];High (°F);station;date;Wind (mph)',
      '0.5;41;68;7;2025-07-01;10',
      ';;;;;',
      'NA;-;;7;2025-07-02;'
    )
    expect(faults).toEqual([])
    const [first, second] = weather?.days ?? []
    expect(first?.on).toBe('2025-07-01')
    expect(first?.highC).toBeCloseTo(20, 9)
    expect(first?.lowC).toBeCloseTo(5, 9)
    expect(first?.rainM).toBeCloseTo(0.0127, 9)
    expect(first?.windMPerS).toBeCloseTo(4.4704, 9)
    expect(second).toEqual({ on: '2025-07-02' })
  })

  it('reads with a byte order mark and Windows line ends as without', () => {
    const bare = 'date,high (°C),low (°C)\n2024-02-29,12.5,3\n'
    const windows = `\uFEFF${bare.replaceAll('\n', '\r\n')}`
    const days = (text: string) => loadWeather({ file: 'a.csv', text }).weather?.days
    expect(days(windows)).toEqual([{ on: '2024-02-29', highC: 12.5, lowC: 3 }])
    expect(days(windows)).toEqual(days(bare))
  })

  it('takes a true minus sign, and a cell in quotes', () => {
    expect(read('date,low (°C)', '2025-01-01,\u22124.5', '2025-01-02,"-1"').weather?.days.map(one => one.lowC)).toEqual(
      [-4.5, -1]
    )
  })

  it('tells a column without its unit, and the column that is misspelt, at the cell', () => {
    const faults = told('date,high,low (°C),solar radiaton (MJ/m²/d)', '2025-07-01,20,10,18')
    expect(faults).toHaveLength(2)
    expect(faults[0]).toMatch(/^1:6 file\/unit-missing "high" has no unit\. .*high \(°C\)/u)
    expect(faults[1]).toMatch(/^1:20 file\/unknown-key .*solar radiaton.*solar-radiation/u)
  })

  it('tells a unit that is none, with the nearest', () => {
    expect(told('date,wind (mps),low (°C)', '2025-07-01,2,10')[0]).toMatch(
      /^1:6 file\/unit-unknown .*"mps" is not a unit/u
    )
  })

  it('tells the cell that cannot be read, and keeps the rest of the day', () => {
    const { weather } = read('date,high (°C),low (°C)', '2025-07-01,warm,10')
    expect(weather?.days).toEqual([{ on: '2025-07-01', lowC: 10 }])
    expect(told('date,high (°C),low (°C)', '2025-07-01,warm,10')[0]).toMatch(/^2:12 file\/not-understood "warm"/u)
    expect(told('date;high (°C)', '2025-07-01;20,5')[0]).toMatch(/^2:12 file\/decimal-comma .*20\.5/u)
  })

  it('tells a day that does not exist, and one that stands twice', () => {
    const faults = told('date,low (°C)', '2025-02-30,1', '2025-03-01,2', '2025-03-01,3', '3/4/2025,1')
    expect(faults[0]).toMatch(/^2:1 file\/date .*February 2025 has 28 days/u)
    expect(faults[1]).toMatch(
      /^4:1 file\/duplicate-id 2025-03-01 stands twice among the days of the record, first on line 3/u
    )
    expect(faults[2]).toMatch(/^5:1 file\/date/u)
  })

  it('tells numbers that stand for "missing", at the limit takes them', () => {
    const faults = told('date,humidity (%),rain (mm)', '2025-07-01,101,-99', '2025-07-02,100,0')
    expect(faults.map(one => one.split(' ')[1])).toEqual(['file/out-of-range', 'file/out-of-range'])
    expect(faults[0]).toContain('must be from 0 to 100 %')
  })

  it('tells a high below its low and takes neither', () => {
    const { weather, faults } = read('date,high (°C),low (°C),rain (mm)', '2025-07-01,9,10,1', '2025-07-02,10,10,0')
    expect(weather?.days[0]).toEqual({ on: '2025-07-01', rainM: 0.001 })
    expect(weather?.days[1]).toMatchObject({ highC: 10, lowC: 10 })
    expect(faults.map(one => [one.code, one.place.line, one.place.column])).toEqual([['file/out-of-range', 2, 12]])
  })

  it('without a date or without a column known here is told at its head', () => {
    expect(told('day,high (°C)', '2025-07-01,20')[0]).toMatch(
      /^1:1 file\/missing-key "date" is missing in the head of the table/u
    )
    expect(told('date,pressure', '2025-07-01,1013')[0]).toMatch(/^1:1 file\/missing-key "high \(°C\)" is missing/u)
    expect(read('').weather).toBeUndefined()
  })

  it('stops telling after twenty, and reads a text once', () => {
    const many = Array.from({ length: 50 }, (_, index) => `bad-${index},1`)
    expect(read('date,low (°C)', ...many).faults).toHaveLength(20)
    const source = { file: 'a.csv', text: 'date,low (°C)\n2025-01-01,1\n' }
    expect(loadWeather(source)).toBe(loadWeather(source))
  })
})

describe('the record that a climate names', () => {
  const CSV = 'date,high (°C),low (°C)\n2025-07-01,20,10\n'
  const climate = 'climate: { daily-weather: days.csv }\n'

  it('lies beside the site file, or among the shared files', () => {
    const beside = loadSite({ ...baseSite(climate), tables: [{ file: 'sites/base/days.csv', text: CSV }] })
    expect(beside.faults).toEqual([])
    expect(beside.site?.climate?.dailyWeather?.days).toHaveLength(1)
    const shared = [{ file: 'sites/_shared/climates/days.csv', text: CSV }]
    const path = 'climate: { daily-weather: _shared/climates/days.csv }\n'
    expect(loadSite(baseSite(path, { shared })).site?.climate?.dailyWeather?.days).toHaveLength(1)
  })

  it('may be named by a shared climate file', () => {
    const shared = [
      { file: 'sites/_shared/climates/days.csv', text: CSV },
      {
        file: 'sites/_shared/climates/vale.md',
        text: '---\ntitle: Vale\ndaily-weather: _shared/climates/days.csv\n---\n'
      }
    ]
    const { site, faults } = loadSite(baseSite('climate: _shared/climates/vale.md\n', { shared }))
    expect(faults).toEqual([])
    expect(site?.climate).toMatchObject({ name: 'Vale', dailyWeatherPath: '_shared/climates/days.csv' })
    expect(site?.climate?.dailyWeather?.days).toHaveLength(1)
  })

  it('is told of where it is not there', () => {
    const { site, faults } = loadSite(baseSite(climate))
    expect(faults.map(one => [one.code, one.details['kind'], one.fatal])).toEqual([
      ['file/dangling-reference', 'daily record', false]
    ])
    expect(site?.climate?.dailyWeather).toBeUndefined()
  })

  it('has its faults told with the site', () => {
    const tables = [{ file: 'sites/base/days.csv', text: 'date,low (°C)\nx,1\n' }]
    const { faults } = loadSite({ ...baseSite(climate), tables })
    expect(faults.map(one => `${one.place.file}:${one.place.line}`)).toEqual(['sites/base/days.csv:2'])
  })
})

describe('the page on daily records', () => {
  const page = readFileSync(fileURLToPath(new URL('../../docs/daily-weather.md', import.meta.url)), 'utf8')

  it('names every column', () => {
    expect(WEATHER_COLUMNS.map(one => one.name).filter(name => !page.includes(`\`${name}\``))).toEqual([])
  })

  it('shows a record that is taken without a fault', () => {
    const text = /```csv\n([\s\S]*?)```/u.exec(page)?.[1] ?? ''
    const { weather, faults } = loadWeather({ file: 'docs/daily-weather.md', text })
    expect(faults).toEqual([])
    expect(weather?.days.map(day => Object.keys(day).length)).toEqual([7, 7, 1])
  })
})
