import type { At } from '../../diagnostics/finding.ts'

/**
 * A record with every field of the model named, `undefined` where nothing was written. A field that the model gains and no key fills is
 * a fault that the type checker finds.
 */
export type Made<T> = { readonly [K in keyof Required<T>]: T[K] | Extract<undefined, T[K]> }

/** The record without the fields for which nothing was written. */
export function made<T extends object>(fields: Made<T>): T {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T
}

/** What was written, or nothing where the key was left out or left blank. */
export function given<T>(value: T | null | undefined): T | undefined {
  return value ?? undefined
}

/** A record under a key, where it was written. */
export function part<R, T>(raw: R | null | undefined, at: At, key: string, make: (raw: R, at: At) => T): T | undefined {
  return raw === null || raw === undefined ? undefined : make(raw, below(at, key))
}

/** The records of a list under a key, each with its place; none where the list was left out. */
export function each<R, T>(
  raw: readonly R[] | null | undefined,
  at: At,
  key: string,
  make: (raw: R, at: At) => T
): readonly T[] {
  return (raw ?? []).map((item, index) => make(item, below(at, key, index)))
}

export function below(at: At, ...keys: (string | number)[]): At {
  return { file: at.file, path: [...at.path, ...keys] }
}
