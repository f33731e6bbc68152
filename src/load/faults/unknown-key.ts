import type { Fault } from '../loaded.ts'
import type { FrontMatter } from '../front-matter.ts'
import { dateSplitByComma, splitByComma } from '../improve/comma.ts'
import { dateWrong } from '../improve/date.ts'
import { otherNumber } from '../improve/number-form.ts'
import { nearestKey } from '../improve/key.ts'
import { oneLine } from '../one-line.ts'
import { placeOf, placeOfKey, writtenAt } from '../place.ts'
import { KEYS_OF, unpackNote } from '../schema/record.ts'
import { corrected } from './corrected.ts'
import { fatalFault } from './fault.ts'
import type { Details } from './fault.ts'
import { shortened } from './fragment.ts'
import { subjectOf } from './subject.ts'

type Path = readonly (string | number)[]

/** A key that no schema has: a slip, a key in the wrong place, a missing colon, or half of a number or a date that its comma cuts in two. */
export function unknownKey(front: FrontMatter, path: Path, key: string, note: string): Fault {
  const full = [...path, key]
  const subject = subjectOf(front.data, full)
  const comma = splitByComma(front, path, key)
  if (comma) {
    const whole = [...path, comma.key]
    const written = comma.value.replace('.', ',')
    const wrong = otherNumber(written)
    const details: Details = {
      cut: true,
      written: `${comma.key}: ${written}`,
      ...(wrong?.details ?? { corrected: corrected(front, whole, comma.value) })
    }
    return fatalFault('file/decimal-comma', subject, placeOf(front, whole), details)
  }
  const day = dateSplitByComma(front, path, key)
  if (day) {
    const whole = [...path, day.key]
    const { code, details, value } = dateWrong(day.value)
    const fixed: Details = value === undefined ? {} : { corrected: corrected(front, whole, value) }
    const written = `${day.key}: ${day.value}`
    return fatalFault(code, subject, placeOf(front, whole), { key: day.key, ...details, written, ...fixed, cut: true })
  }
  return fatalFault('file/unknown-key', subject, placeOfKey(front, full), unknownDetails(front, full, key, note))
}

function unknownDetails(front: FrontMatter, full: Path, key: string, note: string): Details {
  const { what, keys } = unpackNote(note)
  const value = writtenAt(front, full) ?? ''
  const base = { key, what, known: keys }
  const [first = '', ...rest] = key.split(/\s+/u)
  if (value === '' && rest.length > 0 && keys.includes(first))
    return { ...base, colon: true, corrected: `${first}: ${rest.join(' ')}` }
  const seen = oneLine(key)
  if (seen !== key && keys.includes(seen)) return { ...base, key: seen, unseen: true, nearest: seen }
  const near = nearestKey(key, keys)
  const isLine = value !== '' && placeOfKey(front, full).text.includes(value)
  if (near !== undefined)
    return { ...base, nearest: near, ...(isLine ? { corrected: `${near}: ${shortened(value)}` } : {}) }
  return { ...base, belongs: [...KEYS_OF].filter(([, others]) => others.includes(key)).map(([name]) => name) }
}
