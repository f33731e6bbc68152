import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'
import type { PlaceKind } from '../../model/drawing.ts'
import type { Site } from '../../model/site.ts'

export const noLocation: SiteCheck = {
  card: {
    code: 'closeout/no-location',
    severity: 'warning',
    looksAt:
      'A valve, controller, splice or shut-off that nothing says the place of: no box, no words, not on the drawing; on a site that was accepted the backflow assembly and the filters too.',
    why: 'What nobody can find cannot be shut, read or mended.',
    sources: ['nc-record-drawing', 'project-rule'],
    fix: 'Name its box, say in words where it is, or write it under drawing: places. An error once the site is closed out.',
    worked: {
      example: `supplies:
  - { id: S1, kind: potable }`,
      instead: `supplies:
  - { id: S1, kind: potable, shut-off: "meter pit by the gate, quarter turn" }`
    }
  },
  run: ({ site }, report) => {
    if (site.status === 'planned' || site.status === 'removed') return
    const lacking = [...lost(site)]
    if (lacking.length === 0) return
    report({
      subject: site.id,
      at: at(site),
      message: `Nothing says where these are: ${joined(lacking)}.`,
      fix: [
        'Name the box of each, say in words where it is, or write it under drawing: places.',
        ...(lacking.includes(FILTERS) ? ['Where there is no filter, write "filters: none" under installation.'] : [])
      ].join(' '),
      values: { count: lacking.length },
      ...(site.status === 'closed-out' ? { severity: 'error' as const } : {})
    })
  }
}

const FILTERS = 'filters'

function lost(site: Site): string[] {
  const { controllers, stations, supplies } = site
  const drawn = (what: PlaceKind, of?: string): boolean =>
    site.drawing?.places.some(one => one.what === what && (of === undefined || one.of === of)) === true
  const closeout = closedOut(site)
  const handedOver = closeout !== undefined
  return [
    ...supplies.filter(one => !one.shutOff && !drawn('shut-off', one.id)).map(one => `shut-off of ${one.id}`),
    ...supplies
      .filter(
        ({ id, backflow }) =>
          handedOver && backflow && backflow.kind !== 'not fitted' && !backflow.where && !drawn('backflow', id)
      )
      .map(one => `backflow assembly of ${one.id}`),
    ...controllers
      .filter(one => !one.box && !one.where && !drawn('controller', one.id))
      .map(one => `controller ${one.id}`),
    ...stations.filter(one => one.valves.some(valve => !valve.box)).map(one => `valve of ${one.id}`),
    ...stations
      .filter(one => one.splices.some(splice => !splice.box && !splice.where) && !drawn('splice', one.id))
      .map(one => `splice of ${one.id}`),
    ...(handedOver && closeout.installation?.filters === undefined && !drawn('filter') ? [FILTERS] : [])
  ]
}
