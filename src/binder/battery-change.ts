import { groupBy } from '../base/collections.ts'
import type { Controller } from '../model/site.ts'
import { showStated } from '../units/show.ts'
import type { Block } from './blocks.ts'
import type { PageContext } from './context.ts'
import { rangeOf } from './range.ts'

/** What to do at a change, with what the sheets say of memory and of open valves; adapters and panels have no set to change. */
export function batteryChangeBlocks({ site, plan, words }: PageContext): Block[] {
  const w = words.power.change
  const units = site.controllers.filter(one => (plan.batteries.get(one.id)?.state ?? 'none') !== 'none')
  if (units.length === 0) return []
  const items = [
    w.open,
    w.settings,
    w.whole,
    ...memoryItems(units, words),
    ...lowItems(units, words),
    w.measure,
    w.valves,
    w.away
  ]
  return [
    { kind: 'heading', id: 'battery-change', text: w.heading },
    { kind: 'list', ordered: true, items }
  ]
}

function memoryItems(units: readonly Controller[], { power }: PageContext['words']): readonly string[] {
  const w = power.change
  const said = groupBy(units, ({ sheet }) => {
    const keeps = sheet?.keepsProgram
    return typeof keeps === 'object' ? showStated(keeps) : (keeps ?? 'unknown')
  })
  const kept = [...said].map(([keeps, group]) => {
    const ids = rangeOf(group.map(({ id }) => id))
    if (keeps === 'yes' || keeps === 'no' || keeps === 'unknown') return w.memory[keeps](ids)
    return w.memory.time(ids, keeps)
  })
  const losing = new Map(
    units.flatMap(({ sheet }) =>
      sheet?.afterMemoryLoss !== undefined && sheet.keepsProgram !== 'yes' ? [[sheet.title, sheet.afterMemoryLoss]] : []
    )
  )
  return [...kept, ...[...losing].map(([title, how]) => w.afterLoss(title, how))]
}

function lowItems(units: readonly Controller[], { power }: PageContext['words']): readonly string[] {
  const said = groupBy(units, ({ sheet }) => sheet?.onLowBattery ?? 'unknown')
  return [...said].map(([does, group]) => power.change.low[does](rangeOf(group.map(({ id }) => id))))
}
