import type { Label, LabelSheet } from './pages.ts'
import type { PublicContext } from './context.ts'
import { revisionOf } from './context.ts'
import { hazardLine } from './cautions.ts'
import { stationsAt } from './holds.ts'
import { tagQr, tagUrl } from './tag-url.ts'
import type { Box } from '../model/site.ts'

export function makeLabelSheet(context: PublicContext): LabelSheet {
  const { site, words } = context
  return {
    site: site.id,
    language: words.language,
    paper: site.paper,
    title: `${words.label.title} · ${site.title}`,
    lead: words.label.lead,
    labels: site.boxes.flatMap(box => (box.tag === undefined ? [] : [label({ ...box, tag: box.tag }, context)]))
  }
}

function label(box: Box & { readonly tag: string }, context: PublicContext): Label {
  const { site, plan, words, publicAddress } = context
  const w = words.label
  const url = tagUrl(publicAddress, box.tag)
  const line = hazardLine(site, words.cautions)
  const stations = stationsAt(site, box)
  const batteries = site.controllers
    .filter(one => one.box === box.id)
    .flatMap(one => (one.battery ? [w.battery(one.battery.count, one.battery.kind)] : []))
  const coils = [
    ...new Set(
      stations
        .flatMap(one => one.valves.map(valve => valve.coil))
        .filter(coil => coil !== undefined && coil !== 'not known')
    )
  ]
  return {
    tag: box.tag,
    site: site.title,
    box: box.id,
    ...(line ? { hazardLine: line } : {}),
    shutOff:
      site.supplies
        .map(one => one.shutOff)
        .filter(Boolean)
        .join(' · ') || w.noShutOff,
    stations: stations.map(one => ({
      station: one.id,
      waters: [one.zone === one.id ? '' : one.zone, one.waters].filter(Boolean).join(' · ')
    })),
    battery: batteries.length > 0 ? batteries.join(', ') : w.noBattery,
    coil: coils.length > 0 ? w.coils(coils as string[]) : w.coilUnknown,
    url,
    qr: tagQr(url),
    foot: w.foot(plan.on, revisionOf(context))
  }
}
