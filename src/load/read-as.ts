import type { z } from 'zod'
import type { Fault } from './loaded.ts'
import type { FrontMatter } from './front-matter.ts'
import { issueFaults } from './faults/issues.ts'

/** What a file says by a schema, or undefined with the faults that tell why not. The faults of its writing stand first. */
export interface ReadFile<T> {
  readonly value: T | undefined
  readonly faults: readonly Fault[]
}

export function readAs<S extends z.ZodType>(schema: S, front: FrontMatter): ReadFile<z.output<S>> {
  if (!front.sound) return { value: undefined, faults: front.faults }
  const result = schema.safeParse(front.data)
  return result.success
    ? { value: result.data, faults: front.faults }
    : { value: undefined, faults: [...front.faults, ...issueFaults(front, result.error.issues)] }
}
