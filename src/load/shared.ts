import type { SourceText } from './loaded.ts'
import { readFrontMatter } from './front-matter.ts'
import type { FrontMatter } from './front-matter.ts'

const known = new WeakMap<SourceText, FrontMatter>()

/** A shared file, parsed once however many sites lead to it. */
export function sharedFrontMatter(source: SourceText): FrontMatter {
  const parsed = known.get(source) ?? readFrontMatter(source)
  known.set(source, parsed)
  return parsed
}

/** The shared file that a path leads to: "_shared/sheets/four-station.md" is "sites/_shared/sheets/four-station.md". */
export function findShared(shared: readonly SourceText[], path: string): SourceText | undefined {
  const wanted = path.trim().replace(/^(?:\.{1,2}\/)+/u, '')
  return shared.find(({ file }) => file === wanted || file.endsWith(`/${wanted}`))
}

/** The path by which a site leads to a shared file. */
export function sharedPath(file: string): string {
  const start = file.lastIndexOf('_shared/')
  return start < 0 ? file : file.slice(start)
}
