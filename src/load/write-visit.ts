import { isDeepStrictEqual } from 'node:util'
import { stringify } from 'yaml'
import { readFrontMatter } from './front-matter.ts'
import { KEYS_OF } from './schema/record.ts'

/** The keys of a visit as plain values, as the front matter of a file gives them. */
export type VisitData = Readonly<Record<string, unknown>>

/**
 * A visit as the text of its file: keys in the order of the manual, one line for each record. It is read back before it is handed out, so no
 * text that somebody typed can mean anything but itself.
 */
export function visitText(data: VisitData, comment?: string): string {
  const order = KEYS_OF.get('a visit') ?? []
  const keys = [...order.filter(key => isStated(data[key])), ...Object.keys(data).filter(key => !order.includes(key))]
  const lines = keys.flatMap(key => keyLines(key, data[key]))
  const text = `---\n${comment === undefined ? '' : `# ${comment.replace(/\s+/gu, ' ')}\n`}${lines.join('\n')}\n---\n`
  const back = readFrontMatter({ file: '', text })
  const stated = Object.fromEntries(keys.map(key => [key, data[key]]))
  if (!back.sound || !isDeepStrictEqual(back.data, stated))
    throw new Error(`the visit does not read back as it was given: ${JSON.stringify(stated)}`)
  return text
}

function isStated(value: unknown): boolean {
  return value !== undefined && value !== null && !(Array.isArray(value) && value.length === 0)
}

function keyLines(key: string, value: unknown): string[] {
  if (!Array.isArray(value)) return [`${key}: ${flow(value)}`]
  return [`${key}:`, ...value.map(item => `  - ${flow(item)}`)]
}

/** One line; text is plain where it may be. */
function flow(value: unknown): string {
  const inside = typeof value === 'object' ? { collectionStyle: 'flow' as const } : {}
  const text = stringify(value, { ...inside, lineWidth: 0, defaultStringType: 'PLAIN' }).trim()
  return text.includes('\n') || /^[-&*!|>%@`]/u.test(text) ? JSON.stringify(value) : text
}
