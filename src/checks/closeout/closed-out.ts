import type { Closeout } from '../../model/closeout.ts'
import type { Site } from '../../model/site.ts'

/**
 * The closeout of a site that is being handed over: accepted, or said to be closed out. Undefined for a site in service without such data:
 * there the list of what is not supplied tells it.
 */
export function closedOut({ closeout, status }: Site): Closeout | undefined {
  return closeout !== undefined && (closeout.acceptance !== undefined || status === 'closed-out') ? closeout : undefined
}

/** "a, b and c". */
export function joined(parts: readonly string[]): string {
  const last = parts.at(-1) ?? ''
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`
}
