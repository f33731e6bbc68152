import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { SiteLocation } from '../../model/site.ts'
import { houseNumber } from './address.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { number } from './numbers.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { pattern, text } from './texts.ts'
import { timeZone } from './zones.ts'

/** No road or park is higher; beyond it there is no air to reckon with. */
const HIGHEST = { si: 9000, words: 'must be at most 9,000 m' }

export const location = record(
  'the location',
  { does: 'Where the site is.', example: '{ latitude: 54.97, longitude: -1.61, time-zone: Europe/London }' },
  {
    latitude: optional(
      number('Degrees north; south is negative.', '54.97', { least: -90, most: 90, words: 'must be from -90 to 90' })
    ),
    longitude: optional(
      number('Degrees east; west is negative.', '-1.61', { least: -180, most: 180, words: 'must be from -180 to 180' })
    ),
    elevation: optional(quantity('Height above the sea.', 'length', '60 m', 'any', HIGHEST)),
    'time-zone': optional(timeZone('Name of the time zone, by continent and city.', 'Europe/London')),
    address: optional(text('Street address, as a visitor needs it.', '"Kestrel Cross, Harrow Mere"')),
    'house-number': optional(
      houseNumber('House number, by which some rules tell the days; none where there is no street address.', '1204')
    ),
    country: optional(
      pattern(
        'Two-letter code of the country; safety cautions name its codes.',
        'GB',
        /^[A-Za-z]{2}$/u,
        'a two-letter country code'
      )
    )
  }
)

export function makeLocation(raw: z.output<typeof location>, at: At): SiteLocation {
  return made<SiteLocation>({
    at,
    latitude: given(raw.latitude),
    longitude: given(raw.longitude),
    elevation: given(raw.elevation),
    timeZone: given(raw['time-zone']),
    address: given(raw.address),
    houseNumber: given(raw['house-number']),
    country: given(raw.country?.toUpperCase())
  })
}
