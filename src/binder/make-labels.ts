import type { Label, LabelSheet } from './pages.ts'
import type { PublicContext } from './context.ts'
import { revisionOf } from './context.ts'
import { hazardLine } from './cautions.ts'
import { stationsAt } from './holds.ts'
import { masterValvesAt } from './master-valves.ts'
import { reachText } from './label-code.ts'
import type { CodeWish } from './label-code.ts'
import { PLAIN_LABEL, labelCodes, planRoomMm } from './label-size.ts'
import type { LabelSize } from './label-size.ts'
import { planCode, planFits } from './plan-code.ts'
import { planText } from './plan-text.ts'
import { stopWords } from './shut-off.ts'
import { tagUrl } from './tag-url.ts'
import type { Box } from '../model/site.ts'

export interface LabelWish {
  readonly size: LabelSize
  /** Each label on a sheet of its own, for a printer of labels. */
  readonly single: boolean
  readonly codes?: CodeWish
  /** A second kind of code, which carries the zone plan as plain text. */
  readonly planCode?: boolean
}

export const PLAIN_WISH: LabelWish = { size: PLAIN_LABEL, single: false }

/** Labels whose codes do not fit the size that is asked for are left out; the call has been refused before it comes to that. */
export function makeLabelSheet(context: PublicContext, wish?: LabelWish): LabelSheet {
  const { site, words } = context
  const labels = site.boxes.flatMap(box =>
    box.tag === undefined ? [] : label({ ...box, tag: box.tag }, context, wish ?? PLAIN_WISH)
  )
  const [first] = labels
  return {
    site: site.id,
    language: words.language,
    paper: site.paper,
    title: `${words.label.title} · ${site.title}`,
    lead: [...words.label.lead, ...(first ? [words.label.reach(reachText(first.qr, site.units))] : [])],
    ...(wish ? { cut: cutOf(wish) } : {}),
    labels
  }
}

function cutOf({ size, single, planCode: isWished }: LabelWish): NonNullable<LabelSheet['cut']> {
  return { ...size, single, ...(isWished ? { planMm: planRoomMm(size) } : {}) }
}

function label(box: Box & { readonly tag: string }, context: PublicContext, wish: LabelWish): Label[] {
  const { site, plan, words, publicAddress } = context
  const w = words.label
  const url = tagUrl(publicAddress, box.tag)
  const { widthMm, heightMm } = wish.size
  const planMm = wish.planCode ? planRoomMm(wish.size) : 0
  const codes = labelCodes(url, { widthMm, heightMm: heightMm - planMm }, wish.codes)
  if (!codes) return []
  const line = hazardLine(site, words.cautions)
  const stations = [...masterValvesAt(box.id, site.controllers, words), ...stationsAt(site, box)]
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
      shutOff: stopWords(site, words),
      stations: stations.map(one => ({
        station: one.id,
        waters: [one.zone === one.id ? '' : one.zone, one.waters].filter(Boolean).join(' · ')
      })),
      battery: batteries.length > 0 ? batteries.join(', ') : w.noBattery,
      coil: coils.length > 0 ? w.coils(coils) : w.coilUnknown,
      url,
      ...codes,
      ...(wish.planCode ? planOf(box, context, wish) : {}),
      foot: w.foot(plan.on, revisionOf(context))
    }
  ]
}

/** A little of the strip is left white above and below the code. */
const PLAN_EDGE_MM = 1.5

function planOf(
  box: Box & { readonly tag: string },
  context: PublicContext,
  { size, codes = {} }: LabelWish
): Pick<Label, 'plan'> {
  const roomMm = planRoomMm(size) - PLAN_EDGE_MM
  const lines = planText(box, context, text => planFits(text, roomMm, codes))
  const code = lines && planCode(lines.join('\n'), roomMm, codes)
  return code ? { plan: { title: context.words.label.plan.title, code, lines } } : {}
}
