import { CHECKS } from '../checks/list.ts'
import { wordFault } from '../checks/run.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { loadRegister } from '../load/register.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import { goneSiteFaults } from './gone-sites.ts'
import { noRegisterFaults } from './no-register.ts'
import type { FleetSources } from './read-fleet.ts'

/** The register, and what is wrong with it. Sites that are gone are told where no site is asked for by name. */
export function readRegister(
  sources: Pick<FleetSources, 'folder' | 'register' | 'shared' | 'sites'>,
  only: readonly string[] = []
): { readonly tags: readonly RegisteredTag[]; readonly general: readonly Finding[] } {
  const register = sources.register ? loadRegister(sources.register) : { tags: [], faults: [] }
  const { tags, faults } = register
  const gone = only.length > 0 ? [] : goneSiteFaults(sources, tags)
  const none = noRegisterFaults(sources, register)
  return { tags, general: [...faults, ...gone, ...none].map(fault => wordFault('', fault, CHECKS)) }
}
