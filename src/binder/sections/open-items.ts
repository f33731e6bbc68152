import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { findingBlock } from '../finding-block.ts'
import { SEVERITIES } from '../../diagnostics/finding.ts'

export function openItemsSection({ findings, words }: PageContext): Section {
  const w = words.binder.open
  const sorted = SEVERITIES.flatMap(severity => findings.filter(one => one.severity === severity))
  return {
    id: 'open-items',
    title: words.binder.sections.open,
    newPage: true,
    blocks:
      sorted.length === 0
        ? [{ kind: 'paragraph', text: w.none }]
        : [{ kind: 'paragraph', text: w.lead }, ...sorted.map(finding => findingBlock(finding, words))]
  }
}
