import type { Block, Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { findingGroups } from '../finding-groups.ts'

export function openItemsSection({ findings, words }: PageContext): Section {
  const w = words.binder.open
  const groups = findingGroups(findings, words)
  return {
    id: 'open-items',
    title: words.binder.sections.open,
    newPage: false,
    blocks:
      groups.length === 0
        ? [{ kind: 'paragraph', text: w.none }]
        : [
            { kind: 'paragraph', text: w.lead },
            ...(w.inEnglish ? [{ kind: 'paragraph' as const, text: w.inEnglish }] : []),
            ...groups.flatMap<Block>(({ first, alike }) => [
              first,
              ...(alike ? [{ kind: 'paragraph' as const, text: alike }] : [])
            ])
          ]
  }
}
