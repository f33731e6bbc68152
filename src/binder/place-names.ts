import type { PlaceKind } from '../model/drawing.ts'
import type { Box, Station } from '../model/site.ts'
import type { DrawnMark, Unplaced } from '../plan/drawing-plan.ts'
import type { PageContext } from './context.ts'
import type { PlanSymbol } from './figures/plan.ts'

/** Things whose id says by itself what they are. */
const BY_ID: ReadonlySet<string> = new Set(['box', 'controller', 'sensor'])

/** "HB1", "S1 shut-off", "drain at the low end". */
export function markName({ what, of, name }: Pick<DrawnMark, 'what' | 'of' | 'name'>, { words }: PageContext): string {
  if (name !== undefined) return name
  return BY_ID.has(what) && of !== '' ? of : `${of} ${words.drawing.short[what]}`.trim()
}

export function unplacedName({ what, of }: Unplaced, context: PageContext): string {
  return what === 'valve' ? `${of} ${context.words.drawing.valve.toLowerCase()}` : markName({ what, of }, context)
}

export function symbolOf({ what, of }: DrawnMark, { site }: PageContext): PlanSymbol {
  const valves =
    site.stations.some(one => one.valves.some(valve => valve.box === of)) ||
    site.controllers.some(one => one.masterValve?.box === of)
  return what === 'box' && valves ? 'valve box' : what
}

/** What stands in a box, short enough for a drawing: "H1, MV, T1, 1 splice". */
export function holdsShort(box: Box, { site, words }: PageContext): string {
  const w = words.drawing
  const drawn = (what: PlaceKind, id: string) => site.drawing?.places.some(one => one.what === what && one.of === id)
  const splices = site.stations.flatMap(one => one.splices).filter(one => one.box === box.id).length
  return [
    ...site.controllers.filter(one => one.box === box.id && !drawn('controller', one.id)).map(one => one.id),
    ...site.controllers.filter(one => one.masterValve?.box === box.id).map(() => w.master),
    ...site.stations.filter(one => one.valves.some(valve => valve.box === box.id)).map(zoneShort),
    ...site.sensors.filter(one => one.box === box.id && !drawn('sensor', one.id)).map(one => one.id),
    ...(splices > 0 ? [w.splices(splices)] : [])
  ].join(', ')
}

const zoneShort = ({ zone }: Station): string => zone
