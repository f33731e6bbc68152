import type { FindingBlock } from './blocks.ts'
import { findingBlock } from './finding-block.ts'
import { groupBy } from '../base/collections.ts'
import { SEVERITIES } from '../diagnostics/finding.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { Words } from '../words/words.ts'

/** More than this many of one code are told once, with the names of the others below. */
const FOLD_ABOVE = 4

export interface FindingGroup {
  readonly first: FindingBlock
  /** "The same holds for 18 more: Z2, Z3 …". */
  readonly alike?: string
}

/** Findings of one site for print: errors first, many alike told once. */
export function findingGroups(findings: readonly Finding[], words: Words): FindingGroup[] {
  const sorted = SEVERITIES.flatMap(severity => findings.filter(one => one.severity === severity))
  const groups = [...groupBy(sorted, one => `${one.severity} ${one.code}`).values()]
  return groups.flatMap<FindingGroup>(group => {
    const [first, ...others] = group
    if (!first) return []
    if (group.length <= FOLD_ABOVE) return group.map(finding => ({ first: findingBlock(finding, words) }))
    const names = others.map(one => one.subject || one.place.file)
    return [{ first: findingBlock(first, words), alike: words.binder.open.alike(first.code, names) }]
  })
}
