import type { Section, WorkingBlock } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import { citeIn } from '../cite.ts'
import { readingWorkings } from '../expected-readings.ts'
import { rangeOf } from '../range.ts'
import { groupBy } from '../../base/collections.ts'
import { CALCULATIONS } from '../../domain/list.ts'

/** How the numbers were made: each calculation that this binder used, with its working for each subject. */
export function numbersSection(context: PageContext): Section {
  const { plan, words } = context
  const w = words.binder.numbers
  const workings = [
    ...groupBy([...plan.workings, ...readingWorkings(context)], one => one.calculation)
  ].flatMap<WorkingBlock>(([name, all]) => {
    const card = CALCULATIONS.find(one => one.name === name)
    if (!card) return []
    return [
      {
        kind: 'working',
        name,
        title: card.title,
        does: card.does,
        steps: [...groupBy(all, one => one.steps.join('\n')).values()].map(alike => ({
          subject: rangeOf(alike.map(one => one.subject)),
          lines: alike[0]?.steps ?? []
        })),
        sources: card.sources.map(id => citeIn(id, words.cautions)),
        ...(card.limits ? { limits: card.limits } : {})
      }
    ]
  })
  return {
    id: 'numbers',
    title: words.binder.sections.numbers,
    newPage: true,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      ...(w.inEnglish ? [{ kind: 'paragraph', text: w.inEnglish } as const] : []),
      ...(workings.length > 0 ? workings : [{ kind: 'paragraph', text: w.noWorkings } as const])
    ]
  }
}
