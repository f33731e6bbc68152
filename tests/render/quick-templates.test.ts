import nunjucks from 'nunjucks'
import { beforeAll, describe, expect, it } from 'vitest'
import { quickTemplates } from '../../src/render/quick-templates.ts'

const LOOPS = `{% for a in list %}{{ loop.index }}{{ loop.index0 }}{{ loop.revindex }}{{ loop.revindex0 }}{{ loop.first }}{{ loop.last }}{{ loop.length }}
{% for key, b in pairs %}{{ key }}{{ b }}{{ loop.index }}{{ loop.last }}{% endfor %}|{{ loop.index }}{{ a }}
{% endfor %}{% for x, y in rows %}{{ x }}{{ y }}{{ loop.index0 }},{% else %}none{% endfor %}{% for z in none %}{{ z }}{% else %}empty{% endfor %}`
const SETS = `{% set v = 1 %}{% for a in list %}{% set v = a %}{% set inner = a %}{% endfor %}{{ v }}{{ inner }}{% macro m(a, b=2) %}{% set v = b %}{{ a }}{{ v }}{% endmacro %}{{ m(1) }}{{ m(1, b=3) }}{{ v }}`
const VIEW = {
  list: ['p', 'q', 'r'],
  pairs: { one: 1, two: 2 },
  rows: [
    [1, 2],
    [3, 4]
  ] as const,
  none: []
}

describe('templates made quick', () => {
  const plain = new Map<string, string>()
  const render = (text: string): string => new nunjucks.Environment(null, { autoescape: true }).renderString(text, VIEW)

  beforeAll(() => {
    for (const text of [LOOPS, SETS]) plain.set(text, render(text))
    quickTemplates()
  })

  it.each([
    ['variables of loops, of loops in loops too', LOOPS],
    ['variables that are set in loops and in macros', SETS]
  ])('say the same as the engine by itself: %s', (_, text) => {
    expect(render(text)).toBe(plain.get(text))
  })

  it('have been made quick indeed: the engine writes one line for the variables of a loop', () => {
    const written = nunjucks.precompileString('{% for a in list %}{{ a }}{% endfor %}', { name: 'x' })
    expect(written.match(/frame\.set\("loop/gu)).toHaveLength(1)
  })
})
