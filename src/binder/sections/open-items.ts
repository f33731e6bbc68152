import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { findingBlock } from '../finding-block.ts'
import { groupBy } from '../../base/collections.ts'
import { SEVERITIES } from '../../diagnostics/finding.ts'
import type { Finding } from '../../diagnostics/finding.ts'
import type { Words } from '../../words/words.ts'

/** More than this many of one code are told once, with the names of the others below. */
const FOLD_ABOVE = 4

export function openItemsSection({ findings, words }: PageContext): Section {
  const w = words.binder.open
  const sorted = SEVERITIES.flatMap(severity => findings.filter(one => one.severity === severity))
  const groups = [...groupBy(sorted, one => `${one.severity} ${one.code}`).values()]
  return {
    id: 'open-items',
    title: words.binder.sections.open,
    newPage: true,
    blocks:
      sorted.length === 0
        ? [{ kind: 'paragraph', text: w.none }]
        : [{ kind: 'paragraph', text: w.lead }, ...groups.flatMap(group => groupBlocks(group, words))]
  }
}

function groupBlocks(group: readonly Finding[], words: Words): Block[] {
  const [first, ...others] = group
  if (!first) return []
  if (group.length <= FOLD_ABOVE) return group.map(finding => findingBlock(finding, words))
  const names = others.map(one => one.subject || one.place.file)
  return [findingBlock(first, words), { kind: 'paragraph', text: words.binder.open.alike(first.code, names) }]
}
