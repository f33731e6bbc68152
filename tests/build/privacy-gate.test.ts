import { describe, expect, it } from 'vitest'
import { findLeaks } from '../../src/build/privacy-gate.ts'
import { bareSite } from '../support/bare-site.ts'

const at = { file: 'site.md', path: [] }
const site = {
  ...bareSite(),
  id: 'quay-street',
  privateWords: [
    { at, label: 'keys', text: 'depot locker 14, code 7719' },
    { at, label: 'phone', text: '+44 1632 960 114' }
  ]
}
const leaks = (path: string, text: string, encoding: BufferEncoding = 'utf8') =>
  findLeaks([{ path, bytes: Buffer.from(text, encoding) }], [site]).map(leak => leak.label)

describe('the gate before everything public', () => {
  it.each([
    '<p>Gate 7719',
    '<p>gate 77 19',
    '<img alt="Depot Locker 14">',
    '<script type="application/json">{"a":"code-7719"}</script>'
  ])('finds it in a page: %s', html => {
    expect(leaks('public/B/A/index.html', html)).toEqual(['keys'])
  })

  it.each([
    '<path d="M7719 0h7 7 1 9">',
    '<style>.a{width:7719px}</style>',
    '<script>x=[7719]</script>',
    '<meta content="script-src \'sha256-ab+7719/cd=\'">',
    '<p>177190'
  ])('does not take a drawing, a style, a script, a hash or a longer number for it: %s', html => {
    expect(leaks('public/B/A/index.html', html)).toEqual([])
  })

  it('finds a private telephone number however it is set', () => {
    expect(leaks('public/index.html', '<a href="tel:+441632960114">')).toEqual(['phone'])
  })

  it('looks into pictures, at what a camera wrote there in one or two bytes a letter', () => {
    expect(leaks('public/B/A/photos/a.jpg', '\u00ff\u00d8Exif depot locker 14\u0000', 'latin1')).toEqual(['keys'])
    expect(leaks('public/B/A/photos/a.jpg', 'code 7719', 'utf16le')).toEqual(['keys'])
  })

  it('looks into scripts for words, not for numbers', () => {
    expect(leaks('public/worker.js', 'const a="depot locker 14"')).toEqual(['keys'])
    expect(leaks('public/slip-code.js', '[1,7719,3]')).toEqual([])
  })
})
