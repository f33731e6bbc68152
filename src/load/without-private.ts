import { isMap, isPair, isScalar, isSeq, parseDocument, visit } from 'yaml'
import type { YAMLMap } from 'yaml'
import { isTooDeep } from './yaml/parse.ts'

const FRONT = /^\uFEFF?---[ \t]*\r?\n([\s\S]*?\n)---[ \t]*(\r?\n|$)/u
const PERSONAL = ['phone', 'email', 'address']

/**
 * The text of a site, visit or shared file without what only the restricted sheet may show: everything under a `private:` key, and phone, email
 * and address of a contact that is not public. Comments of the front matter go too, since anybody may have noted a code there; so may the prose,
 * which is looked through afterwards.
 */
export function withoutPrivate(text: string): string {
  const match = FRONT.exec(text)
  if (!match) return text
  const [whole, front = ''] = match
  // Keys that cannot be read may hold anything.
  if (isTooDeep(front)) return `---\n---\n${text.slice(whole.length)}`
  const document = parseDocument(front, { version: '1.2' })
  visit(document, {
    Pair: (_, pair) => (isScalar(pair.key) && pair.key.value === 'private' ? visit.REMOVE : undefined),
    Node: (_, node) => {
      node.comment = null
      node.commentBefore = null
    }
  })
  document.comment = null
  document.commentBefore = null
  const contacts = document.get('contacts')
  if (isSeq(contacts)) for (const one of contacts.items) if (isMap(one) && !isPublic(one)) forget(one)
  return `---\n${document.toString({ lineWidth: 0 })}---\n${text.slice(whole.length)}`
}

const isPublic = (contact: YAMLMap): boolean => /^(?:yes|true)$/iu.test(String(contact.get('public') ?? ''))

function forget(contact: YAMLMap): void {
  contact.items = contact.items.filter(
    pair => !(isPair(pair) && isScalar(pair.key) && PERSONAL.includes(String(pair.key.value)))
  )
}
