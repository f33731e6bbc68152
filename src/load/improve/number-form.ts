import { wrong } from '../schema/field.ts'
import type { Wrong } from '../schema/field.ts'

/** Ways of writing a number that are not taken, each with what to write instead: 1,200 ft, 1 284 m³, 1/2 in, 6½ ft, 5' 6". */
export function otherNumber(text: string): Wrong | undefined {
  const plain = text.replace(/[½¼¾]/gu, one => ` ${VULGAR[one]}`).trim()
  return thousands(text) ?? parted(text) ?? fraction(plain) ?? feetAndInches(text)
}

const VULGAR: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4' }

/** Thousands parted by spaces, apostrophes, or by points before a decimal comma. */
function parted(text: string): Wrong | undefined {
  const [, first = '', groups, rest = ''] =
    /^([+-]?[1-9]\d{0,2})((?:[\s\u00a0\u202f'\u2019]\d{3})+)(?!\d)(.*)$/u.exec(text) ??
    /^([+-]?[1-9]\d{0,2})((?:\.\d{3})+)(,\d+.*)$/u.exec(text) ??
    []
  if (groups === undefined) return undefined
  const whole = `${first}${groups.replace(/\D/gu, '')}${rest.replace(/^,/u, '.')}`
  return wrong('file/not-understood', { expected: 'a number whose digits stand together' }, whole)
}

/** A comma before exactly three digits is thousands to one reader and decimals to another: both are offered, neither is taken. */
function thousands(text: string): Wrong | undefined {
  const match = /^([+-]?\d{1,3})((?:,\d{3})+)(?!\d)(.*)$/u.exec(text)
  if (!match) return undefined
  const [, first = '', groups = '', rest = ''] = match
  const whole = `${first}${groups.replaceAll(',', '')}${rest}`
  if (groups.length > 4) return wrong('file/decimal-comma', {}, whole)
  return wrong('file/decimal-comma', { thousands: whole, decimal: `${first}${groups.replace(',', '.')}${rest}` })
}

function fraction(text: string): Wrong | undefined {
  const match = /^(?:(\d+)[ -])?(\d+)\/([1-9]\d*)(?=\D|$)(.*)$/u.exec(text)
  if (!match) return undefined
  const value = Number(match[1] ?? 0) + Number(match[2]) / Number(match[3])
  return wrong(
    'file/not-understood',
    { expected: 'a number without a fraction' },
    `${Number(value.toFixed(4))}${match[4]}`
  )
}

function feetAndInches(text: string): Wrong | undefined {
  const match =
    /^(\d+)\s*(?:['\u2019\u2032]|ft|feet|foot)\.?\s*-?\s*(\d+(?:\.\d+)?)\s*(?:["\u201d\u2033]|in\.?|inch(?:es)?|''|\u2019\u2019)?$/u.exec(
      text
    )
  if (!match) return undefined
  const feet = Number(match[1]) + Number(match[2]) / 12
  return wrong('file/not-understood', { expected: 'a length in one unit' }, `${Number(feet.toFixed(3))} ft`)
}
