import { expect, test } from 'vitest'
import { date, epochDay } from '../../src/units/date.ts'
import { daylightMinutes } from '../../src/units/time-zone.ts'

const minutes = (day: string, timeZone: string) => daylightMinutes(epochDay(date(day)), timeZone)

// Days of change: 2026-03-29 and 2026-10-25 in Europe, 2026-03-08 and 2026-11-01 in the US, 2026-04-05 and 2026-10-04 in New South Wales.
test.each([
  ['Europe/London', '2026-03-28', 0],
  ['Europe/London', '2026-03-29', 60],
  ['Europe/London', '2026-10-24', 60],
  ['Europe/London', '2026-10-25', 0],
  ['America/Los_Angeles', '2026-03-07', 0],
  ['America/Los_Angeles', '2026-03-08', 60],
  ['America/Los_Angeles', '2026-10-31', 60],
  ['America/Los_Angeles', '2026-11-01', 0],
  ['Australia/Sydney', '2026-01-01', 60],
  ['Australia/Sydney', '2026-04-05', 0],
  ['Australia/Sydney', '2026-10-04', 60],
  ['Australia/Sydney', '2026-12-31', 60],
  ['Australia/Lord_Howe', '2026-01-01', 30],
  ['Europe/Dublin', '2026-07-01', 60],
  ['America/Phoenix', '2026-07-01', 0],
  ['Asia/Kolkata', '2026-07-01', 0]
])('%s on %s is %i min ahead of its standard time', (timeZone, day, ahead) => {
  expect(minutes(day, timeZone)).toBe(ahead)
})

test('asking twice gives the same', () => {
  expect([minutes('2028-02-29', 'Europe/London'), minutes('2028-02-29', 'Europe/London')]).toEqual([0, 0])
})
