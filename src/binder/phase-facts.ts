import { showStated } from '../units/show.ts'
import type { Phase } from '../model/site.ts'
import type { Block } from './blocks.ts'
import type { PageContext } from './context.ts'
import { notSupplied, orNotSupplied, stated } from './values.ts'

/** Establishment, the established landscape, what is temporary, and how the planting is weaned from one to the next. */
export function phaseFacts({ site, words }: PageContext): Block {
  const w = words.handover.phases
  const named = [
    ...(site.phases ?? []).map(phase => ({ of: w.all, phase })),
    ...site.stations.flatMap(({ zone, phases }) => (phases ?? []).map(phase => ({ of: zone, phase })))
  ]
  const told = (name: Phase['name']) =>
    named
      .filter(({ phase }) => phase.name === name)
      .map(({ of, phase }) => [of, w.span(phase.from, phase.to), share(phase)].filter(Boolean).join(', '))
      .join('; ')
  const changes = named.flatMap(({ of, phase }) =>
    phase.name === 'establishment' && phase.to !== undefined ? [w.weaned(of, phase.to)] : []
  )
  const isTold = named.length > 0
  return {
    kind: 'facts',
    caption: w.title,
    rows: [
      { label: w.establishment, value: orNotSupplied(told('establishment'), words) },
      { label: w.established, value: stated(told('established') || w.asProgrammed) },
      {
        label: w.temporary,
        value: isTold ? stated(told('temporary') || words.handover.installed.none) : notSupplied(words)
      },
      { label: w.weaning, value: orNotSupplied(changes.join('; '), words) }
    ]
  }
}

function share({ factor, percent }: Phase): string | undefined {
  return percent ? showStated(percent) : factor === undefined ? undefined : String(factor)
}
