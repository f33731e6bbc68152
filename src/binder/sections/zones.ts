import type { Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { computed, figure, notSupplied, orNotSupplied, stated, statedQuantity } from '../values.ts'
import { zoneRecord } from '../zone-record.ts'
import { flowValue } from '../flow-value.ts'
import { absent, isAbsent } from '../../base/absent.ts'
import type { Station } from '../../model/site.ts'
import type { WaterPlan } from '../../plan/plan.ts'
import { roundedText } from '../../units/show.ts'
import type { Words } from '../../words/words.ts'

export function zonesSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.binder.zones
  return {
    id: 'zones',
    title: words.binder.sections.zones,
    newPage: true,
    notSupplied: site.stations.length === 0,
    blocks:
      site.stations.length === 0
        ? [{ kind: 'not-supplied', text: words.binder.notSupplied }]
        : [
            {
              kind: 'table',
              wide: true,
              columns: [
                { label: w.station },
                { label: w.zone },
                { label: w.waters },
                { label: w.devices },
                { label: w.area, align: 'right' },
                { label: w.flow, align: 'right' },
                { label: w.rate, align: 'right' },
                { label: w.valve },
                { label: w.valveBox },
                { label: w.plants, align: 'right' },
                { label: w.soil },
                { label: w.roots, align: 'right' }
              ],
              rows: site.stations.map(station => row(station, context))
            },
            zoneRecord(context)
          ]
  }
}

function row(station: Station, { site, plan, words }: PageContext): Value[] {
  const [valve] = station.valves
  const boxes = [...new Set(station.valves.map(one => one.box).filter(Boolean))].join(', ')
  return [
    stated(station.id, true),
    stated(station.zone),
    orNotSupplied(station.waters, words),
    orNotSupplied(station.devices?.kind, words),
    statedQuantity(station.area, words),
    flowValue(station, site.units, words),
    figure(
      plan.water.get(station.id)?.rateMPerS ?? absent(words.binder.zones.noRate),
      'rate',
      site.units,
      words,
      'application-rate'
    ),
    orNotSupplied(valve?.size, words),
    orNotSupplied(boxes, words),
    factorValue(station, plan.water.get(station.id), words),
    orNotSupplied(station.soil?.texture, words),
    statedQuantity(station.soil?.rootDepth, words)
  ]
}

/** One plant factor as stated, or the coefficient that its parts come to. */
function factorValue({ plants }: Station, water: WaterPlan | undefined, words: Words): Value {
  if (plants?.factor !== undefined) return stated(String(plants.factor))
  const factor = water?.need.factor
  if (!factor || isAbsent(factor)) return notSupplied(words)
  return computed(roundedText(factor.value, 2), 'landscape-coefficient')
}
