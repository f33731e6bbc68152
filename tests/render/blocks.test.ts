import { describe, expect, it } from 'vitest'
import type { Binder, Block, Standing, State } from '../../src/binder/blocks.ts'
import { pageWords } from '../../src/words/en-US/pages.ts'
import { BINDER_METRIC } from '../look/binder-metric.ts'
import { renderPage } from '../look/render-all.ts'
import { textOf } from '../look/text-of.ts'

/* The compiler keeps these lists whole: a kind that is added to the types must be added here. */
const KINDS: Readonly<Record<Block['kind'], true>> = {
  paragraph: true,
  heading: true,
  prose: true,
  facts: true,
  table: true,
  'fault-step': true,
  list: true,
  checklist: true,
  caution: true,
  finding: true,
  working: true,
  index: true,
  attachment: true,
  sheet: true,
  'box-find': true,
  chart: true,
  figure: true,
  picture: true,
  'not-supplied': true,
  'tag-plate': true,
  signatures: true,
  'program-card': true,
  'card-pair': true
}
const STANDINGS: Readonly<Record<Standing, true>> = {
  stated: true,
  measured: true,
  computed: true,
  'data-plate': true,
  'common-practice': true,
  default: true,
  'not-supplied': true,
  'not-computed': true
}
const STATES: Readonly<Record<State, true>> = { good: true, soon: true, bad: true, unknown: true }

const blocks = BINDER_METRIC.sections.flatMap(section => section.blocks)

function section(...content: readonly Block[]): string {
  const binder: Binder = {
    ...BINDER_METRIC,
    sections: [{ id: 'only', title: 'Only', newPage: true, blocks: content }]
  }
  const html = renderPage('pages/binder.njk', binder)
  return html.slice(html.indexOf('<section'), html.lastIndexOf('</section>'))
}

describe('blocks', () => {
  const empty = section().length

  it.each(Object.keys(KINDS) as Block['kind'][])('a block of kind %s is printed', kind => {
    const block = blocks.find(one => one.kind === kind)
    expect(block, 'stands in the invented binder').toBeDefined()
    expect(section(block as Block).length).toBeGreaterThan(empty + 20)
  })

  it('every word of a caution is printed, and only NOTICE goes without the alert symbol', () => {
    for (const block of blocks) {
      if (block.kind !== 'caution') continue
      const html = section(block)
      const { signal, title, hazard, consequence, avoidance, edition, deference } = block
      for (const words of [signal, title, hazard, consequence, ...avoidance, edition, deference])
        expect(textOf(html)).toContain(words)
      expect(html.includes('class="alert"')).toBe(signal !== 'NOTICE')
    }
  })

  it('blank rows of a table are there to be written in', () => {
    const html = section({ kind: 'table', columns: [{ label: 'Date' }, { label: 'Who' }], rows: [], blankRows: 5 })
    expect(html.match(/<tr class="blank">/gu)).toHaveLength(5)
    expect(html.match(/<td data-field="text"[^>]*><\/td>/gu)).toHaveLength(10)
    expect(html).toContain('data-name="line 5, Who"')
  })

  it('braces and raw HTML in a writer\u2019s Markdown are shown as written', () => {
    const html = section({ kind: 'prose', markdown: '{{ secret }} {% if x %} <b>bold</b> **strong**' })
    expect(textOf(html)).toContain('{{ secret }} {% if x %} <b>bold</b>')
    expect(html).toContain('<strong>strong</strong>')
  })
})

describe('values', () => {
  const facts = (standing: Standing, state?: State): string =>
    section({
      kind: 'facts',
      rows: [{ label: 'L', value: { text: '4.2 Ω', standing, ...(state ? { state } : {}) } }]
    })

  it('look different by standing, and those that are no plain fact carry a letter of their own', () => {
    const standings = Object.keys(STANDINGS) as Standing[]
    expect(new Set(standings.map(standing => facts(standing))).size).toBe(standings.length)
    const marks = standings.map(standing => pageWords.standings[standing].mark).filter(mark => mark !== '')
    expect(new Set(marks).size).toBe(5)
    for (const standing of standings) {
      const { mark } = pageWords.standings[standing]
      expect(facts(standing).includes(`<sup>${mark}</sup>`)).toBe(mark !== '')
    }
  })

  it('with a state have a shape before the word, each state its own', () => {
    const shapes = (Object.keys(STATES) as State[]).map(state => / d="([^"]+)"/u.exec(facts('stated', state))?.[1])
    expect(new Set(shapes).size).toBe(4)
    expect(facts('stated', 'bad')).toMatch(/<svg class="state-shape"[\s\S]*4\.2 Ω/u)
  })

  it('tell why they are not there', () => {
    const why = 'The size is not stated.'
    const value = { text: 'not computed', standing: 'not-computed' as const, note: why }
    expect(textOf(section({ kind: 'facts', rows: [{ label: 'Loop', value }] }))).toContain(why)
    expect(textOf(section({ kind: 'table', columns: [{ label: 'Loop' }], rows: [[value]] }))).toContain(why)
  })

  it('are explained once, after the contents', () => {
    const html = renderPage('pages/binder.njk', BINDER_METRIC)
    expect(html.match(/class="key-title"/gu)).toHaveLength(1)
    for (const { means } of Object.values(pageWords.standings)) expect(textOf(html)).toContain(means)
  })
})
