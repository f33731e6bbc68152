import type { Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { keyRegister } from '../unit-facts.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'

export function contactsSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.binder.contacts
  const phone = (text: string | undefined, isPublic: boolean): Value => {
    if (text === undefined) return notSupplied(words)
    return isPublic ? stated(text, true) : stated(w.withheld)
  }
  return {
    id: 'contacts',
    title: words.binder.sections.contacts,
    newPage: false,
    notSupplied: site.contacts.length === 0,
    blocks:
      site.contacts.length === 0
        ? [{ kind: 'not-supplied', text: words.binder.notSupplied }, ...keyRegister(context)]
        : [
            {
              kind: 'table',
              columns: [w.role, w.name, w.company, w.phone, w.licence].map(label => ({ label })),
              rows: site.contacts.map(one => [
                stated(one.role),
                orNotSupplied(one.name, words),
                one.company === undefined ? stated('–') : stated(one.company),
                phone(one.phone, one.public),
                one.licence === undefined ? stated('–') : stated(one.licence)
              ]),
              notes: [w.private]
            },
            ...keyRegister(context)
          ]
  }
}
