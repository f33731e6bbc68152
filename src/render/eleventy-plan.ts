/** One page to be rendered: where it goes, by which template, from which plain object. */
export interface PagePlan {
  /** Below the output folder, with forward slashes: "public/B/7KQ3F9X/index.html". */
  readonly path: string
  /** File name in templates/pages without its ending: "box-page". */
  readonly template: string
  /** Everything the template prints; it sees this as `view`. */
  readonly data: object
  /** What the page stands for, for messages: "sites/quay-street/site.md, VB2". */
  readonly from?: string
}

/**
 * What is wrong with the planned paths, in words: a path that leaves the output folder, two pages on one path. Paths that differ
 * only in case are one path on many disks and hosts.
 */
export function planFaults(pages: readonly PagePlan[]): string[] {
  const taken = new Map<string, PagePlan>()
  return pages.flatMap(page => {
    if (!isPlainPath(page.path)) return [`"${page.path}" is no path below the output folder (${origin(page)}).`]
    const other = taken.get(page.path.toLowerCase())
    if (other) return [`${page.path} is planned twice: by ${origin(other)}, and by ${origin(page)}.`]
    taken.set(page.path.toLowerCase(), page)
    return []
  })
}

export function isPlainPath(path: string): boolean {
  return (
    path !== '' && !/[\\:\0]/u.test(path) && path.split('/').every(part => part !== '' && part !== '.' && part !== '..')
  )
}

function origin({ template, from }: PagePlan): string {
  return from ? `${template} for ${from}` : template
}
