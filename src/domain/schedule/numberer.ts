/** Gives each thing a number of its own, the same each time it is asked for. */
export function numberer<T>(): (thing: T) => number {
  const numbers = new Map<T, number>()
  return thing => {
    const known = numbers.get(thing)
    if (known !== undefined) return known
    numbers.set(thing, numbers.size)
    return numbers.size - 1
  }
}
