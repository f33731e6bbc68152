/** Groups in order of first appearance. */
export function groupBy<T, K>(items: Iterable<T>, key: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>()
  for (const item of items) {
    const group = groups.get(key(item))
    if (group) group.push(item)
    else groups.set(key(item), [item])
  }
  return groups
}

/**
 * A sorted copy; ties keep their order. Text is compared by code unit, so that no locale changes the order. Each key of an item is worked
 * out once.
 */
export function sortedBy<T>(items: Iterable<T>, ...keys: ((item: T) => string | number)[]): T[] {
  const keyed = [...items].map(item => ({ item, values: keys.map(key => key(item)) }))
  return keyed.sort((a, b) => compared(a.values, b.values)).map(({ item }) => item)
}

function compared(left: readonly (string | number)[], right: readonly (string | number)[]): number {
  for (const [index, value] of left.entries()) {
    const other = right[index] ?? value
    if (value < other) return -1
    if (value > other) return 1
  }
  return 0
}

export function sum(values: Iterable<number>): number {
  let total = 0
  for (const value of values) total += value
  return total
}

/** Natural order for ids: VB2 before VB10. */
export function naturalKey(id: string): string {
  return id.replace(/\d+/g, digits => digits.padStart(8, '0'))
}
