import { relative, sep } from 'node:path'
import type { IsoDate } from '../units/date.ts'
import { readKeptFleet } from './kept-fleet.ts'
import type { KeptFleet } from './kept-fleet.ts'
import type { OutputFile } from './output-stage.ts'
import { printsThere } from './prints-there.ts'
import { readOneSite } from './read-fleet.ts'
import { makeSites } from './site-work.ts'

export interface EditedWish {
  readonly sites: string
  readonly out: string
  readonly on: () => IsoDate
}

export interface EditedSite {
  readonly pages: (changed: readonly string[]) => Promise<readonly OutputFile[]>
  /** Reads in what the first pages need, so that the first edit waits no longer than the next. */
  readonly ready: () => Promise<void>
}

/**
 * Makes the pages of the one site that was edited, so that they can be seen at once, however many others there are: of these only what was read
 * of them before counts. A folder that is not there is refused. Nothing where more than one site changed, or what they share; the build that
 * follows shows that.
 */
export function editedSite({ sites, out, on }: EditedWish): EditedSite {
  let fleet: KeptFleet | undefined
  let day: IsoDate | undefined
  const known = (): KeptFleet => {
    if (day !== on()) fleet = undefined
    day = on()
    fleet ??= readKeptFleet(sites, day, site => printsThere(site, out))
    return fleet
  }
  known()
  const pages: EditedSite['pages'] = async changed => {
    const id = siteOf(sites, changed)
    if (id === undefined) {
      fleet = undefined
      return []
    }
    const { units, common } = known()
    const unit = units.find(one => one.sources.id === id)
    const sources = readOneSite(sites, id)
    if (!unit || !sources) return []
    const [made] = await makeSites([{ ...unit, sources }], common)
    return made?.files ?? []
  }
  const ready = async (): Promise<void> => {
    const { units, common } = known()
    await makeSites(units.slice(0, 1), common)
  }
  return { pages, ready }
}

/** The site below whose folder all of the paths lie. */
function siteOf(sites: string, changed: readonly string[]): string | undefined {
  const firsts = new Set(changed.map(path => relative(sites, path).split(sep)[0] ?? ''))
  const [first] = firsts
  return firsts.size === 1 && first !== undefined && /^[^._]/u.test(first) ? first : undefined
}
