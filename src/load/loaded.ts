import type { At, Place } from '../diagnostics/finding.ts'
import type { Site } from '../model/site.ts'

/** A file as read: the path that messages print ("sites/kestrel-cross/site.md") and its text. */
export interface SourceText {
  readonly file: string
  readonly text: string
  /** What hindered the reading of a file that is there; its text is empty then. */
  readonly trouble?: ReadTrouble
}

/** Bytes that are no UTF-8, no right to read, links that lead in a ring or nowhere, a folder or a device where a file is due, a disk that fails. */
export type ReadTrouble = 'encoding' | 'right' | 'link' | 'no-file' | 'disk'

/**
 * Something in a file that could not be taken as written. The words are the check's: `checks/<code>.ts` turns a fault into a
 * finding. `details` carries what the words need: the key as written, the nearest known key, the number, the kind expected.
 */
export interface Fault {
  readonly code: string
  readonly subject: string
  readonly place: Place
  readonly details: Readonly<Record<string, string | number | boolean | readonly string[]>>
  /** True where the site cannot be understood without it; such a site is not built. */
  readonly fatal: boolean
  readonly related?: readonly { readonly place: Place; readonly note: string }[]
}

export interface LoadedSite {
  readonly id: string
  /** Undefined where the file cannot be understood; the faults say why. */
  readonly site?: Site
  readonly faults: readonly Fault[]
  /** Line and column of a fact. A path whose last keys are not written resolves to the nearest one that is. */
  readonly locate: (at: At) => Place
}
