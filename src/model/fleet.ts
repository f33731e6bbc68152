import type { Recorded, Site } from './site.ts'
import type { IsoDate } from '../units/date.ts'

export const TAG_STATES = ['live', 'moved', 'retired', 'replaced'] as const
export type TagState = (typeof TAG_STATES)[number]

/** A line of the register. A tag that was issued stays in it for good. */
export interface RegisteredTag extends Recorded {
  readonly tag: string
  readonly site: string
  readonly box: string
  readonly state: TagState
  readonly issued?: IsoDate
  /** The tag that answers instead, where `state` is "replaced"; where the box went, where it is "moved". */
  readonly now?: string
}

export interface Fleet {
  readonly sites: readonly Site[]
  readonly register: readonly RegisteredTag[]
  /** No line of it could be read: that is told once, not at each box. */
  readonly registerGone?: boolean
}
