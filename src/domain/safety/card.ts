import type { Maybe } from '../../base/absent.ts'
import type { SourceId } from '../../reference/sources.ts'
import type { SafetyFacts } from './facts.ts'
import type { Region } from './region.ts'

/**
 * ANSI Z535.6 grading: DANGER will kill or seriously injure if not avoided, WARNING could, CAUTION could injure in a minor or moderate way,
 * NOTICE is about property alone. Worst first.
 */
export const SIGNALS = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const
export type Signal = (typeof SIGNALS)[number]

/** Standards and codes by where they hold; `everywhere` holds where the region has none of its own. */
export type Editions = Readonly<Partial<Record<Region | 'everywhere', readonly SourceId[]>>>

/** The header of a caution. Its sentences stand in the words; this says when it is chosen and what it rests on. */
export interface CautionCard<Id extends string = string> {
  readonly id: Id
  readonly signal: Signal
  /** Why this signal word and no other. */
  readonly graded: string
  /** `site` stands at the front of the binder; `step` stands there and again inside the task it belongs to. */
  readonly scope: 'site' | 'step'
  /** 1 is the worst of its signal word. */
  readonly rank: number
  /** True where it can hurt somebody who kneels at an open box, or the kit in it: such lines may stand on a box page. */
  readonly atBox: boolean
  /** Why the facts call for it, as a sentence; absent with the reason why they do not. */
  readonly applies: (facts: SafetyFacts) => Maybe<string>
  readonly editions: Editions
  /** Facts that call for it and, where such exist, facts that do not; each stands on top of `NOTHING_KNOWN`. */
  readonly worked: { readonly example: Partial<SafetyFacts>; readonly instead?: Partial<SafetyFacts> }
}

/** Keeps the id as a literal type, so that the list of cautions knows its own ids. */
export function caution<const Id extends string>(card: CautionCard<Id>): CautionCard<Id> {
  return card
}

export interface EditionsHere {
  readonly sources: readonly SourceId[]
  /** True where the codes are those of another country and stand as an example. */
  readonly example: boolean
}

/** The codes to name at a place: its own, else what holds everywhere, else those of the United States as an example. */
export function editionsHere(editions: Editions, region: Region | undefined): EditionsHere {
  const own = region ? editions[region] : undefined
  if (own) return { sources: own, example: false }
  if (editions.everywhere) return { sources: editions.everywhere, example: false }
  return { sources: editions.US ?? [], example: true }
}
