import { describe, expect, it } from 'vitest'
import type { BoxPage } from '../../src/binder/pages.ts'
import { boxScriptData, jsonForScript } from '../../src/render/box-script-data.ts'
import { dates } from '../../src/render/dates.ts'
import { markdown } from '../../src/render/markdown.ts'
import { templateFilters } from '../../src/render/template-helpers.ts'
import { BOX_METRIC } from '../look/box-pages.ts'

describe('Markdown', () => {
  it('headings stand below the two ranks of a binder', () => {
    expect(markdown('# a\n\n## b\n\n###### c')).toBe('<h3>a</h3>\n<h4>b</h4>\n<h6>c</h6>\n')
  })

  it('raw HTML and scripts in links come to nothing', () => {
    expect(markdown('<script>x</script>')).not.toContain('<script>')
    expect(markdown('[x](javascript:alert(1))')).not.toContain('href')
  })

  it('pictures are not fetched', () => {
    expect(markdown('![x](https://example.org/a.png)')).not.toContain('<img')
  })

  it('CRLF and tables are read', () => {
    expect(markdown('| a |\r\n| - |\r\n| 1 |\r\n')).toContain('<td>1</td>')
  })
})

describe('small filters', () => {
  it('a date does not break at its hyphens, and the rest is escaped', () => {
    expect(dates('from 2026-04-02 <b>')).toBe('from <span class="date">2026-04-02</span> &#60;b&#62;')
  })

  it('a name and a size of pipe do not break at their hyphens either; other words may', () => {
    const kept = (text: string) =>
      [...dates(text).matchAll(/<span class="date">(.*?)<\/span>/gu)].map(([, word]) => word)
    expect(kept('MR-01/1, P1-Z6 and GC-2; 1-1/2 in on MR-9')).toEqual(['MR-01/1', 'P1-Z6', 'GC-2', '1-1/2', 'MR-9'])
    expect(kept('shut-off, six-station unit, 12-10, X-ray, A-B')).toEqual([])
  })

  it('a telephone number is dialled by its digits', () => {
    const numbers = ['+44 1632 960 114', '(555) 010-0199', '555 0100 ext. 7']
    expect(numbers.map(templateFilters.telephone)).toEqual(['+441632960114', '5550100199', '55501007'])
  })

  it('JSON cannot close its element', () => {
    const text = jsonForScript({ a: '</script><!-- & \u2028' })
    expect(text).not.toMatch(/[<>&\u2028]/u)
    expect(JSON.parse(text)).toEqual({ a: '</script><!-- & \u2028' })
  })
})

describe('what a box page hands to its script', () => {
  it('is only what the script needs: an extra field never comes along', () => {
    const [controller] = BOX_METRIC.script.controllers
    const leaky = {
      ...BOX_METRIC,
      script: {
        ...BOX_METRIC.script,
        controllers: [{ ...controller, at: { file: 'site.md' }, keys: 'locker 14' }],
        private: 'code 7719'
      }
    } as unknown as BoxPage
    expect(boxScriptData(leaky)).not.toMatch(/site\.md|locker|7719/u)
  })

  it('carries batteries, programs and words', () => {
    const data = JSON.parse(boxScriptData(BOX_METRIC)) as {
      batteries: unknown
      controllers: unknown
      words: { overdue: string }
    }
    expect(data.batteries).toEqual([{ controller: 'K1', due: '2026-04-14' }])
    expect(data.controllers).toEqual(JSON.parse(JSON.stringify(BOX_METRIC.script.controllers)))
    expect(data.words.overdue).toBe('OVERDUE')
  })
})
