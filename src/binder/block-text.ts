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
  return textsIn(block).join('\n')
}

function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(textsIn)
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => (UNREAD.has(key) ? [] : textsIn(inner)))
}
