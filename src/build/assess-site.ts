import type { IsoDate } from '../units/date.ts'
import type { Assessment } from './assess.ts'
import { assessOne, refuseUnknownSites } from './assess.ts'
import { loadOne } from './load-one.ts'
import { readFleet } from './read-fleet.ts'
import type { FleetSources } from './read-fleet.ts'
import { readRegister } from './read-register.ts'
import { tagsOfSites } from './rivals.ts'

/**
 * One site of a folder as a check sees it: planned and checked beside the sites that carry one of its tags. Of the others only the texts are read,
 * so that with a thousand of them nobody waits.
 */
export function assessSite(folder: string, on: IsoDate, id: string): Assessment {
  const sources = readFleet(folder)
  refuseUnknownSites(sources, [id])
  const rivals = tagsOfSites(sources).get(id)?.rivals ?? []
  const near = sources.sites.filter(one => one.id === id || rivals.includes(one))
  const loaded = near.map(one => loadOne(one, sources))
  const { tags, general } = readRegister(sources, [id])
  const fleet = {
    sites: loaded.flatMap(one => (one.site ? [one.site] : [])),
    register: tags,
    registerGone: tags.length === 0
  }
  const sites = near.flatMap((one, index) => {
    const load = loaded[index]
    return load && one.id === id ? [assessOne(one, load, fleet, on)] : []
  })
  return { on, sources, fleet, sites, general }
}

/** The site one of whose boxes carries a tag. */
export function siteOfTag(sources: FleetSources, tag: string): string | undefined {
  const tags = tagsOfSites(sources)
  const carries = (id: string): boolean => tags.get(id)?.tags.includes(tag) === true
  return sources.sites.find(one => carries(one.id) && loadOne(one, sources).site?.boxes.some(box => box.tag === tag))
    ?.id
}
