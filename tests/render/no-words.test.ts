import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { pageWords } from '../../src/words/en-US/pages.ts'
import { TEMPLATES } from '../../src/render/template-environment.ts'

/* Words stand in src/words, so that another language is another object and no template has to be touched. */

const files = (readdirSync(TEMPLATES, { recursive: true }) as string[]).sort()
const templates = files.filter(file => file.endsWith('.njk'))
const sheets = files.filter(file => file.endsWith('.css'))

const read = (file: string): string => readFileSync(join(TEMPLATES, file), 'utf8')

/** Expressions, statements and comments of the template language taken away. */
const withoutCode = (text: string): string => text.replace(/\{#[\s\S]*?#\}|\{%[\s\S]*?%\}|\{\{[\s\S]*?\}\}/gu, '')

describe('templates', () => {
  it('are there to be looked at', () => {
    expect(templates).toContain(join('pages', 'binder.njk'))
    expect(templates.length).toBeGreaterThan(12)
  })

  it.each(templates)('%s holds no word of its own', file => {
    const text = withoutCode(read(file))
      .replace(/<style>[\s\S]*?<\/style>/gu, '')
      .replace(/\{%\s*block css[\s\S]*?endblock/gu, '')
      .replace(/@page\{size:[a-z]*\}/gu, '')
      .replace(/<[^>]*>/gu, '')
    expect(text.match(/[\p{L}]+/gu) ?? []).toEqual([])
  })

  it.each(templates)('%s has no word in an attribute that is read aloud or shown', file => {
    const shown = withoutCode(read(file)).matchAll(/ (?:alt|title|aria-label|placeholder|label)="([^"]*)"/gu)
    expect([...shown].map(([, value]) => value).filter(value => /\p{L}/u.test(value ?? ''))).toEqual([])
  })

  it.each(sheets)('%s puts no word on a page', file => {
    const contents = [...read(file).matchAll(/content:\s*([^;]+);/gu)].map(([, value]) => value ?? '')
    const quoted = contents.flatMap(value => value.match(/'[^']*'|"[^"]*"/gu) ?? [])
    expect(quoted.filter(value => /\p{L}/u.test(value))).toEqual([])
  })
})

describe('the words of the templates', () => {
  it('are each used: a word that no page prints is a leftover', () => {
    const code = ['../../src/page', '../../src/render'].flatMap(folder => {
      const path = join(import.meta.dirname, folder)
      return (readdirSync(path, { recursive: true }) as string[])
        .filter(file => file.endsWith('.ts'))
        .map(file => readFileSync(join(path, file), 'utf8'))
    })
    const text = [...templates.map(read), ...code].join('\n')
    const { standings: _, ...groups } = pageWords
    const unused = Object.entries(groups).flatMap(([group, words]) =>
      Object.keys(words)
        .filter(
          key =>
            ![
              `words.${group}.${key}`,
              `words.${key}(`,
              `words['${key}']`,
              `'${key}'`,
              `\`${key.replace(/\d$/u, '')}$`
            ].some(use => text.includes(use))
        )
        .map(key => `${group}.${key}`)
    )
    expect(unused).toEqual([])
  })
})
