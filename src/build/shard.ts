import { Refusal } from '../base/refusal.ts'

/** The n-th of so many parts of a fleet, counted from 1. */
export interface Shard {
  readonly index: number
  readonly of: number
}

/** "2/8"; so many parts at most as anybody has machines. */
export function parseShard(text: string): Shard {
  const [, index = NaN, of = NaN] = (/^(\d{1,4})\/(\d{1,4})$/u.exec(text.trim()) ?? []).map(Number)
  if (index >= 1 && index <= of) return { index, of }
  throw new Refusal(`"${text}" is no part of a whole.`, 'Write it like this: --shard 2/8')
}

/** The part of a list, in its order: sites that stand together stay together, so that parts put one behind the other are the whole. */
export function shardOf<T>(all: readonly T[], { index, of }: Shard): T[] {
  const edge = (n: number): number => Math.floor((n * all.length) / of)
  return all.slice(edge(index - 1), edge(index))
}
