import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { isSiteCheck } from '../../src/checks/run.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { SOURCES } from '../../src/reference/sources.ts'
import { parseDate } from '../../src/units/date.ts'
import { sum } from '../../src/base/collections.ts'
import { meets, told } from './expectation.ts'
import { parsePage } from './page.ts'
import type { Case } from './page.ts'
import { findingsOf, workedCase } from './run-case.ts'
import { wordFaults } from './words.ts'

const here = dirname(fileURLToPath(import.meta.url))
const CHECKS_FOLDER = join(here, '../../src/checks')
const pageFile = (code: string) => join(here, `${code}.md`)
const codes = CHECKS.map(check => check.card.code)

/** The base site with its title written anew: nothing else is changed. */
const BASE: Case = {
  title: '',
  fires: false,
  keys: 'title: Base Site\n',
  sheets: [],
  sites: [],
  visits: [],
  plans: [],
  expects: []
}

describe('the list of checks', () => {
  test('holds each code once, in order', () => {
    expect(codes).toEqual([...new Set(codes)].sort())
  })

  test('has a check for every page of cases', () => {
    const areas = readdirSync(here, { withFileTypes: true }).filter(entry => entry.isDirectory())
    const pages = areas.flatMap(({ name }) =>
      readdirSync(join(here, name)).flatMap(file => (file.endsWith('.md') ? [`${name}/${file.slice(0, -3)}`] : []))
    )
    expect(pages.filter(code => !codes.includes(code))).toEqual([])
  })
})

describe.each(CHECKS.map(check => ({ code: check.card.code, check })))('$code', ({ code, check }) => {
  const { card } = check

  test('lies in the file that its code names', async () => {
    const module = (await import(join(CHECKS_FOLDER, `${code}.ts`))) as Record<string, unknown>
    expect(Object.values(module)).toContain(check)
  })

  test('has a whole card, in plain words, with sources that the register holds', () => {
    const texts = [card.looksAt, card.why, card.fix]
    expect(texts.flatMap(wordFaults)).toEqual([])
    expect(texts.filter(text => !/^[A-Z0-9“"]/u.test(text))).toEqual([])
    expect(card.sources.length).toBeGreaterThan(0)
    expect(card.sources.filter(id => !Object.hasOwn(SOURCES, id))).toEqual([])
    expect(['error', 'warning', 'note']).toContain(card.severity)
    expect(card.worked.on === undefined || parseDate(card.worked.on) !== undefined).toBe(true)
  })

  test('fires on its example and is quiet on what it says to do instead', () => {
    expect(findingsOf(check, workedCase(check, 'example')).length).toBeGreaterThan(0)
    const instead = findingsOf(check, workedCase(check, 'instead'))
    expect(instead, told(instead)).toEqual([])
  })

  test('has a page of cases that fire and cases that stay quiet', () => {
    expect(existsSync(pageFile(code)), `tests/checks/${code}.md`).toBe(true)
    const page = parsePage(readFileSync(pageFile(code), 'utf8'))
    expect(page.code).toBe(code)
    expect(page.cases.some(one => one.fires)).toBe(true)
    expect(page.cases.some(one => !one.fires)).toBe(true)
    const titles = page.cases.map(one => one.title)
    expect(titles).toEqual([...new Set(titles)])
  })

  // The plain case stands first, so that every check has one test of each kind.
  const cases = [{ ...BASE, title: 'the base site as it is' }, ...pageCases(code)]
  test.each(cases.map(one => ({ name: `${one.fires ? 'fires' : 'quiet'}: ${one.title}`, one })))('$name', ({ one }) => {
    const findings = findingsOf(check, one)
    const worded = findings.flatMap(({ message, why, fix }) => [message, why, fix].flatMap(wordFaults))
    expect(worded).toEqual([])
    for (const expected of one.expects) {
      const met = findings.filter(finding => meets(finding, expected))
      expect(met.length, `${JSON.stringify(expected)}; found:\n${told(findings)}`).toBe(expected.count)
    }
    expect(findings.length, told(findings)).toBe(sum(one.expects.map(({ count }) => count)))
    for (const finding of findings) {
      expect(finding.place.line).toBeGreaterThan(0)
      if (isSiteCheck(check)) expect(finding.place.file).toMatch(/^sites\/(?:base|_shared)\//u)
      expect(Object.keys(finding.values).filter(key => !/^[a-z0-9_.]+$/u.test(key))).toEqual([])
      const numbers = Object.values(finding.values).filter(value => typeof value === 'number')
      expect(numbers.filter(value => !Number.isFinite(value))).toEqual([])
    }
  })
})

/** None where the page is missing or cannot be read; a test of its own says so. */
function pageCases(code: string): readonly Case[] {
  return existsSync(pageFile(code)) ? parsePage(readFileSync(pageFile(code), 'utf8')).cases : []
}
