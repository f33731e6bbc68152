import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { deflateSync } from 'node:zlib'
import { PDFDocument } from 'pdf-lib'
import { describe, expect, it } from 'vitest'
import { findLeaks, findLeaksAt } from '../../src/build/privacy-gate.ts'
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
    '<script type="application/json">{"a":"code-7719"}</script>',
    // As escapes write it, and as tags and signs that are not seen part it.
    '<p>depot&nbsp;locker&#32;14',
    '<p>&#55;&#x37;19',
    '<script type="application/json">{"a":"\\u0037719"}</script>',
    '<a href="mailto:?body=code%207719">',
    '<p>depot <b>locker</b> <i>14</i>',
    '<p><b>77</b><span>19</span>',
    '<p>77\u00ad19',
    '<p>\uff17\uff17\uff11\uff19',
    '<p>Dépôt Löcker 14',
    '<meta name="description" content="depot_locker-14">',
    '<p data-note="depot locker 14">'
  ])('finds it in a page: %s', html => {
    expect(leaks('public/B/A/index.html', html)).toEqual(['keys'])
  })

  it.each([
    '<path d="M7719 0h7 7 1 9">',
    '<style>.a{width:7719px}</style>',
    '<script>x=[7719]</script>',
    '<meta content="script-src \'sha256-ab+7719/cd=\'">',
    '<p>177190',
    '<td>77</td><td>19</td>',
    '<image width=7719 height=20>'
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

  const chunk = (type: string, data: Buffer): Buffer => {
    const length = Buffer.alloc(4)
    length.writeUInt32BE(data.length)
    return Buffer.concat([length, Buffer.from(type, 'latin1'), data, Buffer.alloc(4)])
  }
  const png = (type: string, data: Buffer): string =>
    Buffer.concat([
      Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
      chunk(type, data),
      chunk('IEND', Buffer.alloc(0))
    ]).toString('latin1')

  it.each(['tEXt', 'eXIf', 'zzZz'])('reads the part %s of a PNG as it stands', type => {
    expect(leaks('public/B/A/photos/a.png', png(type, Buffer.from('x\0depot locker 14')), 'latin1')).toEqual(['keys'])
  })

  it.each(['zTXt', 'iTXt'])('unpacks the part %s of a PNG', type => {
    const packed = Buffer.concat([
      Buffer.from('Comment\0\x01\0\0\0', 'latin1'),
      deflateSync(Buffer.from('gate code 7719'))
    ])
    expect(leaks('public/B/A/photos/a.png', png(type, packed), 'latin1')).toEqual(['keys'])
  })

  it('does not take pixels for words, and reads what stands behind them', () => {
    const jpeg = (pixels: string, behind = ''): string =>
      `\u00ff\u00d8\u00ff\u00da\0\u0004\0\0${pixels}\u00ff\u00d9${behind}`
    expect(leaks('public/B/A/photos/a.jpg', jpeg(' 7719 '), 'latin1')).toEqual([])
    expect(leaks('public/B/A/photos/a.jpg', jpeg(' 1 ', ' 7719 '), 'latin1')).toEqual(['keys'])
    expect(leaks('public/B/A/photos/a.png', png('IDAT', Buffer.from(' 7719 ')), 'latin1')).toEqual([])
    const webp = (type: string): string => `RIFF\x20\0\0\0WEBP${type}\x06\0\0\0 7719 `
    expect(leaks('public/B/A/photos/a.webp', webp('VP8L'), 'latin1')).toEqual([])
    expect(leaks('public/B/A/photos/a.webp', webp('EXIF'), 'latin1')).toEqual(['keys'])
  })

  it('reads a PDF as it is shown, and what it says of itself', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'underlid-gate-'))
    const write = async (name: string, shown: string, subject: string): Promise<void> => {
      const document = await PDFDocument.create()
      document.setSubject(subject)
      document.addPage([200, 200]).drawText(shown, { x: 10, y: 100, size: 12 })
      writeFileSync(join(folder, name), await document.save())
    }
    await write('shown.pdf', 'gate code 7719', 'nothing')
    await write('said.pdf', 'nothing', 'depot locker 14')
    await write('neither.pdf', 'gate', 'locker 14')
    const words = site.privateWords.map(({ label, text }) => ({ site: site.id, label, text }))
    const found = await findLeaksAt(folder, ['shown.pdf', 'said.pdf', 'neither.pdf'], words)
    rmSync(folder, { recursive: true })
    expect(found.map(one => one.path)).toEqual(['shown.pdf', 'said.pdf'])
  })

  it('looks into scripts for words, not for numbers', () => {
    expect(leaks('public/worker.js', 'const a="depot locker 14"')).toEqual(['keys'])
    expect(leaks('public/slip-code.js', '[1,7719,3]')).toEqual([])
  })
})
