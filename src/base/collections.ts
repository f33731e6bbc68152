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

/** A sorted copy; ties keep their order. Text is compared by code unit, so that no locale changes the order. */
export function sortedBy<T>(items: Iterable<T>, ...keys: ((item: T) => string | number)[]): T[] {
  return [...items].sort((a, b) => {
    for (const key of keys) {
      const [left, right] = [key(a), key(b)]
      if (left < right) return -1
      if (left > right) return 1
    }
    return 0
  })
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
