import type { BoxPage, BoxPageScript } from '../binder/pages.ts'
import type { ScriptWords } from './words.ts'

/** What the page hands to its script, src/render/box-script-data.ts. */
export interface PageData extends BoxPageScript {
  readonly tag: string
  readonly box: string
  readonly site: string
  readonly words: ScriptWords
  readonly shapes: Readonly<Record<string, string>>
  readonly offline?: BoxPage['offline']
}
