import type { Label, LabelSheet } from './pages.ts'
import type { PublicContext } from './context.ts'
import { revisionOf } from './context.ts'
import { hazardLine } from './cautions.ts'
import { stationsAt } from './holds.ts'
import { PLAIN_LABEL, labelCodes } from './label-size.ts'
import type { LabelSize } from './label-size.ts'
import { tagUrl } from './tag-url.ts'
import type { Box } from '../model/site.ts'

export interface LabelWish {
  readonly size: LabelSize
  /** Each label on a sheet of its own, for a printer of labels. */
  readonly single: boolean
}

/** Labels whose codes do not fit the size that is asked for are left out; the call has been refused before it comes to that. */
export function makeLabelSheet(context: PublicContext, wish?: LabelWish): LabelSheet {
  const { site, words } = context
  const labels = site.boxes.flatMap(box =>
    box.tag === undefined ? [] : label({ ...box, tag: box.tag }, context, wish?.size ?? PLAIN_LABEL)
  )
  return {
    site: site.id,
    language: words.language,
    paper: site.paper,
    title: `${words.label.title} · ${site.title}`,
    lead: words.label.lead,
    ...(wish ? { cut: { ...wish.size, single: wish.single } } : {}),
    labels
  }
}

function label(box: Box & { readonly tag: string }, context: PublicContext, size: LabelSize): Label[] {
  const { site, plan, words, publicAddress } = context
  const w = words.label
  const url = tagUrl(publicAddress, box.tag)
  const codes = labelCodes(url, size)
  if (!codes) return []
  const line = hazardLine(site, words.cautions)
  const stations = stationsAt(site, box)
  const batteries = site.controllers
    .filter(one => one.box === box.id)
    .flatMap(one => (one.battery ? [w.battery(one.battery.count, one.battery.kind)] : []))
  const coils = [
    ...new Set(
      stations
        .flatMap(one => one.valves.map(valve => valve.coil))
        .flatMap(coil => (coil === undefined || coil === 'not known' ? [] : words.boxPage.coilKinds[coil]))
    )
  ]
  return [
    {
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
      coil: coils.length > 0 ? w.coils(coils) : w.coilUnknown,
      url,
      ...codes,
      foot: w.foot(plan.on, revisionOf(context))
    }
  ]
}
