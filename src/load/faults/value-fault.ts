import type { Fault } from '../loaded.ts'
import type { FrontMatter } from '../front-matter.ts'
import { inSystem } from '../improve/system.ts'
import { placeOf } from '../place.ts'
import type { Wrong } from '../schema/field.ts'
import { corrected } from './corrected.ts'
import { fatalFault } from './fault.ts'
import type { Details } from './fault.ts'
import { entryOf, fragment, keyOf, under } from './fragment.ts'
import { subjectOf } from './subject.ts'

/** A value that could not be taken, with what to write instead where that is known. */
export function valueFault(front: FrontMatter, path: readonly (string | number)[], found: Wrong): Fault {
  const wrong = inSystem(found, front.data['units'])
  const details: Details = {
    key: keyOf(path),
    written: fragment(front, path),
    under: under(path),
    ...entryOf(path),
    ...wrong.details,
    ...(wrong.value === undefined ? {} : { corrected: corrected(front, path, wrong.value) })
  }
  return fatalFault(wrong.code, subjectOf(front.data, path), placeOf(front, path), details)
}
