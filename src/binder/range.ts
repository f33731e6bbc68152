/** "K1", "K1, K2, K3", "MR-01 … MR-22 (19)": ids for a heading, in the order given. */
export function rangeOf(ids: readonly string[]): string {
  if (ids.length <= 3) return ids.join(', ')
  return `${ids[0]} … ${ids.at(-1)} (${ids.length})`
}
