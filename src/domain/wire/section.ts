import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { WireSize } from '../../units/wire-size.ts'
import { ambiguousReason } from './ambiguous-reason.ts'
import { awgAreaMm2, circleAreaMm2 } from './awg.ts'

/** Metal area of a size in mm². A pair counts by its gauge; a bare "mm" is absent, with the reason. */
export function sectionMm2(size: WireSize): Maybe<number> {
  switch (size.kind) {
    case 'awg':
    case 'pair':
      return awgAreaMm2(size.gauge)
    case 'area':
      return size.mm2
    case 'diameter':
      return circleAreaMm2(size.mm)
    case 'ambiguous':
      return absent(ambiguousReason(size.mm))
  }
}
