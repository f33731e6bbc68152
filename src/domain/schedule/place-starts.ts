import { sum } from '../../base/collections.ts'
import { DAY_MINUTES } from '../../units/clock.ts'
import type { DayRule } from './program.ts'
import { weekdaysOf } from './spacing.ts'
import { atMost } from '../within.ts'

/** For each minute of a day, how many minutes may follow it on end: 0 where it is not allowed itself. May pass midnight. */
export type MinutesLeft = readonly number[]

/**
 * From the minutes that are allowed, 1,440 of them. At `stops`, minutes after midnight, a run must have ended: midnight, where the next day
 * may be one that is not allowed.
 */
export function minutesLeft(allowed: readonly boolean[], stops: readonly number[] = []): MinutesLeft {
  const stopsAt = new Set(stops.map(minute => minute % DAY_MINUTES))
  const left = new Array<number>(DAY_MINUTES).fill(0)
  let on = 0
  for (let minute = 2 * DAY_MINUTES - 1; minute >= 0; minute -= 1) {
    const clock = minute % DAY_MINUTES
    const follows = stopsAt.has((clock + 1) % DAY_MINUTES) ? 0 : on
    on = allowed[clock] ? Math.min(follows + 1, DAY_MINUTES) : 0
    left[clock] = on
  }
  return left
}

/** A pass through a program, on the days of its rule. Minutes count from midnight and may pass 1,440. */
export interface PlacedStart {
  readonly controller: string
  readonly days: DayRule
  readonly fromMinute: number
  readonly toMinute: number
  /** The most that it draws at once, m³/s. */
  readonly flowM3s: number
  /** Minutes by which the legal clock is ahead of the controller's, at the least and at the most over the season. */
  readonly ahead: readonly [least: number, most: number]
}

export interface SharedSupply {
  readonly limitM3s?: number | undefined
  readonly zonesAtOnce?: number | undefined
}

export interface PlaceOf {
  readonly controller: string
  readonly days: DayRule
  readonly lengthMinutes: number
  readonly flowM3s: number
  readonly ahead: PlacedStart['ahead']
  readonly left: MinutesLeft
  /** Start times to try first. */
  readonly wished: readonly number[]
  /** Of this controller and of those that share its supply. */
  readonly placed: readonly PlacedStart[]
  readonly supply: SharedSupply
}

/**
 * The first start at which a pass fits: inside the hours, clear of the controller's other starts, and within what the supply gives together
 * with other controllers. The times wished for come first, then where hours open, the longest first, then right after another pass.
 */
export function placeStart(of: PlaceOf): PlacedStart | undefined {
  const { controller, days, lengthMinutes, flowM3s, ahead } = of
  for (const fromMinute of candidates(of)) {
    const start = { controller, days, fromMinute, toMinute: fromMinute + lengthMinutes, flowM3s, ahead }
    if (isInHours(start, of.left) && isClear(start, of.placed, of.supply)) return start
  }
  return undefined
}

export function isInHours({ fromMinute, toMinute }: PlacedStart, left: MinutesLeft): boolean {
  return atMost(toMinute - fromMinute, left[fromMinute % DAY_MINUTES] ?? 0)
}

/** True where a start meets no other of its controller, and others on the supply leave it enough. Separate clocks are held beside the legal one. */
export function isClear(start: PlacedStart, placed: readonly PlacedStart[], supply: SharedSupply): boolean {
  const { limitM3s, zonesAtOnce } = supply
  const own = placed.filter(one => one.controller === start.controller)
  if (own.some(one => meets(one, start))) return false
  const met = placed.filter(one => one.controller !== start.controller && meetsByLegalClock(one, start))
  if (met.length === 0) return true
  if (zonesAtOnce !== undefined && met.length + 1 > zonesAtOnce) return false
  return limitM3s === undefined || atMost(sum(met.map(one => one.flowM3s)) + start.flowM3s, limitM3s)
}

/** Clocks that are behind alike are behind together. */
function meetsByLegalClock(one: PlacedStart, other: PlacedStart): boolean {
  const goAlike = one.ahead.join() === other.ahead.join()
  return goAlike ? meets(one, other) : meets(inLegalTime(one), inLegalTime(other))
}

/** From the earliest to the latest that it runs by the legal clock in any part of the season. */
function inLegalTime(start: PlacedStart): PlacedStart {
  const [least, most] = start.ahead
  if (most === 0) return start
  return { ...start, fromMinute: start.fromMinute + least, toMinute: start.toMinute + most }
}

function candidates({ left, wished, placed, lengthMinutes, ahead }: PlaceOf): number[] {
  const opens = left.flatMap((minutes, minute) => {
    const before = left[(minute + DAY_MINUTES - 1) % DAY_MINUTES] ?? 0
    return minutes > 0 && before !== minutes + 1 && before !== DAY_MINUTES ? [minute] : []
  })
  const byLength = [...opens].sort((a, b) => (left[b] ?? 0) - (left[a] ?? 0) || a - b)
  const others = [...placed, ...placed.map(inLegalTime)]
  const after = others.flatMap(({ toMinute }) => {
    const end = toMinute - ahead[0]
    return [Math.ceil(end / 5 - 1e-9) * 5, Math.ceil(end - 1e-9)]
  })
  const before = others.map(({ fromMinute }) => Math.floor(fromMinute - lengthMinutes - ahead[1] + 1e-9))
  const all = [...wished, ...byLength, ...after, ...before, 0]
  return [...new Set(all.map(minute => ((minute % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES))]
}

/** In some week the two are on at one time. A pass of every day meets another on any day or on none. */
export function meets(a: PlacedStart, b: PlacedStart): boolean {
  const [daysA, daysB] = [weekdaysOf(a.days), weekdaysOf(b.days)]
  if (daysA.length === 7 || daysB.length === 7) return overlap(a, b, 0, DAY_MINUTES)
  return daysA.some(dayA => daysB.some(dayB => overlap(a, b, (dayA - dayB) * DAY_MINUTES, 7 * DAY_MINUTES)))
}

/** On a clock that goes round in so many minutes, `a` being so many minutes later than it says. */
function overlap(a: PlacedStart, b: PlacedStart, laterMinutes: number, round: number): boolean {
  const since = (((laterMinutes + a.fromMinute - b.fromMinute) % round) + round) % round
  return since < b.toMinute - b.fromMinute - 1e-9 || round - since < a.toMinute - a.fromMinute - 1e-9
}
