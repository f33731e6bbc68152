import { assemblyIn } from '../assembly-kind.ts'
import { backflowRegister } from '../backflow-register.ts'
import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, notComputed, notSupplied, orNotSupplied, stated, statedQuantity } from '../values.ts'
import { isAbsent } from '../../base/absent.ts'
import type { Supply } from '../../model/site.ts'

export function suppliesSection(context: PageContext): Section {
  const { site, words } = context
  return {
    id: 'supplies',
    title: words.binder.sections.supplies,
    newPage: false,
    notSupplied: site.supplies.length === 0,
    blocks:
      site.supplies.length === 0
        ? [{ kind: 'not-supplied', text: words.binder.notSupplied }]
        : [...site.supplies.map(supply => supplyFacts(supply, context)), ...backflowRegister(context)]
  }
}

function supplyFacts(supply: Supply, context: PageContext): Block {
  const { words } = context
  const w = words.binder.supplies
  const rows: { label: string; value: Value }[] = [
    { label: w.kind, value: stated(supply.kind) },
    { label: w.shutOff, value: orNotSupplied(supply.shutOff, words) },
    { label: w.limit, value: statedQuantity(supply.limit, words) },
    { label: w.pressure, value: statedQuantity(supply.staticPressure, words) },
    { label: w.meter, value: orNotSupplied(supply.meter, words) },
    ...backflowRows(supply, context)
  ]
  return { kind: 'facts', caption: `${w.supply} ${supply.id}`, rows }
}

function backflowRows({ id, backflow }: Supply, { plan, words }: PageContext): { label: string; value: Value }[] {
  const w = words.binder.supplies
  if (!backflow) return [{ label: w.backflow, value: notSupplied(words) }]
  const rows = [{ label: w.backflow, value: stated(assemblyIn(backflow.kind, words)) }]
  if (backflow.reason) return [...rows, { label: w.reason, value: stated(backflow.reason) }]
  const due = plan.backflows.get(id)?.dueOn
  return [
    ...rows,
    {
      label: w.due,
      value:
        due === undefined
          ? notSupplied(words)
          : isAbsent(due)
            ? notComputed(words, due.reason)
            : computed(due, 'due-date')
    }
  ]
}
