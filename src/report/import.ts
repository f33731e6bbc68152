interface Told {
  readonly from: string
  readonly to: string
  readonly written: boolean
  readonly leftOut: readonly string[]
  /** Shapes that are not points. */
  readonly passedOver: readonly string[]
  readonly troubles: readonly { readonly line: number; readonly message: string; readonly fix: string }[]
  readonly changes: readonly {
    readonly id: string
    readonly kind: 'box' | 'station'
    readonly isNew: boolean
    readonly changes: readonly { readonly key: string; readonly from?: string; readonly to: string }[]
  }[]
}

/** What an import would change, or why it cannot be done. */
export function importText({ from, to, written, leftOut, passedOver, troubles, changes }: Told): string {
  const left = [
    ...(leftOut.length > 0 ? [`Columns left out: ${leftOut.join(', ')}`] : []),
    ...(passedOver.length > 0
      ? [`Shapes left out, since only points and the ground of zones are taken: ${passedOver.join(', ')}`]
      : [])
  ]
  if (troubles.length > 0)
    return [
      ...troubles.flatMap(one => [`${from}:${one.line}  ${one.message}`, `  fix  ${one.fix}`]),
      ...left,
      'Nothing was written.'
    ].join('\n')
  const rows = changes.flatMap(({ id, kind, isNew, changes: of }) => {
    if (isNew) return [`+ ${kind} ${id}${of.map(one => `\n    ${one.key}: ${one.to}`).join('')}`]
    if (of.length === 0) return []
    return [`~ ${kind} ${id}${of.map(one => `\n    ${one.key}: ${one.from ?? '(blank)'} -> ${one.to}`).join('')}`]
  })
  const count = (is: (one: Told['changes'][number]) => boolean) => changes.filter(is).length
  const [fresh, same] = [count(one => one.isNew), count(one => !one.isNew && one.changes.length === 0)]
  const tags = changes.some(one => one.isNew && one.kind === 'box') && written
  return [
    ...rows,
    ...left,
    `${fresh} new, ${changes.length - fresh - same} changed, ${same} as they are, in ${to}.`,
    ...(written ? [] : rows.length > 0 ? ['Nothing was written yet. To write it: --write'] : ['Nothing to write.']),
    ...(tags ? ['The new boxes have no tag yet: npx underlid tag'] : [])
  ].join('\n')
}
