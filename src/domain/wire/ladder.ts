import { isPresent } from '../../base/absent.ts'
import type { WireSize } from '../../units/wire-size.ts'
import { sectionMm2 } from './section.ts'

/** Sizes that field wire is sold in, thinnest first (common practice, no source). */
export const METRIC_LADDER: readonly WireSize[] = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10].map(mm2 => ({ kind: 'area', mm2 }))
export const AWG_LADDER: readonly WireSize[] = [20, 18, 16, 14, 12, 10, 8].map(gauge => ({ kind: 'awg', gauge }))

export const isGauge = (size: WireSize): boolean => size.kind === 'awg' || size.kind === 'pair'

/** The size itself and every thicker one of its ladder, thinnest first. */
export function ladderFrom(size: WireSize): readonly WireSize[] {
  const least = sectionMm2(size)
  if (!isPresent(least)) return []
  const ladder = isGauge(size) ? AWG_LADDER : METRIC_LADDER
  return [size, ...ladder.filter(step => (sectionMm2(step) as number) > least * 1.001)]
}
