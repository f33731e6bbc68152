import type { At } from '../diagnostics/finding.ts'
import type { Contact, PrivateWord } from '../model/site.ts'
import type { FrontMatter } from './front-matter.ts'
import { below } from './schema/made.ts'

/** Every word under a `private:` key of a file, at any depth, each under the name of the key nearest above it. */
export function privateWordsOf(front: FrontMatter): PrivateWord[] {
  const top: At = { file: front.lines.file, path: [] }
  return front.sound ? wordsIn(front.data, top, undefined) : []
}

/** Phone and email of a contact that is not marked public. */
export function privateContactWords(contacts: readonly Contact[]): PrivateWord[] {
  return contacts
    .filter(contact => !contact.public)
    .flatMap(contact => [
      ...(contact.phone === undefined ? [] : [{ at: below(contact.at, 'phone'), label: 'phone', text: contact.phone }]),
      ...(contact.email === undefined ? [] : [{ at: below(contact.at, 'email'), label: 'email', text: contact.email }])
    ])
}

/** `label` is undefined outside any `private:` key. */
function wordsIn(value: unknown, at: At, label: string | undefined): PrivateWord[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => wordsIn(item, below(at, index), label))
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, inner]) => {
      const within = label !== undefined ? key : key === 'private' ? 'private' : undefined
      return wordsIn(inner, below(at, key), within)
    })
  }
  const word = typeof value === 'string' || typeof value === 'number' ? String(value).trim() : ''
  return label === undefined || word === '' ? [] : [{ at, label, text: word }]
}
