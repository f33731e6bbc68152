import type { z } from 'zod'
import { KEY_DOCS } from './schema/field.ts'

/** A key, as the manual lists it: the path that leads to it, what it is for, an example, and whether it must be there. */
export interface KeyRow {
  /** "stations[].valve.coil" */
  readonly path: string
  readonly does: string
  readonly example: string
  readonly required: boolean
}

/** Every key of a schema in the order it is written, lists marked by [], `private` left out since it may stand anywhere. */
export function keyRows(schema: z.ZodType, path = ''): KeyRow[] {
  const { inner } = unwrapped(schema)
  const { def } = inner._zod as unknown as { readonly def: Definition }
  switch (def.type) {
    case 'object':
      return Object.entries(def.shape ?? {}).flatMap(([key, value]) =>
        rowsOfKey(value, path === '' ? key : `${path}.${key}`, key)
      )
    case 'array':
      return def.element ? keyRows(def.element, `${path}[]`) : []
    case 'union':
      return firstOfEach(def.options ?? [], path)
    default:
      return []
  }
}

interface Definition {
  readonly type: string
  readonly shape?: Readonly<Record<string, z.ZodType>>
  readonly element?: z.ZodType
  readonly options?: readonly z.ZodType[]
  readonly innerType?: z.ZodType
}

function rowsOfKey(schema: z.ZodType, path: string, key: string): KeyRow[] {
  if (key === 'private') return []
  const { inner, required } = unwrapped(schema)
  const doc = KEY_DOCS.get(inner)
  const row = { path, does: doc?.does ?? '', example: doc?.example ?? '', required }
  return [row, ...keyRows(inner, path)]
}

function unwrapped(schema: z.ZodType): { readonly inner: z.ZodType; readonly required: boolean } {
  let inner = schema
  let required = true
  for (;;) {
    const { def } = inner._zod as unknown as { readonly def: Definition }
    if ((def.type !== 'optional' && def.type !== 'nullable') || !def.innerType) return { inner, required }
    required = false
    inner = def.innerType
  }
}

/** Where a key may be one record or a list of them, its keys are listed once, as of one. */
function firstOfEach(options: readonly z.ZodType[], path: string): KeyRow[] {
  const rows = new Map<string, KeyRow>()
  for (const row of options.flatMap(one => keyRows(one, path))) {
    const once = row.path.replace(`${path}[]`, path)
    if (!rows.has(once)) rows.set(once, { ...row, path: once })
  }
  return [...rows.values()]
}
