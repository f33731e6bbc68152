import { describe, expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { publicContext } from '../../src/binder/context.ts'
import { makeLabelSheet } from '../../src/binder/make-labels.ts'
import { planCode, planFits } from '../../src/binder/plan-code.ts'
import { planText } from '../../src/binder/plan-text.ts'
import { PLAN_LABEL } from '../../src/binder/label-size.ts'
import { date } from '../../src/units/date.ts'
import { wordsOf } from '../../src/words/languages.ts'
import { byJsqr, byZxing, photocopy } from '../support/read-codes.ts'
import { printedCode } from '../support/printed-code.ts'

const assessment = assessFleet('sites', date('2026-05-01'))
const contexts = assessment.sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG')).map(publicContext)
const context = (id: string) => {
  const found = contexts.find(one => one.site.id === id)
  if (!found) throw new Error(id)
  return found
}
const plan = (id: string, boxId: string, most = Infinity, language = 'en-US') => {
  const own = { ...context(id), words: wordsOf(language) }
  const box = own.site.boxes.find(one => one.id === boxId)
  if (!box?.tag) throw new Error(boxId)
  return planText({ ...box, tag: box.tag }, own, text => text.length <= most)
}

const KESTREL = [
  'Kestrel Cross Roundabout, box VB1, 7KQ3F9X',
  'Stop the water: meter pit, 2 m north of lamp post 4, quarter turn clockwise, T-key',
  'K1 program A: every 2 days from 2026-04-02, 23:10',
  '1 Z1 groundcover, drip: 20 min',
  '2 Z2 shrubs, drip: 20 min',
  '4 Z4 splitter island, drip: 15 min',
  'K1 program B: Mon Thu, 01:00',
  '3 Z3 meadow, spray: 2 x 12 min soak 30 min',
  '% by month: Apr 50, May 75, Jun 90, Jul 100, Aug 85, Sep 55, Oct 30',
  'Battery K1: change by 2026-04-14',
  'Data of 2026-05-01'
]

describe('the zone plan as plain text', () => {
  it('names site, box, shut-off, programs with their starts, stations with plants, device and minutes, percents and the battery change', () => {
    expect(plan('kestrel-cross', 'VB1')).toEqual(KESTREL)
  })

  it('of a box without the controller holds the stations whose valves are in it', () => {
    const stations = plan('kestrel-cross', 'VB3')?.filter(one => /^\d /u.test(one))
    expect(stations).toEqual(['4 Z4 splitter island, drip: 15 min'])
  })

  it('is whole exactly at the limit, and one character less takes from the stations first what they water', () => {
    const length = KESTREL.join('\n').length
    expect(plan('kestrel-cross', 'VB1', length)).toEqual(KESTREL)
    expect(plan('kestrel-cross', 'VB1', length - 1)).toEqual([
      ...KESTREL.slice(0, 3),
      ...['1 Z1: 20 min', '2 Z2: 20 min', '4 Z4: 15 min', KESTREL[6], '3 Z3: 2 x 12 min soak 30 min'],
      ...KESTREL.slice(8),
      'More on the page'
    ])
  })

  it('then loses whole lines: the percents, the last stations, the programs; never name, shut-off and battery, and says so', () => {
    for (let most = 420; most > 0; most -= 7) {
      const lines = plan('kestrel-cross', 'VB1', most)
      if (!lines) continue
      expect(lines.join('\n').length).toBeLessThanOrEqual(most)
      for (const line of lines.slice(0, -1))
        expect(
          KESTREL.some(one => one === line || one.replace(/ [a-z][^:]*:/u, ':') === line),
          line
        ).toBe(true)
      expect(lines).toEqual(expect.arrayContaining([KESTREL[0], KESTREL[1], 'Battery K1: change by 2026-04-14']))
      expect(lines.at(-1)).toBe(most >= KESTREL.join('\n').length ? 'Data of 2026-05-01' : 'More on the page')
      const kinds = { station: /^\d /u, percent: /^%/u, program: /^K1 program/u }
      const count = (kind: RegExp) => lines.filter(one => kind.test(one)).length
      if (count(kinds.station) < 4) expect(count(kinds.percent)).toBe(0)
      if (count(kinds.program) < 2) expect(count(kinds.station)).toBe(0)
    }
    expect(plan('kestrel-cross', 'VB1', 150)).toBeUndefined()
  })

  it('is in the language of the labels', () => {
    const lines = plan('tansy-yard', 'TY3', Infinity, 'es') ?? []
    expect(lines[0]).toBe('Tansy Yard Park Depot, arqueta TY3, QWQ5B8H')
    expect(lines[1]).toMatch(/^Cortar el agua: /u)
    expect(lines[2]).toBe('T2 programa A: mar jue sáb, 5:00 am')
    expect(lines.at(-2)).toMatch(/^Batería T2: cambiar antes del 2027-/u)
  })

  it('of every demo box has no private word, no tab and no space of another width', () => {
    for (const one of contexts)
      for (const box of one.site.boxes) {
        const text = plan(one.site.id, box.id)?.join('\n') ?? ''
        expect(text).not.toMatch(/[\t\u00a0\u2009\u202f]/u)
        const full = assessment.sites.find(site => site.id === one.site.id)?.site
        for (const { text: word } of full?.privateWords ?? []) expect(text).not.toContain(word)
      }
  })
})

describe('the plan code on a label', () => {
  const size = PLAN_LABEL
  const sheets = contexts.flatMap(one =>
    ['en-US', 'es'].map(language =>
      makeLabelSheet({ ...one, words: wordsOf(language) }, { size, single: false, planCode: true })
    )
  )

  it('is on every label of the demo sites, no finer than phones read, at level Q or, where the text is long, M', () => {
    const codes = sheets.flatMap(one => one.labels.map(({ plan: own }) => own?.code))
    expect(codes.length).toBeGreaterThan(90)
    for (const code of codes) {
      expect(code?.moduleMm).toBeGreaterThanOrEqual(0.5)
      expect(code?.sideMm).toBeLessThanOrEqual(44.5)
      expect(['Q', 'M']).toContain(code?.level)
    }
  })

  it('takes level Q where the text fits so, at the smallest version for it with modules as large as fit, and else level M', () => {
    const [short, long] = ['a'.repeat(300), 'a'.repeat(400)]
    expect(planCode(short, 44.5)).toMatchObject({ level: 'Q', version: 16, moduleMm: 0.5 })
    expect(planCode('a'.repeat(100), 44.5)).toMatchObject({ level: 'Q', version: 8, moduleMm: 0.75 })
    expect(planCode(long, 44.5)).toMatchObject({ level: 'M', version: 15, moduleMm: 0.5 })
    expect(planFits('a'.repeat(450), 44.5)).toBe(true)
    expect(planFits('a'.repeat(451), 44.5)).toBe(false)
    expect(planFits(short, 44.5, { moduleMm: 0.7 })).toBe(false)
  })

  it('is read by two readers as the very same text, accents and all, at 300 dots to the inch', async () => {
    const of = (site: string, language: string) => sheets.find(one => one.site === site && one.language === language)
    for (const sheet of [of('kestrel-cross', 'en-US'), of('tansy-yard', 'es'), of('tinder-street-roof', 'es')])
      for (const { plan: own } of sheet?.labels ?? []) {
        const picture = own && printedCode(own.code).picture
        if (!picture) throw new Error('no code')
        const text = own.lines.join('\n')
        expect(await byZxing(picture)).toEqual([text])
        expect(await byJsqr(picture)).toEqual([text])
        expect(await byZxing(photocopy(picture))).toEqual([text])
      }
  })
})
