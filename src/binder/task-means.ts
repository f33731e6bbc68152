import type { DueItem } from './due-items.ts'
import type { SiteStop } from './site-summary.ts'
import type { TaskKind } from '../domain/dates/task-kind.ts'
import type { Words } from '../words/words.ts'

/** Minutes on the site for a task whose time nobody stated, for planning only (rule of this project). */
const MINUTES: Readonly<Record<TaskKind, number>> = {
  battery: 10,
  backflow: 30,
  'start-up': 20,
  winterizing: 20,
  inspection: 30,
  'warranty-inspection': 30,
  'warranty-end': 0,
  audit: 60,
  'establishment-end': 20,
  removal: 60,
  maintenance: 20
}
/** More for each station that is started up or emptied, and for each box that is opened (rule of this project). */
const PER_STATION = 5
export const PER_BOX = 5

export function minutesOf(item: DueItem, stop: Pick<SiteStop, 'stations'>): number {
  if (item.task?.minutesS !== undefined) return item.task.minutesS / 60
  const stations = item.kind === 'start-up' || item.kind === 'winterizing' ? stop.stations : 0
  return MINUTES[item.kind] + PER_STATION * stations
}

/** Tools for the tasks of a stop, each once. */
export function toolsOf(
  items: readonly DueItem[],
  { winterByAir }: Pick<SiteStop, 'winterByAir'>,
  words: Words
): string[] {
  const w = words.due.tools
  const kinds = new Set(items.map(item => item.kind))
  const has = (...these: TaskKind[]) => these.some(kind => kinds.has(kind))
  const all = [
    ...(items.some(item => item.box !== undefined) ? [w.lid] : []),
    ...(has('battery') ? [w.battery] : []),
    ...(has('backflow') ? [w.backflow] : []),
    ...(has('start-up') ? [w['start-up'], w.key] : []),
    ...(has('winterizing') ? [winterByAir ? w.air : w.winterizing, w.key] : []),
    ...(has('audit') ? [w.audit] : []),
    ...items.flatMap(item => item.task?.tools ?? [])
  ]
  return [...new Set(all)]
}
