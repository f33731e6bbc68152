import type { Assessment } from './assess.ts'

/** Where the public folder is hosted, upper case, without a slash at the end: the one setting, in sites/_shared/company.md. */
export const DEFAULT_ADDRESS = 'HTTPS://EXAMPLE.ORG'

export function publicAddressOf({ fleet }: Pick<Assessment, 'fleet'>): string {
  const address = fleet.sites.map(site => site.company?.publicAddress).find(one => one !== undefined)
  return (address ?? DEFAULT_ADDRESS).toUpperCase().replace(/\/+$/u, '')
}
