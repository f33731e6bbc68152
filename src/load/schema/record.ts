import { z } from 'zod'
import { KEY_DOCS, optional } from './field.ts'
import type { KeyDoc } from './field.ts'

/** What a failed map or list tells the one who words it. The schema library carries one text; this is packed into it. */
export interface ShapeNote {
  readonly what: string
  readonly example: string
  readonly keys: readonly string[]
}

/** Anything at all, at any depth: what stands here reaches the restricted sheet and nothing else. */
const privateKeys = z.unknown()
KEY_DOCS.add(privateKeys, {
  does: 'What only the restricted sheet may show: codes, keys, private numbers. Any keys of your own.',
  example: '{ keys: "depot locker 14" }',
  json: { description: 'Shown on the restricted sheet and nowhere else. Any keys of your own.' }
})

/** The keys of each kind of record, by what one of it is called; a key in the wrong place is told where it belongs. */
export const KEYS_OF = new Map<string, readonly string[]>()

/** A map with these keys and no others, and `private:` besides. `what` names one of it in a sentence: "a valve box". */
export function record<S extends z.ZodRawShape>(what: string, doc: KeyDoc, shape: S): z.ZodObject<S, z.core.$strict> {
  const keys = [...Object.keys(shape), 'private']
  KEYS_OF.set(what, keys)
  const note = packNote({ what, example: doc.example, keys })
  const schema = z.strictObject({ ...shape, private: optional(privateKeys) }, { error: () => note })
  KEY_DOCS.add(schema, doc)
  return schema as unknown as z.ZodObject<S, z.core.$strict>
}

/** A list. An empty one is the same as none. */
export function list<S extends z.ZodType>(item: S, doc: KeyDoc): z.ZodArray<S> {
  const schema = z.array(item, { error: () => packNote({ what: 'a list', example: doc.example, keys: [] }) })
  KEY_DOCS.add(schema, doc)
  return schema
}

/** Values under keys that the writer chooses by a rule: station numbers. */
export function table<S extends z.ZodType>(key: RegExp, item: S, doc: KeyDoc): z.ZodRecord<z.ZodString, S> {
  const note = packNote({ what: doc.does, example: doc.example, keys: [] })
  const schema = z.record(z.string().regex(key, { error: note }), item, { error: () => note })
  KEY_DOCS.add(schema, doc)
  return schema
}

/** One of several shapes, told apart by their shape alone: text, a map, a list. */
export function either<A extends z.ZodType, B extends z.ZodType>(doc: KeyDoc, a: A, b: B): z.ZodUnion<readonly [A, B]> {
  const schema = z.union([a, b], { error: () => packNote({ what: doc.does, example: doc.example, keys: [] }) })
  KEY_DOCS.add(schema, doc)
  return schema
}

export function unpackNote(message: string): ShapeNote {
  try {
    return JSON.parse(message) as ShapeNote
  } catch {
    return { what: message, example: '', keys: [] }
  }
}

function packNote(note: ShapeNote): string {
  return JSON.stringify(note)
}
