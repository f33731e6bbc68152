import type { OutputFile } from './output-stage.ts'

/** Pages that are shown before a build has written them. */
export interface PagesAhead {
  readonly put: (pages: readonly OutputFile[]) => void
  readonly find: (path: string) => Uint8Array | undefined
  /** Of the newest pages. A build that begins now reads what they were made from. */
  readonly round: () => number
  /** Lets go of pages of this round and of those before. */
  readonly forget: (round: number) => void
}

export function pagesAhead(): PagesAhead {
  const pages = new Map<string, { readonly bytes: Uint8Array; readonly round: number }>()
  let round = 0
  return {
    put: files => {
      round += 1
      for (const { path, content } of files)
        pages.set(path, { bytes: typeof content === 'string' ? Buffer.from(content, 'utf8') : content, round })
    },
    find: path => pages.get(path)?.bytes,
    round: () => round,
    forget: last => {
      for (const [path, one] of pages) if (one.round <= last) pages.delete(path)
    }
  }
}
