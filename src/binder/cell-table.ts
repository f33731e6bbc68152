import { groupBy } from '../base/collections.ts'
import type { SheetBattery } from '../model/power.ts'
import { showStated } from '../units/show.ts'
import type { Block, Value } from './blocks.ts'
import type { PageContext } from './context.ts'
import { batterySets, voltValues } from './battery-sets.ts'
import { plate, stated } from './values.ts'

/** The kinds of cells of a site: the volts they are judged by, the cold, and the shelf. */
export function cellBlocks(context: PageContext): Block[] {
  const { site, plan, words } = context
  const w = words.power.cells
  const used = [...plan.batteries.values()].filter(one => one.state !== 'none')
  if (used.length === 0) return []
  const sheetOf = (id: string) => site.controllers.find(one => one.id === id)?.sheet?.battery
  const kinds = groupBy(used, one =>
    JSON.stringify([one.count, one.kind, changeBelow(sheetOf(one.controller)), coldPoint(sheetOf(one.controller))])
  )
  const rows = [...kinds.values()].flatMap(group => {
    const [first] = group
    const [set] = batterySets(group, context)
    if (!first || !set) return []
    const volts = voltValues(set, words)
    return [
      [
        stated(set.name),
        stated(set.controllers, true),
        volts.newRest,
        volts.change,
        coldValue(first.kind, sheetOf(first.controller), words),
        stated(shelfText(first.kind, words))
      ]
    ]
  })
  return [
    { kind: 'heading', id: 'cells', text: w.heading },
    {
      kind: 'table',
      columns: [w.kind, w.controllers, w.volts, w.change, w.cold, w.shelf].map(label => ({ label })),
      rows,
      notes: [...w.notes]
    }
  ]
}

const changeBelow = (battery: SheetBattery | undefined): string | undefined =>
  battery?.changeBelow && showStated(battery.changeBelow)

const coldPoint = (battery: SheetBattery | undefined): string | undefined =>
  battery?.cold && `${showStated(battery.cold.at)} ${showStated(battery.cold.capacity)}`

function coldValue(kind: string, battery: SheetBattery | undefined, { power }: PageContext['words']): Value {
  const w = power.cells
  if (battery?.cold) return plate(w.coldSheet(showStated(battery.cold.at), showStated(battery.cold.capacity)))
  return { text: /lithium/iu.test(kind) ? w.coldNotKnown : w.coldRule, standing: 'default' }
}

function shelfText(kind: string, { power }: PageContext['words']): string {
  const { alkaline, lithium, zinc } = power.cells.shelfText
  if (/lithium/iu.test(kind)) return lithium
  if (/zinc/iu.test(kind)) return zinc
  return /alkaline|^6?LR/iu.test(kind) ? alkaline : '–'
}
