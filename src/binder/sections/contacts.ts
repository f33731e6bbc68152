import type { Block, Section, Value } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { roleIn } from '../role-words.ts'
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
        ? [{ kind: 'not-supplied', text: words.binder.notSupplied }, contractorFacts(context), ...keyRegister(context)]
        : [
            {
              kind: 'table',
              columns: [w.role, w.name, w.company, w.phone, w.licence].map(label => ({ label })),
              rows: site.contacts.map(one => [
                stated(roleIn(one.role, words)),
                orNotSupplied(one.name, words),
                one.company === undefined ? stated('–') : stated(one.company),
                phone(one.phone, one.public),
                one.licence === undefined && one.role !== 'installer' ? stated('–') : orNotSupplied(one.licence, words)
              ]),
              notes: [w.private]
            },
            contractorFacts(context),
            ...keyRegister(context)
          ]
  }
}

/** Who did the work and who keeps it up, where the water is shut off, and where parts come from. */
function contractorFacts({ site, words }: PageContext): Block {
  const w = words.handover.contacts
  const named = (role: RegExp) =>
    site.contacts
      .filter(one => role.test(one.role))
      .map(one => [one.name, one.company, one.public ? one.phone : undefined, one.licence].filter(Boolean).join(', '))
  const sources = (site.closeout?.spares ?? []).flatMap(({ source }) => (source === undefined ? [] : [source]))
  const suppliers = [...new Set([...named(/supplier|subcontractor|nursery/iu), ...sources])]
  const joined = (texts: readonly (string | undefined)[]) => orNotSupplied(texts.filter(Boolean).join('; '), words)
  return {
    kind: 'facts',
    caption: w.contractor,
    rows: [
      { label: words.binder.cover.installer, value: joined(named(/installer|contractor/iu)) },
      { label: w.responsible, value: joined(named(/maintainer/iu)) },
      { label: w.shutOff, value: joined(site.supplies.map(one => one.shutOff)) },
      { label: w.suppliers, value: joined(suppliers) }
    ]
  }
}
