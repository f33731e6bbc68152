import { roleIn } from '../role-words.ts'
import type { Block, Section, TableBlock, Value } from '../blocks.ts'
import { groupBy } from '../../base/collections.ts'
import { rangeOf } from '../range.ts'
import type { PageContext } from '../context.ts'
import { stripBlocks, stripsOf } from '../day-strip.ts'
import { programCards } from '../program-card.ts'
import { unitRows } from '../unit-facts.ts'
import { orNotSupplied, plate, stated, notSupplied } from '../values.ts'
import { showStated } from '../../units/show.ts'
import type { Controller } from '../../model/site.ts'
import type { Words } from '../../words/words.ts'

/** From so many controllers set alike on, one card stands for all of them. */
const GROUP_FROM = 3

export function controllersSection(context: PageContext): Section {
  const { site, words } = context
  const groups = [...groupBy(site.controllers, settingsKey).values()]
  const shared = context.plan.strips.filter(one => one.of === 'supply').flatMap(one => stripBlocks(one, context))
  const blocks = groups.flatMap<Block>(group =>
    group.length >= GROUP_FROM
      ? alikeBlocks(group, context)
      : group.flatMap(controller => controllerBlocks(controller, context))
  )
  return {
    id: 'controllers',
    title: words.binder.sections.controllers,
    newPage: false,
    notSupplied: site.controllers.length === 0,
    blocks: blocks.length > 0 ? [...shared, ...blocks] : [{ kind: 'not-supplied', text: words.binder.notSupplied }]
  }
}

function controllerBlocks(controller: Controller, context: PageContext): Block[] {
  const { words } = context
  return [
    { kind: 'heading', id: `controller-${controller.id}`, text: controller.id },
    { kind: 'facts', rows: facts(controller, context) },
    ...programCards(controller, context),
    ...stripsOf('controller', controller.id, context),
    ...(controller.programs.length === 0
      ? [{ kind: 'not-supplied', text: words.binder.controllers.noProgram } as const]
      : [])
  ]
}

/** Controllers that one person would set with one card: same sheet, same clock, same programs. */
function settingsKey({
  sheetPath,
  clock,
  delayBetweenStations,
  programs,
  masterValve,
  stand,
  lock,
  pumpRelay,
  outOfService
}: Controller): string {
  const settings = programs.map(({ days, starts, stations, monthlyPercent, from, to }) => ({
    days,
    starts,
    stations: stations.map(({ number, runTime }) => ({ number, runTime })),
    monthlyPercent,
    from,
    to
  }))
  const away = outOfService !== undefined
  return JSON.stringify([
    sheetPath,
    clock?.daylightSaving,
    clock?.movedBy,
    clock?.drift?.si,
    clock?.set?.text,
    delayBetweenStations?.si,
    settings,
    masterValve?.box,
    stand,
    lock,
    pumpRelay,
    away
  ])
}

function alikeBlocks(group: readonly Controller[], context: PageContext): Block[] {
  const { words } = context
  const w = words.binder.controllers
  const [first] = group
  if (!first) return []
  const ids = group.map(one => one.id)
  const cards = programCards(first, context, ids)
  const table: TableBlock = {
    kind: 'table',
    caption: w.alike,
    columns: [w.controller, w.box, w.serial, w.battery, w.fitted, w.outOfService].map(label => ({ label })),
    rows: group.map(one => [
      stated(one.id, true),
      orNotSupplied(one.box, words),
      orNotSupplied(one.serial, words, true),
      orNotSupplied(one.battery && `${one.battery.count} × ${one.battery.kind}`, words),
      orNotSupplied(context.plan.batteries.get(one.id)?.fitted, words, true),
      stated(one.outOfService ?? '–')
    ])
  }
  const common = facts(first, context).filter(
    ({ label }) => ![w.box, w.serial, w.battery, w.outOfService].includes(label)
  )
  return [
    { kind: 'heading', id: `controller-${first.id}`, text: rangeOf(ids) },
    { kind: 'facts', rows: common },
    ...cards,
    table
  ]
}

function facts(controller: Controller, context: PageContext): { label: string; value: Value }[] {
  const { words } = context
  const w = words.binder.controllers
  const { sheet, clock } = controller
  const place = [controller.box, controller.where].filter(Boolean).join(', ')
  const clockText =
    clock && w.clocks[clock.daylightSaving] + (clock.movedBy ? ` ${w.movedBy(roleIn(clock.movedBy, words))}` : '')
  const rows: { label: string; value: Value }[] = [
    { label: w.box, value: orNotSupplied(place || undefined, words) },
    { label: w.sheet, value: sheet ? plate(sheet.title) : notSupplied(words) },
    { label: w.serial, value: orNotSupplied(controller.serial, words, true) },
    { label: w.battery, value: batteryOf(controller, words) },
    { label: w.clock, value: orNotSupplied(clockText, words) },
    ...(clock?.drift
      ? [
          {
            label: words.units.drift,
            value: stated(words.units.driftText(showStated(clock.drift), clock.set?.text ?? ''))
          }
        ]
      : [])
  ]
  if (sheet?.stations !== undefined) rows.push({ label: w.stations, value: plate(String(sheet.stations)) })
  if (sheet?.pulseVolts) rows.push({ label: w.pulse, value: plate(showStated(sheet.pulseVolts)) })
  if (controller.delayBetweenStations)
    rows.push({ label: w.delay, value: stated(showStated(controller.delayBetweenStations)) })
  if (controller.supply) rows.push({ label: w.supply, value: stated(controller.supply) })
  if (controller.masterValve)
    rows.push({
      label: w.master,
      value: stated([controller.masterValve.box, controller.masterValve.size].filter(Boolean).join(', ') || '–')
    })
  rows.push(...unitRows(controller, context))
  if (controller.outOfService) rows.push({ label: w.outOfService, value: stated(controller.outOfService) })
  return rows
}

function batteryOf({ battery, power, sheet }: Controller, words: Words): Value {
  if (!battery && power === 'solar') return plate(words.units.panel(sheet?.solar?.battery?.kind ?? ''))
  return orNotSupplied(battery && `${battery.count} × ${battery.kind}`, words)
}
