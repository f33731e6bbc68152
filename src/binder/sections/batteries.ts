import type { Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { batteryDueValue, batteryStateValue } from '../battery-value.ts'
import { measured, orNotSupplied, stated } from '../values.ts'
import { showStated } from '../../units/show.ts'

export function batteriesSection({ site, plan, words }: PageContext): Section {
  const w = words.binder.batteries
  const batteries = [...plan.batteries.values()]
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
    id: 'batteries',
    title: words.binder.sections.batteries,
    newPage: true,
    notSupplied: batteries.length === 0,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      {
        kind: 'table',
        columns: [w.controller, w.box, w.kind, w.fitted, w.due, w.state, w.because].map(label => ({ label })),
        rows: batteries.map(battery => [
          stated(battery.controller, true),
          orNotSupplied(site.controllers.find(one => one.id === battery.controller)?.box, words),
          stated(battery.count > 0 ? `${battery.count} × ${battery.kind}` : battery.kind),
          orNotSupplied(battery.fitted, words, true),
          batteryDueValue(battery, words),
          batteryStateValue(battery, words),
          stated(battery.because || '–')
        ])
      },
      {
        kind: 'table',
        caption: w.log,
        columns: [w.date, w.controller, w.kind, w.rest, w.load, w.who, w.clockSet, w.valvesSeen].map(label => ({
          label
        })),
        rows: fitted,
        blankRows: 12
      }
    ]
  }
}
