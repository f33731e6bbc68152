import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { publicContext } from '../../src/binder/context.ts'
import type { PageContext } from '../../src/binder/context.ts'
import { daysText, runTimeText } from '../../src/binder/days.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { makeBoxPage } from '../../src/binder/make-box-page.ts'
import { makeLabelSheet } from '../../src/binder/make-labels.ts'
import { makeSitePage } from '../../src/binder/make-site-page.ts'
import { parseDayRule, parseRunTime, writeDayRule, writeRunTime } from '../../src/domain/schedule/text.ts'
import { loadSite } from '../../src/load/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { wordsOf } from '../../src/words/languages.ts'
import { leavesOf } from '../words/texts.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'

const english = wordsOf('en-US')
const spanish = wordsOf('es')

/** Words that the site file or a source may hold as well. */
const LONG = 14

/** All that an English page could say and a Spanish one must not: the texts of the first catalogue that another language says otherwise. */
function englishOnly(): Map<string, string> {
  const mine = new Map(leavesOf(spanish))
  const texts = leavesOf(english).flatMap(([key, value]) =>
    typeof value === 'string' && value.length >= LONG && value !== mine.get(key) ? [[value, key] as const] : []
  )
  return new Map(texts)
}

const contextIn = (words: PageContext['words'], overrides = ''): PageContext => {
  const { site } = loadSite(baseSite(overrides))
  if (!site) throw new Error('The base site cannot be read.')
  return {
    site,
    plan: makePlan(site, date(BASE_ON)),
    findings: [],
    words,
    publicAddress: 'HTTPS://EXAMPLE.ORG',
    version: '0.0.0',
    prints: []
  }
}

function leaks(page: unknown): string[] {
  const only = englishOnly()
  return leavesOf(page).flatMap(([key, value]) => {
    const found = typeof value === 'string' ? only.get(value) : undefined
    return found === undefined ? [] : [`${key}: ${found}`]
  })
}

const PLACES = [
  '',
  'place: roof',
  'controllers: []\nstations: []',
  'contacts: []\nsupplies: []',
  'work-rules: { road: yes }'
]

describe('a Spanish site', () => {
  it.each(PLACES)('has a binder in which no text is left in English (%j)', overrides => {
    const binder = makeBinder(contextIn(spanish, overrides))
    expect(binder.language).toBe('es')
    // The titles of calculations are theirs, in English.
    const written = binder.sections.map(one => ({
      ...one,
      blocks: one.blocks.filter(({ kind }) => kind !== 'working')
    }))
    expect(leaks(written)).toEqual([])
  })

  it('has labels, box pages and a site page in which no text is left in English', () => {
    const context = contextIn(spanish)
    const open = publicContext(context)
    const boxes = context.site.boxes.flatMap(box => (box.tag ? [makeBoxPage({ ...box, tag: box.tag }, open)] : []))
    expect(boxes.length).toBeGreaterThan(0)
    expect(leaks([boxes, makeLabelSheet(open), makeSitePage(context)])).toEqual([])
  })

  it('is held against a list that would find English: the English binder is full of it', () => {
    expect(leaks(makeBinder(contextIn(english))).length).toBeGreaterThan(200)
  })

  it('carries the same figures as the English one', () => {
    const numbers = (words: PageContext['words']) =>
      makeBoxPage({ ...box(contextIn(words)), tag: '7KQ3F9X' }, publicContext(contextIn(words))).wiredHere.map(one => [
        one.loopReading.text,
        one.normalFlow.text
      ])
    expect(numbers(spanish)).toEqual(numbers(english))
  })

  it('says of the parts that stay in English that they do', () => {
    const { sections } = makeBinder(contextIn(spanish))
    const said = JSON.stringify(sections.find(one => one.id === 'numbers')?.blocks.slice(0, 2))
    expect(said).toContain('están en inglés')
  })
})

function box({ site }: PageContext) {
  const [first] = site.boxes
  if (!first) throw new Error('The base site has no box.')
  return first
}

describe('days and run times', () => {
  const RULES = [
    'every day',
    'odd dates',
    'odd dates with the 31st',
    'even dates',
    'Mon Wed Fri',
    'every 2 days from 2026-04-02',
    'every 1 day from 2026-04-02'
  ]

  it.each(RULES)('are in English what a site file says: %s', text => {
    const rule = parseDayRule(text)
    if (!rule) throw new Error(text)
    expect(daysText(rule, english)).toBe(writeDayRule(rule))
    expect(daysText(rule, spanish)).not.toBe(writeDayRule(rule))
  })

  it.each(['25 min', '90 s', '2 x 6 min', '2 x 6 min soak 30 min'])('the same for a run time: %s', text => {
    const run = parseRunTime(text)
    if (!run.ok) throw new Error(text)
    expect(runTimeText(run.value, english)).toBe(writeRunTime(run.value))
  })

  it('are in Spanish', () => {
    const fridays = parseDayRule('Mon Wed Fri')
    const soak = parseRunTime('2 x 6 min soak 30 min')
    if (!fridays || !soak.ok) throw new Error('not read')
    expect(daysText(fridays, spanish)).toBe('lun mié vie')
    expect(runTimeText(soak.value, spanish)).toBe('2 x 6 min pausa 30 min')
  })
})

describe('sections and pages', () => {
  it('take no word from one language by name: the site says which', () => {
    const folder = join(import.meta.dirname, '../../src/binder')
    const files = (readdirSync(folder, { recursive: true }) as string[]).filter(file => file.endsWith('.ts'))
    const named = files.filter(file =>
      /^import \{[^}]*\} from '[./]*words\/(?:en-US|es)\//mu.test(readFileSync(join(folder, file), 'utf8'))
    )
    expect(named).toEqual([])
  })
})
