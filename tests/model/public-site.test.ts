import { describe, expect, it } from 'vitest'
import type { PublicContext } from '../../src/binder/context.ts'
import { makePublic } from '../../src/model/public-site.ts'
import type { PublicSite } from '../../src/model/public-site.ts'
import type { PrivateWord, Site } from '../../src/model/site.ts'
import { bareSite } from '../support/bare-site.ts'

const at = { file: 'site.md', path: [] }
const word: PrivateWord = { at, label: 'keys', text: 'depot locker 14, code 7719' }
const full: Site = {
  ...bareSite(),
  privateWords: [word],
  prose: [{ at, title: 'Keys', level: 2, markdown: 'code 7719' } as unknown as Site['prose'][number]],
  contacts: [
    { at, role: 'owner', name: 'Harrow Mere Council', public: true },
    { at, role: 'foreman', name: 'M. Example', phone: '+44 1632 960 999', public: false }
  ]
}

/** Read by the compiler, which takes each line marked so for a fault if it is none: what they try cannot be written. */
export function proofs(site: Site, shared: PublicSite): unknown[] {
  // @ts-expect-error a site with private words is no public site
  const whole: PublicSite = site
  // @ts-expect-error there is no room for a private word
  const words: PublicSite = { ...shared, privateWords: [word] }
  // @ts-expect-error a contact that is not public has no place in it
  const contacts: PublicSite = { ...shared, contacts: [{ at, role: 'foreman', public: false }] }
  // @ts-expect-error nor has the office's prose
  const prose: PublicSite = { ...shared, prose: site.prose }
  // @ts-expect-error and a page is not made from a site as it was read
  const context: Pick<PublicContext, 'site'> = { site }
  return [whole, words, contacts, prose, context]
}

describe('a public site', () => {
  it('holds nothing private, wherever it stood', () => {
    const text = JSON.stringify(makePublic(full))
    expect(text).not.toMatch(/7719|locker|960 999|foreman/u)
    expect(text).toContain('Harrow Mere Council')
  })

  it('is otherwise the site', () => {
    expect(makePublic(full).boxes).toBe(full.boxes)
  })
})
