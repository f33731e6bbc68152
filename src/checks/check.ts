import type { At, Severity } from '../diagnostics/finding.ts'
import type { Fleet } from '../model/fleet.ts'
import type { Site } from '../model/site.ts'
import type { Fault } from '../load/loaded.ts'
import type { Plan } from '../plan/plan.ts'
import type { SourceId } from '../reference/sources.ts'
import type { IsoDate } from '../units/date.ts'

/** The header of a check: what `explain`, the manual and the tests read. */
export interface CheckCard {
  /** Path of the file below checks/: "wire/loop-over-limit". */
  readonly code: string
  readonly severity: Severity
  /** One sentence: what it looks at. */
  readonly looksAt: string
  /** Why it matters, in the words of the trade. */
  readonly why: string
  readonly sources: readonly SourceId[]
  /** What to do, in general. A finding's own fix names the figures. */
  readonly fix: string
  /**
   * A worked case, run by a test: top-level keys of a site file, in YAML, that replace those of the test's base site. `example` makes the
   * check fire, `instead` keeps it quiet.
   */
  readonly worked: { readonly on?: string; readonly example: string; readonly instead: string }
}

export interface CheckContext {
  readonly site: Site
  readonly plan: Plan
  readonly fleet: Fleet
  readonly on: IsoDate
}

export interface Reported {
  readonly subject: string
  readonly at: At
  readonly message: string
  /** Left out: the card's own reason. */
  readonly why?: string
  readonly fix: string
  readonly values?: Readonly<Record<string, number | string>>
  readonly severity?: Severity
  readonly sources?: readonly SourceId[]
  readonly related?: readonly { readonly at: At; readonly note: string }[]
}

export type Report = (reported: Reported) => void

/** A check of the facts and figures of one site. */
export interface SiteCheck {
  readonly card: CheckCard
  readonly run: (context: CheckContext, report: Report) => void
}

/** A check whose looking is done while a file is read; here it gets its words. */
export interface FileCheck {
  readonly card: CheckCard
  readonly word: (fault: Fault) => {
    readonly message: string
    readonly why?: string
    readonly fix: string
    readonly values?: Readonly<Record<string, number | string>>
  }
}

export type Check = SiteCheck | FileCheck
