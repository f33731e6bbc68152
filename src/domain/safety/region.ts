/** Where the cautions know codes of their own. Everywhere else a code of the United States stands as an example. */
export const REGIONS = ['US', 'GB', 'EU', 'AU', 'NZ'] as const
export type Region = (typeof REGIONS)[number]

/** The 27 member states of the European Union as of 2024, ISO 3166-1 (from memory). */
const EU_STATES = new Set('AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK'.split(' '))

/** "us" is US, "DE" is EU; undefined for a country that no caution knows a code of, and where no country is stated. */
export function regionOf(country: string | undefined): Region | undefined {
  const code = country?.trim().toUpperCase()
  if (code === undefined) return undefined
  if (EU_STATES.has(code)) return 'EU'
  return REGIONS.find(region => region === code)
}
