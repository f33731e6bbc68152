import { VALVE_ANSWERS } from '../model/site.ts'
import { parseQuantity } from '../units/quantity.ts'
import type { Dimension } from '../units/dimension.ts'
import { stationName } from './cross/records.ts'
import type { VisitData } from './write-visit.ts'

/** What a person may say of a visit on the command line; each list in the order in which it was given. */
export interface VisitFlags {
  readonly on: string
  readonly by?: string
  readonly reason?: string
  readonly arrived?: string
  readonly left?: string
  readonly minutes?: string
  readonly owner?: string
  readonly drawingChange?: boolean
  readonly box: readonly string[]
  readonly battery: readonly string[]
  readonly volts: readonly string[]
  readonly reading: readonly string[]
  readonly program: readonly string[]
  readonly test: readonly string[]
  readonly task: readonly string[]
  readonly found: readonly string[]
  readonly done: readonly string[]
  readonly open: readonly string[]
  readonly repaired: readonly string[]
  readonly part: readonly string[]
  readonly photo: readonly string[]
}

/** What the flags lean on: which set is in a controller now, and what the site's supplies are called. */
export interface FlagGround {
  readonly setOf: (controller: string) => { readonly kind: string; readonly count: number } | undefined
  readonly supplies: readonly string[]
}

/** A flag that cannot be read, and how to write it. */
export interface FlagTrouble {
  readonly flag: string
  readonly written: string
  readonly like: string
}

export type ReadFlags =
  { readonly ok: true; readonly data: VisitData } | { readonly ok: false; readonly troubles: readonly FlagTrouble[] }

/** The flags as the keys of a visit. Amounts stay as they were written; the reader of visits judges them. */
export function visitOfFlags(flags: VisitFlags, ground: FlagGround): ReadFlags {
  const troubles: FlagTrouble[] = []
  const each = (flag: keyof VisitFlags & string, like: string, read: (written: string) => object | undefined) =>
    (flags[flag] as readonly string[]).flatMap(written => {
      const value = read(written)
      if (!value) troubles.push({ flag, written, like })
      return value ? [value] : []
    })
  const batteries = [
    ...each('battery', 'K1="9 V alkaline"', written => changedSet(written, flags.on, ground)),
    ...each('volts', 'K1="rest 9.4 V, under-load 8.9 V"', measuredSet)
  ]
  const readings = each('reading', 'K1/1=4.4ohm', written => reading(written, ground))
  const programs = each('program', 'K1="found A at 60 %, left A at 100 %"', program)
  const tests = each('test', 'S1=passed', test)
  const parts = each('part', '"gel-filled connector=2"', part)
  if (troubles.length > 0) return { ok: false, troubles }
  const { on, by, reason, box, arrived, left, minutes, task, found, done, open, owner, repaired, photo } = flags
  const all = { on, by, reason, boxes: box, arrived, left, minutes, batteries, readings, programs, tests, tasks: task }
  const rest = { found, done, open, owner, repaired, parts, photos: photo }
  const drawing = flags.drawingChange ? { 'drawing-change': 'yes' } : {}
  return { ok: true, data: stated({ ...all, ...rest, ...drawing }) }
}

function stated(data: Readonly<Record<string, unknown>>): VisitData {
  const isGiven = (value: unknown) => value !== undefined && !(Array.isArray(value) && value.length === 0)
  return Object.fromEntries(Object.entries(data).filter(([, value]) => isGiven(value)))
}

/** "K1=9 V alkaline, rest 9.4 V" is K1, ["9 V alkaline", "rest 9.4 V"]; a comma between digits is not a break. */
function named(written: string): { readonly name: string; readonly parts: readonly string[] } | undefined {
  const [, name = '', text = ''] = /^([^=]*)(?:=(.*))?$/su.exec(written) ?? []
  const parts = text.split(/,(?!\d)/u).map(one => one.trim())
  return name.trim() === '' ? undefined : { name: name.trim(), parts: parts.filter(one => one !== '') }
}

const VOLTS = /^(rest|under[- ]load)\s+(.+)$/iu

function volts(parts: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    parts.flatMap(part => {
      const [, word, amount = ''] = VOLTS.exec(part) ?? []
      return word === undefined ? [] : [[word.toLowerCase().replace(' ', '-'), amount]]
    })
  )
}

/** The set as it is said, or the kind that was in the controller before where only its name is given. */
function changedSet(written: string, on: string, { setOf }: FlagGround): object | undefined {
  const said = named(written)
  if (!said) return undefined
  const [whole, ...more] = said.parts.filter(part => !VOLTS.test(part))
  // What is not understood is told of, not left out of the record.
  if (more.length > 0) return undefined
  const [, count, kind] = /^(?:(\d+)\s*[x×]\s*)?(.+)$/u.exec(whole ?? '') ?? []
  const before = setOf(said.name)
  const now = kind === undefined ? before : { kind, count: Number(count ?? before?.count ?? 1) }
  return { controller: said.name, fitted: on, ...now, ...volts(said.parts) }
}

function measuredSet(written: string): object | undefined {
  const said = named(written)
  const measured = volts(said?.parts ?? [])
  const isAll = Object.keys(measured).length === said?.parts.length
  return said && isAll && said.parts.length > 0 ? { controller: said.name, ...measured } : undefined
}

/** Which reading an amount is, where nothing says so: ohms are those of the loop, as a meter shows them at the controller. */
const BY_KIND: readonly (readonly [Dimension, string])[] = [
  ['resistance', 'loop'],
  ['flow', 'flow'],
  ['pressure', 'pressure'],
  ['volume', 'meter'],
  ['temperature', 'temperature']
]

function reading(written: string, { supplies }: FlagGround): object | undefined {
  const said = named(written)
  if (!said || said.parts.length === 0) return undefined
  const values = said.parts.map(oneReading)
  if (values.includes(undefined)) return undefined
  const place = supplies.includes(said.name) ? { supply: said.name } : { station: stationName(said.name) }
  return { ...place, ...Object.fromEntries(values as [string, string][]) }
}

function oneReading(text: string): [string, string] | undefined {
  const [, word, amount = ''] = /^([a-z-]+)\s+(\S.*)$/iu.exec(text) ?? []
  if (word !== undefined && /\d/u.test(amount)) return [word.toLowerCase(), amount]
  if (/^(opened|closed)$/iu.test(text)) return [text.toLowerCase(), 'yes']
  if (/^not (opened|closed)$/iu.test(text)) return [text.slice(4).toLowerCase(), 'no']
  if ((VALVE_ANSWERS as readonly string[]).includes(text)) return ['answers', text]
  const kind = BY_KIND.find(([dimension]) => parseQuantity(text, dimension).ok)
  return kind && [kind[1], text]
}

function program(written: string): object | undefined {
  const said = named(written)
  const pairs = said?.parts.map(part => /^(clock|found|left)\s+(.+)$/iu.exec(part)) ?? []
  if (!said || pairs.length === 0 || pairs.includes(null)) return undefined
  return { controller: said.name, ...Object.fromEntries(pairs.map(pair => [pair?.[1]?.toLowerCase(), pair?.[2]])) }
}

function test(written: string): object | undefined {
  const said = named(written)
  const [result = '', by = '', ...more] = said?.parts ?? []
  if (!said || more.length > 0 || !/^(?:passed|failed)$/iu.test(result)) return undefined
  const tester = by.replace(/^(?:tester|by)\s+/iu, '')
  return { supply: said.name, passed: /^p/iu.test(result) ? 'yes' : 'no', ...(tester ? { tester } : {}) }
}

function part(written: string): object | undefined {
  const [, item = '', count] = /^(.*?)(?:=(\d+))?$/u.exec(written) ?? []
  return item.trim() === '' ? undefined : { item: item.trim(), count: Number(count ?? 1) }
}
