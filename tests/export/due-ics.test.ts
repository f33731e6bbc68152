import ICAL from 'ical.js'
import rrule from 'rrule'
import { describe, expect, it } from 'vitest'
import { keyOf } from '../../src/binder/shopping.ts'
import type { DueItem } from '../../src/binder/due-items.ts'
import { addDays, addInterval, date } from '../../src/units/date.ts'
import type { IsoDate } from '../../src/units/date.ts'
import { ON, calendar, demoDue, item } from './due-fixture.ts'

const { rrulestr } = rrule

function events(text: string): ICAL.Event[] {
  const root = new ICAL.Component(ICAL.parse(text) as unknown[])
  return root.getAllSubcomponents('vevent').map(one => new ICAL.Event(one))
}

const only = (text: string): ICAL.Event => {
  const [event] = events(text)
  if (!event) throw new Error('no event')
  return event
}

const repeating = (months: number, days: number, anchor: string, dueOn: string): DueItem =>
  item({
    kind: 'inspection',
    dueOn: date(dueOn),
    task: { task: 'inspection', repeats: { months, days, anchor: date(anchor) } }
  })

describe('the calendar feed, read back by an independent parser', () => {
  const text = calendar(demoDue)
  const read = events(text)

  it('holds every dated thing on its day, the whole day, and no other', () => {
    const dated = demoDue.filter(one => one.dueOn !== undefined)
    expect(
      read
        .filter(one => !one.uid.startsWith('no-date'))
        .map(one => one.startDate.toString())
        .sort()
    ).toEqual(dated.map(one => String(one.dueOn)).sort())
    expect(read.every(one => one.startDate.isDate && one.endDate.isDate && one.duration.toString() === 'P1D')).toBe(
      true
    )
  })

  it('hides nothing that has no date: it stands on the day of the list', () => {
    const undated = demoDue.filter(one => one.dueOn === undefined)
    const event = read.find(one => one.uid.startsWith('no-date'))
    expect(undated.length).toBeGreaterThan(0)
    expect(event?.startDate.toString()).toBe(ON)
    for (const one of undated) expect(event?.description).toContain(one.siteTitle)
  })

  it('has one identity for each thing, which stays when its date moves', () => {
    expect(new Set(read.map(one => one.uid)).size).toBe(read.length)
    const moved = only(calendar([item({ dueOn: date('2027-05-04') })]))
    expect(moved.uid).toBe(only(calendar([item()])).uid)
    expect(moved.startDate.toString()).toBe('2027-05-04')
  })

  it('is the same bytes for the same day, and stamps no other clock', () => {
    expect(calendar(demoDue)).toBe(text)
    expect(new Set(text.match(/^DTSTAMP:.*$/gmu))).toEqual(new Set(['DTSTAMP:20260501T000000Z']))
  })

  it('gives back what was written, whatever stands in it', () => {
    const title = 'Rue "É", \\ ; \n a=b: 植栽 🌱 '.repeat(6).trim()
    const event = only(calendar([item({ siteTitle: title, subject: 'K1;K2,K3' })]))
    expect(event.summary).toBe(`Battery, 1 × 9 V alkaline, K1;K2,K3, ${title}`)
  })

  it('folds by octets: no line is longer than 75, and no character is cut', () => {
    const long = calendar([item({ siteTitle: '植栽🌱é'.repeat(60) })])
    const lines = Buffer.from(long, 'utf8').toString('binary').split('\r\n')
    expect(Math.max(...lines.map(line => line.length))).toBeLessThanOrEqual(75)
    const plain = calendar([item({ siteTitle: 'a'.repeat(300) })]).split('\r\n')
    expect(Math.max(...plain.map(line => line.length))).toBe(75)
    for (const line of lines) expect(Buffer.from(line, 'binary').toString('utf8')).not.toContain('\ufffd')
    expect(long.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/u)
    expect(long.endsWith('END:VCALENDAR\r\n')).toBe(true)
  })

  it('cannot be made to hold another event by what somebody typed', () => {
    const typed = 'x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:forged'
    expect(events(calendar([item({ siteTitle: typed, what: typed, subject: typed })]))).toHaveLength(1)
  })

  it('marks what is overdue by a word', () => {
    expect(only(calendar([item({ state: 'overdue', dueOn: date('2026-04-14') })])).summary).toMatch(/^OVERDUE: /u)
  })
})

describe('what comes again, by recurrence expansion', () => {
  it.each([
    [1, 0, '2026-01-31', '2026-02-28'],
    [1, 0, '2026-04-16', '2026-05-16'],
    [3, 0, '2026-02-28', '2026-05-28'],
    [12, 0, '2025-04-01', '2027-04-01'],
    [12, 0, '2024-02-29', '2027-02-28'],
    [60, 0, '2021-08-31', '2026-08-31'],
    [6, 0, '2025-12-30', '2026-06-30'],
    [1, 0, '2026-04-30', '2026-05-30'],
    [1, 0, '2025-10-29', '2026-05-29'],
    [6, 0, '2025-08-31', '2026-02-28'],
    [0, 14, '2026-04-20', '2026-05-04'],
    [0, 90, '2026-02-20', '2026-05-21']
  ])('every %i months and %i days from %s falls on the days that are counted here', (months, days, anchor, dueOn) => {
    const text = calendar([repeating(months, days, anchor, dueOn)])
    // From the anchor in steps, as the due date is counted; the first of them is the due date.
    const steps = Array.from({ length: 60 }, (_, index) =>
      addInterval(date(anchor), { months: months * (index + 1), days: days * (index + 1) })
    )
    const expected = steps.filter(day => day >= dueOn).slice(0, 12)
    expect(expected[0]).toBe(dueOn)
    expect(byIcal(text, 12)).toEqual(expected)
    expect(byRrule(text, 12)).toEqual(expected)
  })

  it('does not repeat while it is overdue, nor where its days follow from work that is done', () => {
    expect(only(calendar([{ ...repeating(1, 0, '2026-03-01', '2026-04-01'), state: 'overdue' }])).isRecurring()).toBe(
      false
    )
    expect(only(calendar([item()])).isRecurring()).toBe(false)
  })
})

function byIcal(text: string, most: number): string[] {
  const iterator = only(text).iterator()
  return Array.from({ length: most }, () => iterator.next().toString())
}

function byRrule(text: string, most: number): IsoDate[] {
  const event = only(text)
  const rule = /^RRULE:(.*)$/mu.exec(text.replaceAll('\r\n ', '').replaceAll('\r\n', '\n'))?.[1] ?? ''
  const start = event.startDate.toString().replaceAll('-', '')
  const lines = text.replaceAll('\r\n ', '')
  const dates = /^RDATE;VALUE=DATE:(.*)\r$/mu.exec(lines)?.[1]?.split(',') ?? []
  const rules = rule === '' ? dates.map(day => `RDATE:${day}T000000Z`) : [`RRULE:${rule}`]
  const first = rule === '' ? [`RDATE:${start}T000000Z`] : []
  const all = rrulestr([`DTSTART:${start}T000000Z`, ...first, ...rules].join('\n'), { forceset: true })
  return all.all((_, index) => index < most).map(one => addDays(one.toISOString().slice(0, 10) as IsoDate, 0))
}

it('every thing of the demo sites has a key of its own', () => {
  expect(new Set(demoDue.map(keyOf)).size).toBe(demoDue.length)
})
