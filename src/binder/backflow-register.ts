import type { Block } from './blocks.ts'
import type { PageContext } from './context.ts'
import { orNotSupplied, stated } from './values.ts'

/** From so many on they stand in one table. */
const TABLE_FROM = 3

/** Each assembly as the authority registers it and as its tag shows it. */
export function backflowRegister({ site, words }: PageContext): Block[] {
  const w = words.handover.backflow
  const fitted = site.supplies.flatMap(({ id, backflow }) =>
    backflow && !backflow.reason ? [{ id, ...backflow }] : []
  )
  if (fitted.length === 0) return []
  const rows = fitted.map(one => [
    stated(one.id, true),
    stated(one.kind),
    orNotSupplied(one.size, words),
    orNotSupplied(one.model, words),
    orNotSupplied(one.serial, words, true),
    orNotSupplied(one.where, words),
    orNotSupplied(one.installed, words, true),
    orNotSupplied(one.tested, words, true),
    orNotSupplied(one.tester, words),
    orNotSupplied(one.testerLicence, words)
  ])
  const onTag = [w.columns[4], w.columns[7], w.columns[8], w.columns[9]].join(', ')
  if (rows.length >= TABLE_FROM)
    return [
      {
        kind: 'table',
        caption: w.title,
        columns: w.columns.map(label => ({ label })),
        rows,
        notes: [`${w.tag}: ${onTag}.`, w.rule]
      }
    ]
  return rows.map(([id, ...values]): Block => {
    const named = values.map((value, index) => ({ label: w.columns[index + 1] ?? '', value }))
    return {
      kind: 'facts',
      caption: `${w.title}, ${id?.text}`,
      rows: [...named, { label: w.tag, value: { ...stated(onTag), note: w.rule } }]
    }
  })
}
