import type { Block } from './blocks.ts'
import type { PageContext } from './context.ts'
import { orNotSupplied, stated } from './values.ts'

/** What the signal words, symbols and signs mean, before the first of them. */
export function safetyWords({ site, words }: PageContext): Block {
  const w = words.handover.safety
  const { signals } = words.cautions
  return {
    kind: 'facts',
    caption: w.words,
    rows: [
      { label: signals.DANGER, value: stated(w.danger) },
      { label: signals.WARNING, value: stated(w.warning) },
      { label: signals.CAUTION, value: stated(w.caution) },
      { label: signals.NOTICE, value: stated(w.notice) },
      { label: w.symbol, value: stated(w.symbolText) },
      { label: w.signs, value: stated(w.signsText) },
      { label: w.place, value: stated(w.placeText) },
      { label: w.tags, value: stated(w.tagsText) },
      { label: w.road, value: stated(site.workRules.road === false ? w.roadNone : w.roadText) },
      { label: w.posted, value: orNotSupplied(site.closeout?.installation?.posted, words) }
    ]
  }
}
