import type { z } from 'zod'
import type { Fault } from '../loaded.ts'
import type { FrontMatter } from '../front-matter.ts'
import { placeOf, writtenAt } from '../place.ts'
import { unpackNote } from '../schema/record.ts'
import { corrected } from './corrected.ts'
import { fatalFault } from './fault.ts'
import type { Details } from './fault.ts'
import { entryOf, fragment, keyOf, under } from './fragment.ts'
import { subjectOf, valueAt } from './subject.ts'

/** A map or a list where something else stands, or nothing at all. */
export function shapeFault(front: FrontMatter, path: readonly (string | number)[], issue: z.core.$ZodIssue): Fault {
  const { what, example } = unpackNote(issue.message)
  const value = valueAt(front.data, path)
  const subject = subjectOf(front.data, path)
  const base = { key: keyOf(path), what, example, under: under(path), written: fragment(front, path) }
  if (value === undefined || value === null) {
    return fatalFault('file/missing-key', subject, placeOf(front, path), { ...base, ...entryOf(path) })
  }
  const expected = issue.code === 'invalid_type' && issue.expected === 'array' ? 'a list' : 'keys with values'
  const written = writtenAt(front, path) ?? ''
  const entries = written.includes(',') ? written : written.replaceAll(/\s*;\s*/gu, ', ')
  const listable = expected === 'a list' && written !== '' && !written.includes('\n')
  const details: Details = {
    ...base,
    expected,
    got: shapeOf(value),
    ...(listable ? { corrected: corrected(front, path, `[${entries}]`) } : {})
  }
  return fatalFault('file/wrong-shape', subject, placeOf(front, path), details)
}

function shapeOf(value: unknown): string {
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' ? 'keys with values' : 'one value'
}
