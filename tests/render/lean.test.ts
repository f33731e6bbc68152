import { describe, expect, it } from 'vitest'
import { lean } from '../../src/render/lean.ts'

describe('lean markup', () => {
  it('leaves out the end tags that HTML lets a page leave out, and line ends that never show', () => {
    expect(lean('<ul>\n<li>one</li>\n<li>two</li>\n</ul>')).toBe('<ul><li>one<li>two</ul>')
    expect(lean('<dl>\n<div><dt>a</dt><dd>b</dd></div>\n</dl>')).toBe('<dl><div><dt>a<dd>b</div></dl>')
    expect(lean('<tr><th scope="row">May</th><td>80 %</td></tr>\n<tr>')).toBe('<tr><th scope=row>May<td>80 %<tr>')
  })

  it('keeps the end of a paragraph before text and before what does not close it', () => {
    expect(lean('<p>one</p>\n<p>two</p></div>')).toBe('<p>one<p>two</div>')
    expect(lean('<p>one</p> two')).toBe('<p>one</p> two')
    expect(lean('<p>one</p><span>two</span>')).toBe('<p>one</p><span>two</span>')
    expect(lean('<p>one</p></a>')).toBe('<p>one</p></a>')
  })

  it('keeps the space between words and the quotes that are needed', () => {
    expect(lean('<b>one</b>\n<span class="a b">two</span>')).toBe('<b>one</b>\n<span class="a b">two</span>')
    expect(lean('<i class="a">x</i>')).toBe('<i class=a>x</i>')
    expect(lean('<use class="a"/>')).toBe('<use class="a"/>')
  })

  it('leaves what a person wrote as it is, since it comes escaped', () => {
    const text = '&lt;/li&gt; class=&quot;a&quot;'
    expect(lean(`<li>${text}</li>`)).toBe(`<li>${text}`)
  })
})
