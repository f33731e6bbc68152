import { describe, expect, it } from 'vitest'
import { MOST_BYTES, readFrontMatter } from '../../src/load/front-matter.ts'
import { placeOf } from '../../src/load/place.ts'
import { loadSite } from '../../src/load/site.ts'

const read = (text: string) => readFrontMatter({ file: 'sites/x/site.md', text })
const codes = (text: string) =>
  read(text).faults.map(fault => `${fault.code} ${String(fault.details['kind'] ?? '')}`.trim())

describe('the lines of dashes', () => {
  it('part keys from prose, and each knows its line', () => {
    const front = read('---\ntitle: Quay\n---\nBelow.\n')
    expect(front.data).toEqual({ title: 'Quay' })
    expect(front.body).toBe('Below.\n')
    expect(front.bodyLine).toBe(4)
    expect(placeOf(front, ['title'])).toEqual({
      file: 'sites/x/site.md',
      line: 2,
      column: 8,
      length: 4,
      text: 'title: Quay'
    })
  })

  it('may have spaces after them, a byte order mark before them, and Windows line ends', () => {
    for (const text of ['---  \ntitle: Quay\n---  \nBelow.\n', '\uFEFF---\r\ntitle: Quay\r\n---\r\nBelow.\r\n']) {
      const front = read(text)
      expect(front.faults).toEqual([])
      expect(front.data).toEqual({ title: 'Quay' })
      expect(placeOf(front, ['title'])).toMatchObject({ line: 2, column: 8, length: 4, text: 'title: Quay' })
      expect(front.body.trim()).toBe('Below.')
    }
  })

  it('are asked for where one of them is not there', () => {
    expect(codes('')).toEqual(['file/front-matter empty'])
    expect(codes('\n \r\n')).toEqual(['file/front-matter empty'])
    expect(codes('\n---\ntitle: Quay\n---\n')).toEqual(['file/front-matter missing'])
    expect(codes('----\ntitle: Quay\n----\n')).toEqual(['file/front-matter missing'])
    for (const unseen of ['\uFEFF\uFEFF', '\u200b', ' '])
      expect(codes(`${unseen}---\ntitle: Quay\n---\n`)).toEqual(['file/front-matter unseen'])
    expect(codes('---')).toEqual(['file/front-matter open'])
    expect(codes('---\ntitle: Quay\n')).toEqual(['file/front-matter open'])
    expect(codes('---\ntitle: Quay\n---x\n')).toEqual(['file/front-matter closing'])
  })

  it('are told of where the file ends its lines in carriage returns alone or in one too many, without showing all of it', () => {
    const text = '---\rtitle: Quay\r---\rBelow.\r'
    expect(codes(text)).toEqual(['file/front-matter line-ends'])
    expect(codes(`\uFEFF${text}`)).toEqual(['file/front-matter line-ends'])
    expect(read(text).faults[0]?.place).toMatchObject({ line: 1, column: 1, length: 3, text: '---' })
    expect(codes(text.replaceAll('\r', '\r\r\n'))).toEqual(['file/front-matter line-ends'])
  })

  it('are told of where keys stand between such lines once more, and those at the top are read', () => {
    const top = '---\ntitle: Quay\n---\n'
    const again = read(`${top}Below.\n\n---\nstatus: removed\n---\n`)
    expect(again.data).toEqual({ title: 'Quay' })
    expect(again.faults.map(one => [one.details['kind'], one.place.line, one.fatal])).toEqual([['more-keys', 6, false]])
    expect(codes(`${top}---\r\nstatus: removed\r\n---\r\n`)).toEqual(['file/front-matter more-keys'])
    for (const prose of ['---\n', 'A line.\n\n---\n\nAnother: with a colon.\n\n---\n', '---\nkey: value\n'])
      expect(codes(top + prose), prose).toEqual([])
  })

  it('with nothing between them give no keys and no fault of their own', () => {
    for (const text of ['---\n---\n', '---\n\n---\n', '---\n# a comment\n---\n', '---\n~\n---\n']) {
      expect(read(text).faults).toEqual([])
      expect(read(text).data).toEqual({})
    }
  })

  it('with a list or a text between them are told of', () => {
    expect(codes('---\n- a\n---\n')).toEqual(['file/front-matter no-keys'])
    expect(codes('---\nonly words\n---\n')).toEqual(['file/front-matter no-keys'])
  })
})

describe('another language after the dashes', () => {
  it('never runs, whatever it is called', () => {
    const script = '{ title: (globalThis.ranFromFrontMatter = true) }'
    for (const name of [
      'js',
      'javascript',
      'coffee',
      'cson',
      'json',
      'toml',
      'constructor',
      '__proto__',
      'toString',
      ' js',
      'JS'
    ]) {
      expect(codes(`---${name}\n${script}\n---\n`), name).toEqual(['file/front-matter language'])
    }
    expect('ranFromFrontMatter' in globalThis).toBe(false)
  })
})

describe('the size of the keys', () => {
  /** Keys of so many bytes, the line end after the last one with them. */
  const keys = (bytes: number) => `---\na: ${'x'.repeat(bytes - '\na: \n'.length)}\n---\n`

  it('may be exactly 64 KB and not a byte more', () => {
    expect(codes(keys(MOST_BYTES))).toEqual([])
    expect(codes(keys(MOST_BYTES + 1))).toEqual(['file/too-large'])
  })

  it('counts in bytes, so that a long text in another script is not let through', () => {
    expect(codes(`---\na: ${'水'.repeat(30_000)}\n---\n`)).toEqual(['file/too-large'])
  })

  it('does not count prose', () => {
    expect(codes(`---\ntitle: Quay\n---\n${'x'.repeat(200_000)}`)).toEqual([])
  })
})

describe('hostile keys', () => {
  it('nested without end are a fault, not a crash', () => {
    for (const open of ['[', '{', '- ', 'a: {'])
      expect(read(`---\nx: ${open.repeat(20_000)}\n---\n`).faults.length).toBeGreaterThan(0)
  })

  it('that multiply by pointers are refused', () => {
    const bomb = '---\na: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nd: [*c, *c]\n---\n'
    expect(new Set(codes(bomb))).toEqual(new Set(['file/yaml alias']))
  })

  it('named like the inner parts of an object are keys like any other', () => {
    const front = read('---\n__proto__: { polluted: yes }\nconstructor: x\n---\n')
    expect(Object.keys(front.data).sort()).toEqual(['__proto__', 'constructor'])
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
  })
})

describe('values', () => {
  it('stay as they are written: dates, times, codes, yes and no', () => {
    const written = {
      date: '2025-02-30',
      time: '22:30',
      code: '0391',
      tag: '2E45678',
      version: '1.10',
      hex: '0x1F',
      exponent: '1e3',
      plus: '+5',
      long: '12345678901234567890',
      point: '.5',
      yes: 'yes',
      off: 'off'
    }
    const keys = Object.entries(written).map(([key, value]) => `${key}: ${value}\n`)
    expect(read(`---\n${keys.join('')}---\n`).data).toEqual(written)
  })

  it('are numbers only where a number prints back the same', () => {
    expect(read('---\na: 7\nb: 54.97\nc: -1.61\nd: 0\n---\n').data).toEqual({ a: 7, b: 54.97, c: -1.61, d: 0 })
  })

  it('left blank, empty or null are nothing', () => {
    expect(read('---\na:\nb: ""\nc: ~\nd: null\n---\n').data).toEqual({ a: null, b: null, c: null, d: null })
  })
})

describe('several faults of writing', () => {
  it('are told at once, one a line', () => {
    const front = read('---\ntitle: @Quay\nplace: a: b\nrevision: "2" b\n---\n')
    expect(front.faults.map(fault => fault.place.line)).toEqual([2, 3, 4])
    expect(front.sound).toBe(false)
  })
})

describe('a folder without its site file', () => {
  const told = (others: readonly string[]): unknown =>
    loadSite({ id: 'quay', files: [], shared: [], others }).faults.map(one => one.details['instead'])

  it('is told with the file that most likely is it', () => {
    expect(told(['photos/site.jpg', 'site.md.txt'])).toEqual(['site.md.txt'])
    expect(told(['Site.md'])).toEqual(['Site.md'])
    expect(told(['site.geojson', 'SITE.docx'])).toEqual(['SITE.docx'])
    expect(told(['notes.txt', 'sites.md', 'photos/site.md'])).toEqual([''])
  })
})

describe('the marks of a merge', () => {
  it('are told once, wherever they stand, and an underlined heading or a picture of arrows is none', () => {
    const file = (body: string): string => `---\ntitle: Quay\n---\n${body}`
    expect(codes(file('a\n<<<<<<< HEAD\nb\n=======\nc\n>>>>>>> office\n'))).toEqual(['file/yaml merge'])
    expect(codes(file('>>>>>>> office\n'))).toEqual(['file/yaml merge'])
    expect(codes(file('Heading\n=======\n'))).toEqual([])
    expect(codes(file('<<<<<<<<<< north\n'))).toEqual([])
  })
})

describe('nesting', () => {
  it('is read as deep as anybody writes, and refused beyond, before the parser calls itself for each level', () => {
    const nested = (open: string, close: string, deep: number): string =>
      `---\nx: ${open.repeat(deep)}1${close.repeat(deep)}\n---\n`
    expect(codes(nested('[', ']', 100))).toEqual([])
    for (const open of ['[', '{', '- ', '? ', 'a: {'])
      expect(codes(nested(open, '', 201)), open).toEqual(['file/yaml too-deep'])
  })
})
