import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Contact } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { record } from './record.ts'
import { phone, text, yesNo } from './texts.ts'

export const contact = record(
  'a contact',
  {
    does: 'A person or firm, by what they do here.',
    example: '{ role: owner, name: Harrow Mere Council, phone: "01632 960100", public: yes }'
  },
  {
    role: text('owner, maintainer, installer, supplier, water supplier, ...', 'maintainer'),
    name: optional(text('Name of the person or office.', 'Harrow Mere Council')),
    company: optional(text('The firm, where a person is named.', 'Example Landscapes')),
    phone: optional(phone('Private unless `public: yes`.', '"01632 960100"')),
    email: optional(text('Private unless `public: yes`.', 'parks@example.org')),
    licence: optional(text('Number of the licence.', 'LI-1234')),
    public: optional(yesNo('yes: phone and email may be shown on the box page and in the binder.', 'yes'))
  }
)

export function makeContact(raw: z.output<typeof contact>, at: At): Contact {
  return made<Contact>({
    at,
    role: raw.role,
    name: given(raw.name),
    company: given(raw.company),
    phone: given(raw.phone),
    email: given(raw.email),
    licence: given(raw.licence),
    public: raw.public ?? false
  })
}
