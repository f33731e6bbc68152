import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Company } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { codedAddress, phone, text } from './texts.ts'

/** The front matter of _shared/company.md. */
export const company = record(
  'the company',
  { does: 'The firm whose name stands on the binders.', example: 'name: Example Landscapes' },
  {
    name: text('Name of the firm.', 'Example Landscapes'),
    'public-address': optional(
      codedAddress('Where dist/public is hosted; the printed codes point at it.', '"HTTPS://EXAMPLE.ORG"')
    ),
    phone: optional(phone('Public number.', '"01632 960200"')),
    email: optional(text('Public address.', 'office@example.org')),
    address: optional(text('Street address.', '"1 Yard Lane, Harrow Mere"')),
    licence: optional(text('Number of the licence.', 'LI-1234')),
    'hours-a-week': optional(
      quantity(
        'Time on sites that a week holds, of all who go out together; the route sheet levels the work to it.',
        'duration',
        '30 h'
      )
    )
  }
)

export function makeCompany(raw: z.output<typeof company>, at: At): Company {
  return made<Company>({
    at,
    name: raw.name,
    publicAddress: given(raw['public-address']),
    phone: given(raw.phone),
    email: given(raw.email),
    address: given(raw.address),
    licence: given(raw.licence),
    hoursAWeek: given(raw['hours-a-week'])
  })
}
