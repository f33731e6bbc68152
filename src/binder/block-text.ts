import type { Block } from './blocks.ts'

/** Keys whose text is for a program or a drawing and is not read. */
const UNREAD = new Set([
  'kind',
  'figure',
  'standing',
  'state',
  'id',
  'file',
  'url',
  'qr',
  'targets',
  'code',
  'sheet',
  'blank'
])

/** All words of a block that a reader sees, a line each. */
export function textOf(block: Block): string {
  const texts: string[] = []
  gather(block, texts)
  return texts.join('\n')
}

/** Into one list, since a binder has some ten thousand texts. */
function gather(value: unknown, into: string[]): void {
  if (typeof value === 'string') into.push(value)
  else if (Array.isArray(value)) for (const one of value) gather(one, into)
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) if (!UNREAD.has(key)) gather(inner, into)
}
