import type { PageContext } from '../binder/context.ts'
import type { LabelWish } from '../binder/make-labels.ts'
import type { SourceText } from '../load/loaded.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import type { IsoDate } from '../units/date.ts'
import type { SiteSources } from './read-fleet.ts'

/** Everything that shapes the outputs of one site, as plain data: it can be handed to another process, and hashed. */
export interface SiteUnit {
  readonly sources: SiteSources
  /** Lines of the register that are about this site or about a tag that it carries. */
  readonly register: readonly RegisteredTag[]
  /** Other sites that carry one of its tags. */
  readonly rivals: readonly SiteSources[]
  readonly prints: PageContext['prints']
  readonly labelWish?: LabelWish
  /** Hash of all of the above, the shared files it leads to, the day and the program. */
  readonly key: string
}

/** What holds for every site of a build. */
export interface SharedWork {
  readonly on: IsoDate
  readonly publicAddress: string
  readonly shared: readonly SourceText[]
  readonly registerGone: boolean
  readonly mark: string
}
