import type { Block } from './blocks.ts'
import type { PageContext } from './context.ts'
import { orNotSupplied, stated } from './values.ts'

/** Each assembly as the authority registers it and as its tag shows it. */
export function backflowRegister({ site, words }: PageContext): Block[] {
  const w = words.handover.backflow
  const fitted = site.supplies.flatMap(({ id, backflow }) =>
    backflow && !backflow.reason ? [{ id, ...backflow }] : []
  )
  if (fitted.length === 0) return []
  return [
    {
      kind: 'table',
      caption: w.title,
      columns: w.columns.map(label => ({ label })),
      rows: fitted.map(one => [
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
      ]),
      notes: [`${w.tag}: ${[w.columns[4], w.columns[7], w.columns[8], w.columns[9]].join(', ')}.`, w.rule]
    }
  ]
}
