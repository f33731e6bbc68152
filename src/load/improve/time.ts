import { parseClock } from '../../units/clock.ts'
import { wrong } from '../schema/field.ts'
import type { Wrong } from '../schema/field.ts'

/** What is wrong with a time of day. */
export function clockWrong(text: string): Wrong {
  const written = /^(\d{1,2}):(\d{2})/u.exec(text)
  if (text === '24:00') return wrong('file/time', { reason: 'midnight' }, '00:00')
  if (written && Number(written[2]) > 59) return wrong('file/time', { reason: 'minute', minute: written[2] ?? '' })
  if (written && /[ap]\.?m/iu.test(text)) return wrong('file/time', { reason: 'half', hour: written[1] ?? '' })
  if (written) return wrong('file/time', { reason: 'hour', hour: written[1] ?? '' })
  return wrong('file/time', { reason: 'form' }, rewritten(text))
}

/** What is wrong with a window: one of its ends, or its form. */
export function windowWrong(text: string): Wrong {
  const ends = text.split(/[-–—]|\bto\b|\buntil\b|\btill\b/iu).map(end => end.trim())
  const again = ends.map(wholeTime)
  const value = ends.length === 2 && !again.includes(undefined) ? again.join('-') : undefined
  const bad = ends.find(end => parseClock(end) === undefined)
  if (ends.length !== 2 || bad === undefined || wholeTime(bad) !== undefined)
    return wrong('file/time', { reason: 'window' }, value)
  const fault = clockWrong(bad)
  return wrong('file/time', { ...fault.details, end: bad }, value)
}

/** "22", "10 pm" and "22.30" as whole times; undefined where no time is meant. */
function wholeTime(end: string): string | undefined {
  if (parseClock(end) !== undefined) return end
  const hour = /^\d{1,2}$/u.test(end) ? `${end.padStart(2, '0')}:00` : undefined
  return hour !== undefined && parseClock(hour) !== undefined ? hour : rewritten(end)
}

/** 22.30, 2230, 22h30, 22h, 10 pm, noon and midnight as they are written here. */
function rewritten(text: string): string | undefined {
  const half = /^(\d{1,2})\s*([ap]\.?m\.?)$/iu.exec(text)
  const word = /^(noon|midnight)$/iu.exec(text)?.[1]?.toLowerCase()
  if (word !== undefined) return word === 'noon' ? '12:00' : '00:00'
  const digits = /^(\d{1,2})[.h,;]?(\d{2})$/iu.exec(text.replace(/^(\d{1,2})\s*h$/iu, '$1h00'))
  const again = half ? `${half[1]}:00 ${half[2]}` : digits ? `${digits[1]?.padStart(2, '0')}:${digits[2]}` : undefined
  return again !== undefined && parseClock(again) !== undefined ? again : undefined
}
