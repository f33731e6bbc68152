/** Chance that can be had again: the same seed gives the same throws on every machine. */
export interface Dice {
  /** From 0 up to, not including, 1. */
  readonly share: () => number
  /** From 0 up to, not including, `many`. */
  readonly below: (many: number) => number
  readonly pick: <T>(items: readonly T[]) => T
  readonly chance: (share: number) => boolean
}

/** A 32-bit generator by Tommy Ettinger (mulberry32, public domain): good enough to spread cases, and a few lines long. */
export function diceOf(seed: number): Dice {
  let state = seed >>> 0
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
  const below = (many: number): number => Math.floor(share() * many)
  return {
    share,
    below,
    chance: part => share() < part,
    pick: items => {
      const item = items[below(items.length)]
      if (item === undefined) throw new Error('Nothing to pick from.')
      return item
    }
  }
}
