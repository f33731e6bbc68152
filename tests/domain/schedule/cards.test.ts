import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../../src/base/absent.ts'
import type { Calculation } from '../../../src/domain/calculation.ts'
import { monthlyMinutesCard } from '../../../src/domain/schedule/monthly-minutes.ts'
import { runSequenceCard } from '../../../src/domain/schedule/run-sequence.ts'
import { wateringDaysCard } from '../../../src/domain/schedule/watering-days.ts'

function outputs(card: Calculation, inputs: Record<string, unknown>) {
  const result = card.run(inputs)
  if (isAbsent(result)) throw new Error(result.reason)
  expect(result.steps.length).toBeGreaterThan(0)
  return result.value
}

describe('watering-days', () => {
  it('gives days by the rule and dates of the calendar', () => {
    const { days, dates } = outputs(wateringDaysCard, { rule: 'Wed', year: 2027, month: 'Mar' })
    expect(days).toBeCloseTo(31 / 7, 9)
    expect(dates).toBe(5)
  })

  it('takes the whole year where no month is given', () => {
    expect(outputs(wateringDaysCard, { rule: 'odd dates', year: 2027 })).toEqual({ days: 179, dates: 179 })
  })

  it('says its arithmetic', () => {
    const result = wateringDaysCard.run({ rule: 'Mon Wed Fri', year: 2027, month: 'Jul' })
    expect(result).toMatchObject({
      steps: ['Jul 2027 has 31 days.', 'Mon Wed Fri: days × 3 / 7 = 13.29 watering days.']
    })
  })

  it('says what to write where the rule is not understood', () => {
    expect(wateringDaysCard.run({ rule: 'now and then', year: 2027 })).toMatchObject({
      reason: 'The day rule is not understood: write every day, Mon Wed Fri, odd dates or every 2 days from a date.'
    })
  })
})

describe('run-sequence', () => {
  const bays = '1: 12 min, 2: 12 min, 3: 12 min, 4: 12 min, 5: 12 min, 6: 12 min'

  it('ends six bays of 12 min from 06:00 at 07:12', () => {
    expect(outputs(runSequenceCard, { start: '06:00', stations: bays })).toEqual({
      end: '07:12',
      minutes: 72,
      length: 72
    })
  })

  it('counts the delay into the length and not into the minutes', () => {
    const { minutes, length } = outputs(runSequenceCard, { start: '06:00', stations: bays, delay: 30 })
    expect([minutes, length]).toEqual([72, 74.5])
  })

  it('says when a run passes midnight, and days after it', () => {
    const end = (stations: string) => outputs(runSequenceCard, { start: '11:30 pm', stations })['end']
    expect(end('1: 30 min')).toBe('00:00 next day')
    expect(end('1: 35 min')).toBe('00:05 next day')
    expect(end('1: 26 h')).toBe('01:30 2 days later')
  })

  it('runs nothing at 0 %', () => {
    expect(outputs(runSequenceCard, { start: '06:00', stations: bays, percent: 0 })).toEqual({
      end: '06:00',
      minutes: 0,
      length: 0
    })
  })

  it('says what to write where a start, a station or a step cannot be used', () => {
    expect(runSequenceCard.run({ start: '25:00', stations: bays })).toHaveProperty('reason')
    expect(runSequenceCard.run({ start: '06:00', stations: '1: 6' })).toHaveProperty('reason')
    expect(runSequenceCard.run({ start: '06:00', stations: bays, step: 0 })).toHaveProperty('reason')
  })
})

describe('monthly-minutes', () => {
  it('multiplies the rounded cycle by cycles, starts and days', () => {
    const inputs = { 'run-time': '2 x 6 min soak 30 min', days: 15, percent: 0.7, starts: 2 }
    expect(outputs(monthlyMinutesCard, inputs)).toEqual({ 'per-day': 16, minutes: 240 })
  })

  it('gives the water where the flow is given', () => {
    const inputs = { 'run-time': '10 min', days: 3, flow: 0.001 }
    expect(outputs(monthlyMinutesCard, inputs)).toEqual({ 'per-day': 10, minutes: 30, volume: 1.8 })
  })

  it('takes the step it is given', () => {
    expect(outputs(monthlyMinutesCard, { 'run-time': '25 min', days: 1, percent: 0.51, step: 300 })['per-day']).toBe(15)
    expect(outputs(monthlyMinutesCard, { 'run-time': '25 min', days: 1, percent: 0.51, step: 1 })['per-day']).toBe(
      12.75
    )
  })

  it('says what to write where the run time has no unit', () => {
    expect(monthlyMinutesCard.run({ 'run-time': '25', days: 1 })).toMatchObject({
      reason: 'The run time: 25 needs its unit: write 25 min or 25 s.'
    })
  })
})

describe.each([wateringDaysCard, runSequenceCard, monthlyMinutesCard])('$name', card => {
  const parsed: Record<string, unknown> = {
    ...card.example.inputs,
    ...(card.example.inputs['year'] && { year: Number(card.example.inputs['year']) }),
    ...(card.example.inputs['days'] && { days: Number(card.example.inputs['days']) }),
    ...(card.example.inputs['percent'] && { percent: 0.7 }),
    ...(card.example.inputs['flow'] && { flow: 0.038 / 60 })
  }

  it('gives its worked example', () => {
    const given = outputs(card, parsed)
    for (const [name, expected] of Object.entries(card.example.outputs)) {
      if (typeof expected === 'number') expect(given[name]).toBeCloseTo(expected, 5)
      else expect(given[name]).toBe(expected)
    }
  })
})
