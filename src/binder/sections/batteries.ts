import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { dueReason } from '../due-reason.ts'
import { batteryChangeBlocks } from '../battery-change.ts'
import { batteryGroups } from '../battery-groups.ts'
import { batteryLifeBlocks, pulsesTable } from '../battery-life-table.ts'
import { batteryDueValue, batteryStateValue } from '../battery-value.ts'
import { visitValue } from '../battery-visit.ts'
import { batteryYear } from '../battery-year.ts'
import { cautionBlock } from '../cautions.ts'
import { cellBlocks } from '../cell-table.ts'
import { solarBlocks } from '../solar-blocks.ts'
import { measured, orNotSupplied, stated } from '../values.ts'
import type { BatteryPlan } from '../../plan/plan.ts'
import { showStated } from '../../units/show.ts'

/** Who is due when and at which visit; how long each set lasts and why; panels; cells; the change itself; the log. */
export function batteriesSection(context: PageContext): Section {
  const { plan, words } = context
  const groups = batteryGroups(context)
  const figures = groups.flatMap(group => batteryYear(group, context))
  return {
    id: 'batteries',
    title: words.binder.sections.batteries,
    newPage: true,
    notSupplied: plan.batteries.size === 0,
    blocks: [
      { kind: 'paragraph', text: words.binder.batteries.lead },
      dueTable(context),
      ...batteryChangeBlocks(context),
      ...batteryLifeBlocks(groups, context),
      ...figures,
      ...(figures.length > 0 ? [pulsesTable(groups, context)] : []),
      ...solarBlocks(groups, context),
      ...cellBlocks(context),
      ...disposal(context),
      logTable(context)
    ]
  }
}

function dueTable({ site, plan, words }: PageContext): Block {
  const w = words.binder.batteries
  return {
    kind: 'table',
    columns: [w.controller, w.box, w.kind, w.fitted, w.due, w.state, words.power.due.doAt, w.because].map(label => ({
      label
    })),
    rows: [...plan.batteries.values()].map(battery => [
      stated(battery.controller, true),
      orNotSupplied(site.controllers.find(one => one.id === battery.controller)?.box, words),
      stated(setName(battery)),
      orNotSupplied(battery.fitted, words, true),
      batteryDueValue(battery, words),
      batteryStateValue(battery, words),
      visitValue(battery.doAt, words),
      stated(dueReason(battery, words) || '–')
    ]),
    notes: [words.power.due.note]
  }
}

/** "4 × AA alkaline"; a dash where there is no set to change and nobody wrote one. */
function setName({ kind, count, state }: BatteryPlan): string {
  if (state === 'none' && kind === 'not stated') return '–'
  return count > 0 ? `${count} × ${kind}` : kind
}

function disposal({ site, plan, words }: PageContext): Block[] {
  if (!plan.cautions.some(({ id }) => id === 'battery-disposal')) return []
  return [
    { kind: 'heading', id: 'battery-disposal', text: words.power.disposal },
    cautionBlock(site, 'battery-disposal', words.cautions)
  ]
}

/** Blank lines of the log: two for each set beyond the least. */
const LOG_LEAST = 4
const LOG_MOST = 12

function logTable({ site, plan, words }: PageContext): Block {
  const w = words.binder.batteries
  const fitted = site.visits.flatMap(visit =>
    visit.batteries.map<Value[]>(one => [
      stated(visit.on, true),
      stated(one.controller, true),
      stated(one.kind ?? '–'),
      one.rest ? measured(showStated(one.rest)) : stated('–'),
      one.underLoad ? measured(showStated(one.underLoad)) : stated('–'),
      stated(visit.by ?? '–'),
      stated(''),
      stated('')
    ])
  )
  return {
    kind: 'table',
    caption: w.log,
    sheet: words.binder.sections.batteries,
    columns: [w.date, w.controller, w.kind, w.rest, w.load, w.who, w.clockSet, w.valvesSeen].map(label => ({ label })),
    rows: fitted,
    blankRows: Math.min(LOG_MOST, LOG_LEAST + 2 * plan.batteries.size)
  }
}
