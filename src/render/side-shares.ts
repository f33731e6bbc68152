import { sum } from '../base/collections.ts'

/** Letters of small print on a whole line, and those that the mark of an item takes. */
const LINE = 135
const MARK = 4

/** Shares of the left column, by the name of their class. The first is the usual one. */
const SHARES = { 'do-even': 0.47, 'do-less': 0.38, 'do-more': 0.56, 'do-most': 0.64, 'do-nearly-all': 0.72 } as const

export type SideShare = keyof typeof SHARES

/** How two lists beside each other share the width, so that the longer is as short as it can be. */
export function sideShare(left: readonly string[], right: readonly string[]): SideShare {
  const heights = (Object.keys(SHARES) as SideShare[]).map(name => ({
    name,
    lines: Math.max(linesOf(left, SHARES[name]), linesOf(right, 1 - SHARES[name]))
  }))
  const least = Math.min(...heights.map(({ lines }) => lines))
  return heights.find(({ lines }) => lines === least)?.name ?? 'do-even'
}

function linesOf(items: readonly string[], share: number): number {
  return sum(items.map(item => Math.max(1, Math.ceil(item.length / (LINE * share - MARK)))))
}
