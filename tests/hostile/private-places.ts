import type { Document } from 'yaml'
import { isMap, isSeq, parse } from 'yaml'
import type { z } from 'zod'
import { KEY_DOCS } from '../../src/load/schema/field.ts'

/** A step into a record: a key, or into a list. */
const INTO = '[]'

/** A record of a schema that takes `private:`, by the steps that lead to it, with an example of one as the manual shows it. */
export interface PrivatePlace {
  readonly path: string
  readonly steps: readonly string[]
  readonly example: string
}

interface Definition {
  readonly type: string
  readonly shape?: Readonly<Record<string, z.ZodType>>
  readonly element?: z.ZodType
  readonly options?: readonly z.ZodType[]
  readonly innerType?: z.ZodType
  readonly valueType?: z.ZodType
}

const definition = (schema: z.ZodType): Definition => (schema._zod as unknown as { readonly def: Definition }).def

function unwrapped(schema: z.ZodType): z.ZodType {
  const { type, innerType } = definition(schema)
  return (type === 'optional' || type === 'nullable') && innerType ? unwrapped(innerType) : schema
}

/** Every record that takes `private:`, drawn from the schema itself, so that a new one is among them. */
export function privatePlaces(schema: z.ZodType): PrivatePlace[] {
  const all = placesBelow(schema, [])
  return all.filter(({ path }, index) => all.findIndex(one => one.path === path) === index)
}

function placesBelow(wrapped: z.ZodType, steps: readonly string[]): PrivatePlace[] {
  const schema = unwrapped(wrapped)
  const { type, shape = {}, element, options = [], valueType } = definition(schema)
  const own = { path: steps.join('.'), steps, example: KEY_DOCS.get(schema)?.example ?? '' }
  if (type === 'object')
    return [
      ...('private' in shape ? [own] : []),
      ...Object.entries(shape).flatMap(([key, value]) => (key === 'private' ? [] : placesBelow(value, [...steps, key])))
    ]
  if (type === 'array' && element) return placesBelow(element, [...steps, INTO])
  if (type === 'record' && valueType && placesBelow(valueType, []).length > 0)
    throw new Error(`${own.path} is a table of records, which are not looked for.`)
  return options.flatMap(option => placesBelow(option, steps))
}

/** Keys of which the manual says that they are private by themselves: "Private unless `public: yes`." */
export function privateKeys(wrapped: z.ZodType, path = ''): string[] {
  const schema = unwrapped(wrapped)
  const { shape = {}, element, options = [] } = definition(schema)
  const own = KEY_DOCS.get(schema)?.does.startsWith('Private') ? [path] : []
  const below = [
    ...Object.entries(shape).flatMap(([key, value]) =>
      key === 'private' ? [] : privateKeys(value, path === '' ? key : `${path}.${key}`)
    ),
    ...(element ? privateKeys(element, `${path}${INTO}`) : []),
    ...options.flatMap(option => privateKeys(option, path))
  ]
  return [...new Set([...own, ...below])]
}

type Path = readonly (string | number)[]

/** Where such records stand in a file. */
export function allAt(document: Document, steps: readonly string[], at: Path = []): Path[] {
  const [step, ...rest] = steps
  const here = at.length === 0 ? document.contents : document.getIn(at, true)
  if (step === undefined) return isMap(here) ? [at] : []
  if (step !== INTO) return isMap(here) && here.has(step) ? allAt(document, rest, [...at, step]) : []
  return isSeq(here) ? [...here.items.keys()].flatMap(index => allAt(document, rest, [...at, index])) : []
}

/** Puts the manual's example where a file has none of such records. */
export function fill(document: Document, { path, steps, example }: PrivatePlace): void {
  if (allAt(document, steps).length > 0) return
  const isList = steps.at(-1) === INTO
  const key = steps.at(isList ? -2 : -1)
  const parents = allAt(document, steps.slice(0, isList ? -2 : -1))
  if (key === undefined || key === INTO) throw new Error(`${path} has no key.`)
  // Where each has one of another shape, the last one gives way: what stands in the first was filled before.
  const parent = parents.find(at => !document.hasIn([...at, key])) ?? parents.at(-1)
  if (!parent) throw new Error(`The file has nothing that ${path} could stand in.`)
  const value: unknown = parse(example)
  document.setIn([...parent, key], document.createNode(isList ? [value] : value))
}
