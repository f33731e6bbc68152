import { describe, expect, it } from 'vitest'
import { searchText } from '../../src/binder/search-text.ts'
import { loadSite } from '../../src/load/site.ts'
import { BASE_ON, baseSite } from '../support/base-site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { runChecks } from '../../src/checks/run.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { date } from '../../src/units/date.ts'

function textOf(keys: string, visits: readonly string[] = []): string {
  const loaded = loadSite(baseSite(keys, { visits: visits.map((text, index) => [`v${index}.md`, text] as const) }))
  const { site } = loaded
  if (!site) throw new Error(JSON.stringify(loaded.faults))
  const plan = makePlan(site, date(BASE_ON))
  return searchText(site, runChecks({ loaded, plan, fleet: { sites: [site], register: [] } }, CHECKS))
}
const wordsOf = (...args: Parameters<typeof textOf>) => textOf(...args).split(' ')

describe('the words by which a site is found', () => {
  it('are those of its boxes, controllers, zones, visits and findings, small, each once, in order', () => {
    const words = wordsOf('boxes:\n  - { id: VB1, where: Behind the Bandstand, ties: ["4.2 m from Elm 7"] }\n', [
      'on: 2026-04-10\nfound: [gopher in VB1]\ndone: [gopher gone]\nopen: [mesh to be laid]\n'
    ])
    for (const word of ['vb1', 'bandstand', 'elm', '4.2', 'k1', 'z1', 'gopher', 'mesh', 'box/no-photo'])
      expect(words, word).toContain(word)
    expect(words).toEqual([...new Set(words)].sort())
    expect(words.every(word => word === word.toLowerCase() && word.length > 1)).toBe(true)
  })

  it('keep letters of every script, and numbers with their points and strokes', () => {
    const words = wordsOf('boxes:\n  - { id: VB1, where: "Çınar sokağı, 植栽 A-12/3, 54.97" }\n')
    for (const word of ['çınar', 'sokağı', '植栽', 'a-12/3', '54.97']) expect(words).toContain(word)
  })

  it('hold nothing of a text in which a private word stands, however it is spelled there', () => {
    for (const spelled of ['code 7719', 'code 77 19', 'code 7-7-1-9']) {
      const text = textOf(
        `boxes:\n  - { id: VB1, where: "behind the heron, ${spelled}" }\nprivate: { keys: "depot locker 14, code 7719" }\n`
      )
      for (const word of ['heron', '7719', 'locker']) expect(text.split(' '), `${spelled}: ${word}`).not.toContain(word)
      expect(text.split(' ')).toContain('vb1')
    }
  })

  it('hold no mark that could end a script or a line', () => {
    const text = textOf('boxes:\n  - { id: VB1, where: "</script><b>\\u2028\\"bold\\"" }\n')
    expect(text).not.toMatch(/[<>"\n\u2028]/u)
    expect(text.split(' ')).toContain('bold')
  })
})
