import type { PageContext } from '../binder/context.ts'
import type { LabelWish } from '../binder/make-labels.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { readCompany } from '../load/companions.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { IsoDate } from '../units/date.ts'
import { planUnits } from './plan-units.ts'
import { publicAddressIn } from './public-address.ts'
import { readFleet } from './read-fleet.ts'
import type { FleetSources } from './read-fleet.ts'
import { readRegister } from './read-register.ts'
import type { SharedWork, SiteUnit } from './site-unit.ts'
import { toolMark } from './tool-mark.ts'
import type { FleetFrame } from './write-fleet.ts'

/** A fleet read and parted, before any site is looked at closely. */
export interface KeptFleet {
  readonly sources: FleetSources
  readonly register: readonly RegisteredTag[]
  readonly general: readonly Finding[]
  readonly common: SharedWork
  readonly units: readonly SiteUnit[]
}

export interface ReadWish {
  /** Left out: that of this program and its templates. */
  readonly mark?: string
  readonly only?: readonly string[]
  readonly labelWish?: LabelWish
}

export function readKeptFleet(
  folder: string,
  on: IsoDate,
  printsOf: (site: string) => PageContext['prints'],
  wish: ReadWish = {}
): KeptFleet {
  const { mark = toolMark(), only = [], labelWish } = wish
  const sources = readFleet(folder)
  const { tags: register, general } = readRegister(sources, only)
  const { shared } = sources
  const common: SharedWork = {
    on,
    publicAddress: publicAddressIn(shared),
    shared,
    registerGone: register.length === 0,
    mark
  }
  return { sources, register, general, common, units: planUnits(sources, register, common, { printsOf, labelWish }) }
}

export function frameOf({ sources, register, general, common }: KeptFleet): FleetFrame {
  const { on, mark, publicAddress, shared } = common
  const weekS = readCompany(shared)?.hoursAWeek?.si
  return {
    folder: sources.folder,
    on,
    mark,
    publicAddress,
    ...(weekS === undefined ? {} : { weekS }),
    ids: sources.sites.map(one => one.id),
    register,
    general
  }
}
