import type { Dice } from './dice.ts'
import { fileOf } from './folder.ts'
import type { Entry, Image } from './folder.ts'
import type { Seed } from './seeds.ts'
import { replaced, spotsOf } from './spots.ts'
import type { Spot } from './spots.ts'
import { BITS, CONTROLS, DATES, ESCAPED, KEYS, LONG, NAMES, NUMBERS, OTHER_TYPES, PROSE, UNITS } from './words.ts'

type Change = (image: Map<string, Entry>, dice: Dice, seed: Seed) => void

/** A kind of harm, by name: what is done to a valid folder. */
export const MUTATIONS: Readonly<Record<string, Change>> = {
  types: onSpot('scalar', dice => dice.pick(OTHER_TYPES)),
  numbers: onNumber(dice => dice.pick(NUMBERS)),
  units: onText((text, dice) => swapUnit(text, dice)),
  dates: onSpot('scalar', dice => dice.pick(DATES)),
  keys: onSpot('key', dice => dice.pick(KEYS)),
  names: onSpot('scalar', dice => dice.pick(NAMES)),
  long: onSpot('scalar', dice => dice.pick(LONG)()),
  structure: onText(restructured),
  nesting: onSpot('scalar', nested),
  aliases: onText(withAliases),
  letters: onText(scratched),
  encodings: onBytes(encoded),
  'line ends': onText(otherLineEnds),
  'control signs': onText(withControls),
  prose: onText((text, dice) => `${text}\n\n## More\n\n${dice.pick(PROSE)()}\n`),
  weather: onFile(/\.csv$/u, (text, dice) => brokenTable(text, dice), /tags\.csv$/u),
  register: onFile(/tags\.csv$/u, (text, dice) => brokenTable(text, dice)),
  folders: brokenFolders,
  'file names': oddFileNames,
  attachments: brokenAttachments,
  visits: onLesser(/\/visits\/.*\.md$/u),
  sheets: onLesser(/^_shared\/.*\.md$/u)
}

export const KINDS = Object.keys(MUTATIONS)

/** The folder of a case: a seed with one to three harms, and the kind of the first. */
export function harmed(seed: Seed, kind: string, dice: Dice): Image {
  const image = new Map(seed.image)
  MUTATIONS[kind]?.(image, dice, seed)
  while (dice.chance(0.25)) MUTATIONS[dice.pick(KINDS)]?.(image, dice, seed)
  return image
}

const isText = (path: string): boolean => /\.md$/u.test(path)

function onBytes(change: (bytes: Buffer, dice: Dice) => Buffer): Change {
  return (image, dice, { site }) => {
    const texts = [...image.keys()].filter(path => isText(path) || path === 'tags.csv')
    const path = dice.chance(0.7) ? `${site}/site.md` : dice.pick(texts.length > 0 ? texts : [`${site}/site.md`])
    const entry = image.get(path)
    if (entry?.kind === 'file') image.set(path, fileOf(change(entry.bytes, dice)))
  }
}

/** Harm of the plain kinds to a file beside the site's own. */
function onLesser(pattern: RegExp): Change {
  return (image, dice, seed) => {
    const paths = [...image.keys()].filter(path => pattern.test(path))
    if (paths.length === 0) return onText(scratched)(image, dice, seed)
    const path = dice.pick(paths)
    const entry = image.get(path)
    if (entry?.kind !== 'file') return
    const alone = new Map<string, Entry>([['x/site.md', entry]])
    MUTATIONS[dice.pick(PLAIN)]?.(alone, dice, { ...seed, site: 'x' })
    image.set(path, alone.get('x/site.md') ?? entry)
  }
}

/** Kinds that change the text of one file. */
const PLAIN = [
  ...['types', 'numbers', 'units', 'dates', 'keys', 'names', 'long', 'structure', 'nesting', 'aliases', 'letters'],
  ...['encodings', 'line ends', 'control signs', 'prose']
]

function onText(change: (text: string, dice: Dice) => string): Change {
  return onBytes((bytes, dice) => Buffer.from(change(bytes.toString('utf8'), dice), 'utf8'))
}

function onFile(pattern: RegExp, change: (text: string, dice: Dice) => string, but = /$^/u): Change {
  return (image, dice, seed) => {
    const paths = [...image.keys()].filter(path => pattern.test(path) && !but.test(path))
    if (paths.length === 0) return onText(scratched)(image, dice, seed)
    const path = dice.pick(paths)
    const entry = image.get(path)
    if (entry?.kind === 'file') image.set(path, fileOf(change(entry.bytes.toString('utf8'), dice)))
  }
}

function onSpot(kind: Spot['kind'], make: (dice: Dice) => string): Change {
  return onText((text, dice) => {
    const spots = spotsOf(text).filter(spot => spot.kind === kind)
    return spots.length === 0 ? scratched(text, dice) : replaced(text, dice.pick(spots), make(dice))
  })
}

/** A number within a value: "38 L/min" becomes "1e308 L/min". */
function onNumber(make: (dice: Dice) => string): Change {
  return onText((text, dice) => {
    const found = [...text.matchAll(/(?<![\w.])\d+(?:\.\d+)?/gu)]
    if (found.length === 0) return text
    const { index, 0: number } = dice.pick(found)
    return replaced(text, { start: index, end: index + number.length }, make(dice))
  })
}

function swapUnit(text: string, dice: Dice): string {
  const found = [...text.matchAll(/(?<=\d) ?(?:[a-zA-ZµΩ°%²³]+(?:\/[a-z]+)?)/gu)]
  if (found.length === 0) return text
  const { index, 0: unit } = dice.pick(found)
  return replaced(
    text,
    { start: index, end: index + unit.length },
    `${dice.pick([' ', '', '  ', '\u00a0'])}${dice.pick(UNITS)}`
  )
}

function restructured(text: string, dice: Dice): string {
  const spots = spotsOf(text)
  if (spots.length === 0) return scratched(text, dice)
  const [one, other] = [dice.pick(spots), dice.pick(spots)]
  const part = text.slice(other.start, other.end)
  const lines = text.split('\n')
  const line = dice.below(lines.length)
  return dice.pick([
    () => replaced(text, one, ''),
    () => replaced(text, one, part.includes('\n') ? '{ }' : part),
    () => lines.toSpliced(line, 1).join('\n'),
    () => lines.toSpliced(line, dice.below(12)).join('\n'),
    () => lines.toSpliced(line, 0, lines[line] ?? '').join('\n'),
    () => lines.toSpliced(dice.below(lines.length), 0, ...lines.slice(line, line + dice.below(20))).join('\n'),
    () => manyStations(text, dice)
  ])()
}

/** Far more of a thing than anybody has. */
function manyStations(text: string, dice: Dice): string {
  const count = dice.pick([2, 60, 400])
  const things = Array.from({ length: count }, (_, index) => `{ id: K1/${index + 1}, zone: Z${index} }`).join(', ')
  return text.replace(/^stations:/mu, `stations: [${things}]\nstations:`)
}

function nested(dice: Dice): string {
  const depth = dice.pick([3, 39, 41, 200, 2000, 9000])
  const [open, close] = dice.pick([
    ['[', ']'],
    ['{ a: ', ' }'],
    ['[[', ']'],
    ['{', '}'],
    ['[{ x: ', '}]']
  ])
  return open.repeat(depth) + (dice.chance(0.8) ? close.repeat(depth) : '')
}

function withAliases(text: string, dice: Dice): string {
  const bombs = [
    'a: &a [x, x, x, x, x, x, x, x, x]\nb: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]\nc: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]\nd: [*c, *c, *c, *c, *c, *c, *c, *c, *c]',
    'a: &a { b: *a }',
    'a: &a [*a]',
    '<<: *missing',
    'x: &x 1\ny: *x\n<<: { title: Other }',
    Array.from({ length: 900 }, (_, i) => `a${i}: &a${i} [${i > 0 ? `*a${i - 1}, *a${i - 1}` : '1'}]`).join('\n'),
    '? *a\n: 1',
    '&a &b title: two anchors',
    `z: [${'*q, '.repeat(3000)}]`
  ]
  return text.replace(/^---\n/u, `---\n${dice.pick(bombs)}\n`)
}

function scratched(text: string, dice: Dice): string {
  const at = dice.below(text.length + 1)
  const many = dice.below(60)
  const to = dice.below(text.length + 1)
  return dice.pick([
    () => text.slice(0, at) + dice.pick(BITS) + text.slice(at),
    () => text.slice(0, at) + text.slice(at + many),
    () => text.slice(0, to) + text.slice(at, at + many) + text.slice(to),
    () => text.slice(0, at),
    () => text.slice(0, at) + dice.pick(BITS).repeat(1 + dice.below(400)) + text.slice(at),
    () => ''
  ])()
}

function encoded(bytes: Buffer, dice: Dice): Buffer {
  const text = bytes.toString('utf8')
  const at = dice.below(bytes.length + 1)
  const put = (...extra: number[]): Buffer =>
    Buffer.concat([bytes.subarray(0, at), Buffer.from(extra), bytes.subarray(at)])
  return dice.pick([
    () => Buffer.from(`\ufeff${text}`, 'utf16le'),
    () => Buffer.from(text, 'utf16le'),
    () => Buffer.from(`\ufeff${text}`, 'utf16le').swap16(),
    () => Buffer.from(text.replaceAll('m²', 'm\u00b2'), 'latin1'),
    () => Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), bytes]),
    () => Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf, 0xef, 0xbb, 0xbf]), bytes]),
    () => put(0xef, 0xbb, 0xbf),
    () => put(0xff),
    () => put(0xc0, 0xaf),
    () => put(0xed, 0xa0, 0x80),
    () => put(0xf4, 0x90, 0x80, 0x80),
    () => put(0),
    () => put(0xe2, 0x82),
    () => Buffer.concat([bytes, Buffer.from([0xe2])]),
    () => bytes.subarray(0, at),
    () => Buffer.alloc(dice.below(4000)),
    () => Buffer.from(Array.from({ length: dice.below(600) }, () => dice.below(256))),
    () => Buffer.from([0x1f, 0x8b, 8, 0, 0, 0, 0, 0]),
    () => Buffer.concat([Buffer.from('%PDF-1.7\n'), bytes])
  ])()
}

function otherLineEnds(text: string, dice: Dice): string {
  return dice.pick([
    () => text.replaceAll('\n', '\r\n'),
    () => text.replaceAll('\n', '\r'),
    () => text.replaceAll('\n', '\r\r\n'),
    () => text.replace(/\n/gu, () => dice.pick(['\n', '\r\n', '\r'])),
    () => `\ufeff${text.replaceAll('\n', '\r\n')}`,
    () => text.replaceAll('\n', '\u2028'),
    () => text.replaceAll('\n', '\u0085'),
    () => text.replaceAll('\n', '\n\n\n'),
    () => text.trimEnd(),
    () => text.replaceAll('\n', ' \t\n')
  ])()
}

function withControls(text: string, dice: Dice): string {
  const spots = spotsOf(text).filter(spot => spot.kind !== 'collection')
  const at = dice.below(text.length + 1)
  const sign = dice.pick(CONTROLS)
  if (spots.length === 0 || dice.chance(0.3)) return text.slice(0, at) + sign + text.slice(at)
  const spot = dice.pick(spots)
  const bare = text.slice(spot.start, spot.end).replace(/^["']|["']$/gu, '')
  if (dice.chance(0.5)) return replaced(text, spot, `"${bare.replaceAll('"', '')}${dice.pick(ESCAPED)}"`)
  return replaced(text, spot, dice.chance(0.5) ? `"${sign}${bare.replaceAll('"', '')}${sign}"` : `${bare}${sign}`)
}

function brokenTable(text: string, dice: Dice): string {
  const rows = text.split('\n')
  const row = dice.below(rows.length)
  const cells = (rows[row] ?? '').split(',')
  const cell = dice.below(cells.length)
  const put = (value: string): string => rows.with(row, cells.with(cell, value).join(',')).join('\n')
  return dice.pick([
    () => put(dice.pick(NUMBERS)),
    () => put(dice.pick(DATES)),
    () => put(`"${dice.pick(CONTROLS)}"`),
    () => put(dice.pick(['"', '""', '"a', 'a"b', '=1+1', "'", 'NaN', 'null', '-', ' ', dice.pick(NAMES)])),
    () => put('x'.repeat(100_000)),
    () => rows.toSpliced(row, 1).join('\n'),
    () => rows.toSpliced(row, 0, rows[row] ?? '').join('\n'),
    () => rows.map(one => one.replaceAll(',', dice.pick([';', '\t', '|', ',,']))).join('\n'),
    () => text.replaceAll('\n', dice.pick(['\r', '\r\n', '\n\n'])),
    () => text.slice(0, dice.below(text.length + 1)),
    () => rows.toSpliced(0, 1).join('\n'),
    () => text.replace(/^[^\n]*/u, head => head.split(',').reverse().join(',')),
    () => `${text}\n${(rows.at(-2) ?? 'a,b').concat('\n').repeat(3000)}`,
    () => '',
    () => '\n\n\n',
    () => ','.repeat(5000),
    () => '"'.repeat(5001),
    () => scratched(text, dice)
  ])()
}

function brokenFolders(image: Map<string, Entry>, dice: Dice, { site }: Seed): void {
  const files = [...image.keys()]
  const any = dice.pick(files)
  const makeFolder = (path: string): void => {
    image.delete(path)
    image.set(`${path}/inside.txt`, fileOf('a folder'))
  }
  const link = (path: string, to: string): void => void image.set(path, { kind: 'link', to })
  const lock = (path: string): void => {
    const entry = image.get(path)
    if (entry?.kind === 'file') image.set(path, { ...entry, kind: 'locked' })
  }
  const asFile = (folder: string): void => {
    for (const path of files) if (path.startsWith(`${folder}/`)) image.delete(path)
    image.set(folder, fileOf('a file'))
  }
  dice.pick([
    () => makeFolder(`${site}/site.md`),
    () => makeFolder('tags.csv'),
    () => makeFolder(any),
    () => makeFolder(`${site}/visits/2026-01-01-folder.md`),
    () => makeFolder(`${site}/weather.csv`),
    () => asFile(`${site}/visits`),
    () => asFile(`${site}/photos`),
    () => asFile('_shared'),
    () => asFile(site),
    () => image.set('another', { kind: 'folder' }),
    () => image.set('another/site.md/site.md', fileOf('x')),
    () => image.delete(`${site}/site.md`),
    () => image.delete(any),
    () => link(`${site}/loop`, '.'),
    () => link(`${site}/visits/loop.md`, 'loop.md'),
    () => (image.delete(`${site}/site.md`), link(`${site}/site.md`, 'site.md')),
    () => (image.delete(`${site}/site.md`), link(`${site}/site.md`, '/nowhere/at/all')),
    () => (image.delete(`${site}/site.md`), link(`${site}/site.md`, '/dev/null')),
    () => (image.delete(`${site}/site.md`), link(`${site}/site.md`, '.')),
    () => (image.delete('tags.csv'), link('tags.csv', 'tags.csv')),
    () => link('ring', '..'),
    () => link('ring', 'ring'),
    () => link('_shared/ring', '../_shared'),
    () => link(`${site}/visits/2026-01-01-zero.md`, '/dev/null'),
    () => lock(any),
    () => lock(`${site}/site.md`),
    () => lock('tags.csv'),
    () => lock(dice.pick(files.filter(isText).concat(any)))
  ])()
}

/** Names that a file system takes: a slash and a zero byte cannot be in one. */
const FILE_NAMES = NAMES.map(name => name.replace(/^"|"$/gu, '').replace(/\\[tru](?:0000|202E)?/gu, '\u202e'))
  .map(name => name.replaceAll('/', '\u2044').replaceAll('\0', '').slice(0, 60))
  .filter(name => name !== '' && name !== '.' && name !== '..')

function oddFileNames(image: Map<string, Entry>, dice: Dice, { site }: Seed): void {
  const name = dice.pick([...FILE_NAMES, '\n', 'a\nb', '\u001b[31m', ' ', 'site.md', 'visits', '_shared', 'tags.csv'])
  const move = (from: string, to: string): void => {
    for (const [path, entry] of [...image]) {
      if (path !== from && !path.startsWith(`${from}/`)) continue
      image.delete(path)
      image.set(to + path.slice(from.length), entry)
    }
  }
  dice.pick([
    () => move(site, name === '_shared' || name === 'tags.csv' ? 'x' : name),
    () => move(`${site}/visits`, `${site}/${name}`),
    () => image.set(`${site}/visits/${name}.md`, fileOf('---\non: 2026-04-01\n---\n')),
    () => image.set(`${site}/visits/${name}.md`, fileOf('nothing')),
    () => image.set(`_shared/${name}.md`, fileOf('---\ntitle: x\n---\n')),
    () => image.set(`${site}/photos/${name}`, fileOf('')),
    () => move(`${site}/site.md`, `${site}/SITE.md`),
    () => move(`${site}/site.md`, `${site}/site.md `),
    () => move('_shared/sheets', `_shared/${name}`)
  ])()
}

function brokenAttachments(image: Map<string, Entry>, dice: Dice, { site }: Seed): void {
  const bytes = dice.pick([
    Buffer.alloc(0),
    Buffer.from('%PDF-1.4'),
    Buffer.from('%PDF-1.7\n1 0 obj\n<< /Type /Catalog /Pages 1 0 R >>\nendobj\ntrailer << /Root 1 0 R >>\n%%EOF'),
    Buffer.from(
      '%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj 2 0 obj<</Type/Pages/Kids[2 0 R]/Count 1>>endobj trailer<</Root 1 0 R>>'
    ),
    Buffer.from('GIF89a'),
    Buffer.from([0xff, 0xd8, 0xff, 0xd9]),
    Buffer.from([0x89, 0x50, 0x4e, 0x47]),
    Buffer.from('<svg onload="alert(1)"/>'),
    Buffer.from(Array.from({ length: 500 }, () => dice.below(256)))
  ])
  const name = dice.pick(['a.pdf', 'a.jpg', 'deep/a.pdf', 'a b.pdf', 'ä.pdf', 'a.PDF', 'a%2e.pdf', '#a.pdf', 'a?b.pdf'])
  const written = dice.chance(0.2) ? dice.pick(NAMES) : JSON.stringify(name)
  const key = dice.pick([
    `record-drawings: [{ title: As built, file: ${written} }]`,
    `tests: [{ kind: pressure, on: 2026-03-02, file: ${written} }]`,
    `training: [{ on: 2026-03-02, file: ${written} }]`,
    `sign-offs: [{ kind: substantial completion, on: 2026-03-02, file: ${written} }]`,
    `photographs: [{ file: ${written} }]`
  ])
  if (dice.chance(0.8)) image.set(`${site}/${name}`, fileOf(bytes))
  const path = `${site}/site.md`
  const entry = image.get(path)
  if (entry?.kind !== 'file') return
  const text = entry.bytes.toString('utf8')
  image.set(path, fileOf(text.replace(/^---\r?\n/u, `---\ncloseout: { ${key} }\n`)))
}
