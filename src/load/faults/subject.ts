/** The key that names a record, by the list it stands in: a station goes by its zone, a contact by its role. */
const NAMED_BY: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    stations: ['zone', 'id'],
    controllers: ['id'],
    boxes: ['id'],
    supplies: ['id'],
    sensors: ['id'],
    keys: ['id'],
    contacts: ['role'],
    warranty: ['item']
  })
)

/** The writer's own name for the thing that a path leads into; empty for the site as a whole. */
export function subjectOf(data: unknown, path: readonly (string | number)[]): string {
  const [list, index] = path
  const item = valueAt(data, [list ?? '', index ?? ''])
  for (const key of NAMED_BY.get(String(list)) ?? []) {
    const name = valueAt(item, [key])
    if (typeof name === 'string' || typeof name === 'number') return String(name)
  }
  return ''
}

/** The plain value at a path; undefined where there is none. */
export function valueAt(data: unknown, path: readonly (string | number)[]): unknown {
  let value = data
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined
    value = (value as Record<string | number, unknown>)[step]
  }
  return value
}
