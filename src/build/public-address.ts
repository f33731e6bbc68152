import { readCompany } from '../load/companions.ts'
import type { SourceText } from '../load/loaded.ts'
import type { Assessment } from './assess.ts'

/** Where the public folder is hosted, upper case, without a slash at the end: the one setting, in sites/_shared/company.md. */
export const DEFAULT_ADDRESS = 'HTTPS://EXAMPLE.ORG'

export function publicAddressOf({ fleet }: Pick<Assessment, 'fleet'>): string {
  return asAddress(fleet.sites.map(site => site.company?.publicAddress).find(one => one !== undefined))
}

/** The same before any site is read. */
export function publicAddressIn(shared: readonly SourceText[]): string {
  return asAddress(readCompany(shared)?.publicAddress)
}

function asAddress(address: string | undefined): string {
  return (address ?? DEFAULT_ADDRESS).toUpperCase().replace(/\/+$/u, '')
}
