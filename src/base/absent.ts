/** A value that could not be had, with the reason a reader is told. Never NaN, never an empty string. */
export interface Absent {
  readonly absent: true
  readonly reason: string
}

export type Maybe<T> = T | Absent

export const absent = (reason: string): Absent => ({ absent: true, reason })

export function isAbsent(value: unknown): value is Absent {
  return typeof value === 'object' && value !== null && (value as { absent?: unknown }).absent === true
}

export function isPresent<T>(value: Maybe<T>): value is T {
  return !isAbsent(value)
}
