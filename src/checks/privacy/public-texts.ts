import type { At } from '../../diagnostics/finding.ts'
import type { Site } from '../../model/site.ts'
import { at } from '../at.ts'

/** Every free text of a site that a scanned page or a lid label may carry, with its place. */
export function publicTexts(site: Site): readonly { readonly text: string; readonly at: At }[] {
  const texts: { text: string | undefined; at: At }[] = [
    { text: site.title, at: at(site, 'title') },
    { text: site.location?.address, at: site.location ? at(site.location, 'address') : at(site) },
    { text: site.workRules.note, at: at(site.workRules, 'note') },
    { text: site.workRules.trafficControlPlan, at: at(site.workRules, 'traffic-control-plan') },
    { text: site.workRules.isolation, at: at(site.workRules, 'isolation') },
    ...(site.workRules.anchors ?? []).map((text, index) => ({ text, at: at(site.workRules, 'anchors', index) })),
    ...site.supplies.map(one => ({ text: one.shutOff, at: at(one, 'shut-off') })),
    ...site.wateringRules.map(one => ({ text: one.note, at: at(one, 'note') })),
    ...site.contacts
      .filter(one => one.public)
      .flatMap(one =>
        (['name', 'company', 'phone', 'email'] as const).map(key => ({ text: one[key], at: at(one, key) }))
      ),
    ...site.boxes.flatMap(box => [
      { text: box.where, at: at(box, 'where') },
      { text: box.status, at: at(box, 'status') },
      ...box.ties.map((text, index) => ({ text, at: at(box, 'ties', index) })),
      ...box.hazards.map((text, index) => ({ text, at: at(box, 'hazards', index) })),
      ...box.photos.map(photo => ({ text: photo.caption, at: at(photo, 'caption') }))
    ]),
    ...site.stations.flatMap(station => [
      { text: station.zone, at: at(station, 'zone') },
      { text: station.waters, at: at(station, 'waters') },
      { text: station.outOfService, at: at(station, 'out-of-service') },
      ...station.wire.map(segment => ({ text: segment.colour, at: at(segment, 'colour') })),
      ...station.valves.map(valve => ({ text: valve.byHand, at: at(valve, 'by-hand') }))
    ]),
    ...site.controllers.flatMap(one => [
      { text: one.where, at: at(one, 'where') },
      { text: one.outOfService, at: at(one, 'out-of-service') },
      ...one.programs.map(program => ({ text: program.name, at: at(program, 'name') }))
    ]),
    ...site.visits.flatMap(visit => [
      ...(['found', 'done', 'open'] as const).flatMap(key =>
        visit[key].map((text, index) => ({ text, at: at(visit, key, index) }))
      ),
      // In the binder, whose bound pages hold nothing private either.
      ...(visit.photos ?? []).map(photo => ({ text: photo.caption, at: at(photo, 'caption') }))
    ])
  ]
  return texts.filter((one): one is { text: string; at: At } => one.text !== undefined)
}
