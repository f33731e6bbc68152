import { deflateSync } from 'node:zlib'
import { pagesOf, reference } from './pdf-file.ts'
import type { PdfFile } from './pdf-file.ts'
import { unpacked } from './pdf-streams.ts'

/**
 * What stands in the contents while a document is laid out, entry by entry: between them all ten figures and the blank, so that the
 * print carries their shapes. Three wide: a longer document is printed twice instead.
 */
const PLACES = ['012', '345', '678', '9\u00a0\u00a0'] as const
const WIDTH = PLACES[0].length

/** For that many page numbers, in order. */
export function placeholders(count: number): readonly string[] {
  return Array.from({ length: count }, (_, index) => PLACES[index % PLACES.length] ?? '')
}

/**
 * Puts page numbers where the placeholders were printed, so that a document need not be laid out twice. Undefined where the file does
 * not hold them all in order, where a number is too long (none is left blank), or where the figures are not of one width: nothing is guessed. `pages`, from 1,
 * are those that hold them; all where nothing is said.
 */
export function fillPlaceholders(
  file: PdfFile,
  numbers: readonly (number | undefined)[],
  pages?: readonly number[]
): PdfFile | undefined {
  const wanted = numbers.map(number => (number === undefined ? '' : String(number)).padStart(WIDTH))
  // Fewer entries than placeholders would leave figures without a shape.
  if (numbers.length < PLACES.length || wanted.some(text => text.length > WIDTH)) return undefined
  const objects = new Map(file.objects)
  const expected = placeholders(numbers.length).map(plain)
  const filling: Filling = { expected, wanted, advances: new Map(), at: 0 }
  const fonts = new Map<number, Letters>()
  for (const content of contentStreams(file, pages)) {
    if (filling.at === wanted.length) break
    const filled = fillStream(objects.get(content) ?? '', filling, font => lettersOf(file, font, fonts))
    if (filled !== undefined) objects.set(content, filled)
  }
  return filling.at === wanted.length && [...filling.advances.values()].every(widths => widths.size === 1)
    ? { ...file, objects }
    : undefined
}

interface Filling {
  readonly expected: readonly string[]
  readonly wanted: readonly string[]
  /** Widths met between one figure and the next, by font and size. */
  readonly advances: Map<string, Set<string>>
  at: number
}

/** Fonts show both blanks by one shape, and name it by either. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

/** Which code of a font shows which letter, both ways. */
interface Letters {
  readonly letterOf: ReadonlyMap<string, string>
  readonly codeOf: ReadonlyMap<string, string>
}

function contentStreams(file: PdfFile, pages: readonly number[] | undefined): number[] {
  const all = pagesOf(file)
  const wanted = pages ? pages.map(page => all[page - 1] ?? -1) : all
  return wanted.map(page => reference(file.objects.get(page), 'Contents') ?? -1)
}

/** A text object, its font by object number, and the letters shown in it. ISO 32000-1:2008, 9.4. */
const TEXT = /BT\n\/F(\d+) ([\d.]+) Tf\n[^]*?\nET/gu
const SHOWN = /<((?:[0-9A-F]{4})+)> Tj/gu

function fillStream(object: string, filling: Filling, letters: (font: number) => Letters): string | undefined {
  const text = inflated(object)
  if (text === undefined) return undefined
  const before = filling.at
  const filled = text.replace(TEXT, (block, font: string, size: string) => {
    const { letterOf, codeOf } = letters(Number(font))
    const codes = [...block.matchAll(SHOWN)].flatMap(match => (match[1] ?? '').match(/.{4}/gu) ?? [])
    if (codes.map(code => letterOf.get(code) ?? '').join('') !== filling.expected[filling.at]) return block
    const put = [...(filling.wanted[filling.at] ?? '')].map(letter => codeOf.get(letter))
    if (put.includes(undefined)) return block
    const widths = filling.advances.get(`${font} ${size}`) ?? new Set<string>()
    for (const [, advance] of block.matchAll(/^([\d.]+) 0 Td </gmu)) widths.add(advance ?? '')
    filling.advances.set(`${font} ${size}`, widths)
    filling.at += 1
    let index = 0
    return block.replace(SHOWN, (_, shown: string) => `<${put.slice(index, (index += shown.length / 4)).join('')}> Tj`)
  })
  return filling.at === before ? undefined : deflated(filled)
}

/** From the font's table of what its codes mean. ISO 32000-1:2008, 9.10.3. */
function lettersOf(file: PdfFile, font: number, known: Map<number, Letters>): Letters {
  const there = known.get(font)
  if (there) return there
  const map = inflated(file.objects.get(reference(file.objects.get(font), 'ToUnicode') ?? -1) ?? '') ?? ''
  const pairs: (readonly [string, string])[] = []
  for (const [, chars] of map.matchAll(/beginbfchar\n([^]*?)endbfchar/gu))
    for (const [, code = '', letter = ''] of (chars ?? '').matchAll(/<([0-9A-F]{4})> <([0-9A-F]{4})>/gu))
      pairs.push([code, plain(String.fromCharCode(Number.parseInt(letter, 16)))])
  for (const [, ranges] of map.matchAll(/beginbfrange\n([^]*?)endbfrange/gu))
    for (const [, from = '', to = '', first = ''] of (ranges ?? '').matchAll(
      /<([0-9A-F]{4})> <([0-9A-F]{4})> <([0-9A-F]{4})>/gu
    ))
      for (let code = Number.parseInt(from, 16); code <= Number.parseInt(to, 16); code += 1)
        pairs.push([hex(code), String.fromCharCode(Number.parseInt(first, 16) + code - Number.parseInt(from, 16))])
  const letters = { letterOf: new Map(pairs), codeOf: new Map(pairs.map(([code, letter]) => [letter, code])) }
  known.set(font, letters)
  return letters
}

const hex = (code: number): string => code.toString(16).toUpperCase().padStart(4, '0')

const inflated = (object: string): string | undefined => unpacked(object)?.toString('latin1')

function deflated(text: string): string {
  const body = deflateSync(Buffer.from(text, 'latin1')).toString('latin1')
  return `<</Filter /FlateDecode\n/Length ${body.length}>> stream\n${body}\nendstream`
}
