import type { Contact, Site } from './site.ts'

/** A contact that the site file marks "public: yes". */
export interface PublicContact extends Contact {
  readonly public: true
}

/**
 * What a page that anybody can open is made from. It has no room for a private value: no private words, no contact that is not marked public,
 * none of the office's prose, and nothing of the company but what a contact says. `makePublic` is the only way to one.
 */
export interface PublicSite extends Omit<Site, 'privateWords' | 'contacts' | 'prose' | 'company'> {
  readonly privateWords: readonly []
  readonly contacts: readonly PublicContact[]
  readonly prose: readonly []
  readonly company?: never
}

export function makePublic(site: Site): PublicSite {
  const { company: _company, ...rest } = site
  return { ...rest, privateWords: [], prose: [], contacts: site.contacts.filter(isPublic) }
}

function isPublic(contact: Contact): contact is PublicContact {
  return contact.public
}
