import { z } from 'zod'
import type { Details } from '../faults/fault.ts'

/** What a key is for, and a value as a person writes it: read by the messages, the manual and the JSON Schema alike. */
export interface KeyDoc {
  readonly does: string
  readonly example: string
}

/** What JSON Schema says of a value; editors complete and check by it. */
export type JsonShape = Readonly<Record<string, unknown>>

/** A value that could not be taken. `value` is what to write instead, where that can be told. */
export interface Wrong {
  readonly ok: false
  readonly code: string
  readonly details: Details
  readonly value?: string
}

export type Read<T> = { readonly ok: true; readonly value: T } | Wrong

export const taken = <T>(value: T): Read<T> => ({ ok: true, value })

export function wrong(code: string, details: Details = {}, value?: string): Wrong {
  return { ok: false, code, details, ...(value === undefined ? {} : { value }) }
}

interface KeyMeta extends KeyDoc {
  readonly json?: JsonShape
}

/** What is known of each schema, by the schema itself. */
export const KEY_DOCS = z.registry<KeyMeta>()

/** One value. `read` sees text or a number as written (a number only where it prints back as written) or a boolean. */
export function field<T>(
  doc: KeyDoc,
  json: JsonShape,
  read: (value: string | number | boolean) => Read<T>
): z.ZodType<T> {
  const schema = z.unknown().transform((value, context): T => {
    const result = isWritten(value) ? (tooLong(value, doc) ?? read(value)) : wrongShape(value, doc)
    if (result.ok) return result.value
    context.issues.push({ code: 'custom', params: { wrong: result }, input: value })
    return z.NEVER
  })
  KEY_DOCS.add(schema, { ...doc, json })
  return schema as unknown as z.ZodType<T>
}

/** Ten times what the longest value of a large site takes. What is longer was pasted by mistake, and reading it could take minutes. */
export const MOST_SIGNS = 8000

function tooLong(value: string | number | boolean, { example }: KeyDoc): Wrong | undefined {
  const { length } = String(value)
  if (length <= MOST_SIGNS) return undefined
  return wrong('file/out-of-range', { range: `has ${length} characters; ${MOST_SIGNS} are the most`, example })
}

/** A key that may be left out, or left blank until somebody knows. */
export function optional<S extends z.ZodType>(schema: S): z.ZodOptional<z.ZodNullable<S>> {
  return z.optional(z.nullable(schema))
}

/** The fault that a failed reading carries through the schema library. */
export function wrongOf(issue: z.core.$ZodIssue): Wrong | undefined {
  return issue.code === 'custom' ? (issue.params?.['wrong'] as Wrong | undefined) : undefined
}

function isWritten(value: unknown): value is string | number | boolean {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
}

function wrongShape(value: unknown, doc: KeyDoc): Wrong {
  if (value === undefined || value === null) return wrong('file/missing-key', { example: doc.example })
  const expected = 'one value'
  const got = Array.isArray(value) ? 'a list' : 'keys with values'
  const joined = Array.isArray(value) && value.length > 0 && value.every(isWritten) ? value.join(', ') : undefined
  return wrong('file/wrong-shape', { expected, got, example: doc.example }, joined)
}
