import type { AttachmentBlock, Block } from './blocks.ts'
import type { PageContext } from './context.ts'

/** A file that is bound in, as it was found. */
export interface AttachedFile {
  readonly picture: boolean
  /** One for each page. */
  readonly pages: readonly { readonly wide: boolean }[]
}

/** Where attachments stand, below the pages of their site. */
export const ATTACHMENTS = 'attachments'

/** Files that the closeout names, each once. */
export function attachmentFiles({ closeout }: PageContext['site']): string[] {
  if (!closeout) return []
  const { recordDrawings, tests, training, signOffs } = closeout
  const named = [...recordDrawings, ...tests, ...training, ...signOffs].flatMap(({ file }) => (file ? [file] : []))
  return [...new Set(named)]
}

/** The pages of attached files, each on a page of its own. What is not there, or cannot be read, says so. */
export function attachmentBlocks(
  { attachments, words }: PageContext,
  named: readonly { readonly title: string; readonly file?: string }[]
): Block[] {
  if (!attachments) return []
  const w = words.closeout.attachments
  return named.flatMap<Block>(({ title, file }) => {
    if (file === undefined) return []
    const found = attachments.get(file)
    if (!found) return [{ kind: 'not-supplied', text: w.notThere(title, file) }]
    return found.pages.map<AttachmentBlock>(({ wide }, index) => ({
      kind: 'attachment',
      file: `${ATTACHMENTS}/${file}`,
      picture: found.picture,
      page: index + 1,
      wide,
      caption: w.caption(title, file, index + 1, found.pages.length)
    }))
  })
}
