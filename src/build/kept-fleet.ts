import type { PageContext } from '../binder/context.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { IsoDate } from '../units/date.ts'
import { readRegister } from './assess.ts'
import { planUnits } from './plan-units.ts'
import { publicAddressIn } from './public-address.ts'
import { readFleet } from './read-fleet.ts'
import type { FleetSources } from './read-fleet.ts'
import type { SharedWork, SiteUnit } from './site-unit.ts'
import { toolMark } from './tool-mark.ts'

/** A fleet read and parted, before any site is looked at closely. */
export interface KeptFleet {
  readonly sources: FleetSources
  readonly register: readonly RegisteredTag[]
  readonly general: readonly Finding[]
  readonly common: SharedWork
  readonly units: readonly SiteUnit[]
}

export function readKeptFleet(
  folder: string,
  on: IsoDate,
  printsOf: (site: string) => PageContext['prints'],
  mark = toolMark()
): KeptFleet {
  const sources = readFleet(folder)
  const { tags: register, general } = readRegister(sources)
  const { shared } = sources
  const common: SharedWork = { on, publicAddress: publicAddressIn(shared), shared, mark }
  return { sources, register, general, common, units: planUnits(sources, register, common, printsOf) }
}
