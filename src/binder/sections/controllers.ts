import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { dayStrip } from '../day-strip.ts'
import { programCards } from '../program-card.ts'
import { orNotSupplied, plate, stated, notSupplied } from '../values.ts'
import { showStated } from '../../units/show.ts'
import type { Controller } from '../../model/site.ts'
import type { Words } from '../../words/words.ts'

export function controllersSection(context: PageContext): Section {
  const { site, words } = context
  const blocks = site.controllers.flatMap<Block>(controller => {
    const strip = dayStrip(controller, context)
    return [
      { kind: 'heading', id: `controller-${controller.id}`, text: controller.id },
      { kind: 'facts', rows: facts(controller, words) },
      ...programCards(controller, context),
      ...(controller.programs.length === 0
        ? [{ kind: 'not-supplied', text: words.binder.controllers.noProgram } as const]
        : []),
      ...(strip ? [strip] : [])
    ]
  })
  return {
    id: 'controllers',
    title: words.binder.sections.controllers,
    newPage: true,
    notSupplied: site.controllers.length === 0,
    blocks: blocks.length > 0 ? blocks : [{ kind: 'not-supplied', text: words.binder.notSupplied }]
  }
}

function facts(controller: Controller, words: Words): { label: string; value: Value }[] {
  const w = words.binder.controllers
  const { sheet, clock, battery } = controller
  const place = [controller.box, controller.where].filter(Boolean).join(', ')
  const clockText = clock && w.clocks[clock.daylightSaving] + (clock.movedBy ? ` ${w.movedBy(clock.movedBy)}` : '')
  const rows: { label: string; value: Value }[] = [
    { label: w.box, value: orNotSupplied(place || undefined, words) },
    { label: w.sheet, value: sheet ? plate(sheet.title) : notSupplied(words) },
    { label: w.serial, value: orNotSupplied(controller.serial, words, true) },
    { label: w.battery, value: orNotSupplied(battery && `${battery.count} × ${battery.kind}`, words) },
    { label: w.clock, value: orNotSupplied(clockText, words) }
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
  if (controller.outOfService) rows.push({ label: w.outOfService, value: stated(controller.outOfService) })
  return rows
}
