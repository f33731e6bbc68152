import { describe, expect, it } from 'vitest'
import { pruneCss, pruneInTwo } from '../../src/render/prune-css.ts'

const page = '<p class="a b" id=one><script>make("now")</script>'

describe('a pruned style sheet', () => {
  it('keeps rules whose classes and ids stand in the page or in its scripts, and drops the others', () => {
    expect(pruneCss('.a{x:1}.z{x:2}.a .z{x:3}#one{x:4}#two{x:5}.now{x:6}', page)).toBe('.a{x:1}#one{x:4}.now{x:6}')
  })

  it('keeps of several selectors those that are used', () => {
    expect(pruneCss('.z,.a,p{x:1}', page)).toBe('.a,p{x:1}')
    expect(pruneCss('.a>:not(.z,summary){x:1}', page)).toBe('.a>:not(.z,summary){x:1}')
  })

  it('goes into media rules, drops those left empty, and leaves other at-rules as they are', () => {
    expect(pruneCss('@media print{.a{x:1}.z{x:2}}@media print{.z{x:1}}@page{margin:1mm}', page)).toBe(
      '@media print{.a{x:1}}@page{margin:1mm}'
    )
  })

  it('is not misled by braces in quoted text', () => {
    expect(pruneCss('.a:before{content:"}"}.z{x:1}.b{x:2}', page)).toBe('.a:before{content:"}"}.b{x:2}')
  })

  it('keeps what a script puts together from parts', () => {
    expect(pruneCss('.state-bad{x:1}', page)).toBe('.state-bad{x:1}')
  })

  it('names its own properties by a letter, the same everywhere', () => {
    expect(pruneCss(':root{--ink: #000}.a{color:var(--ink)}', page)).toBe(':root{--a: #000}.a{color:var(--a)}')
  })

  it('in two: what the top of a page needs, then the rest, print last; a rule stands once', () => {
    const css =
      ':root{--ink: #000}p{x:0}.a{x:1}.b{x:2}.a .b{x:3}@media print{.a{x:4}}@media(max-width:359px){.b{x:5}}.a,.b{color:var(--ink)}'
    expect(pruneInTwo(css, page, '<p class=a>')).toEqual([
      ':root{--a: #000}p{x:0}.a{x:1}.a{color:var(--a)}',
      '.b{x:2}.a .b{x:3}@media(max-width:359px){.b{x:5}}.b{color:var(--a)}@media print{.a{x:4}}'
    ])
  })
})
