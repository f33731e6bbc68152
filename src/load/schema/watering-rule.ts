import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { WateringRule } from '../../model/site.ts'
import type { Window } from '../../units/clock.ts'
import type { MonthDay } from '../../units/date.ts'
import { daysByAddress, makeAddressDays } from './address.ts'
import { dailyCap } from './daily-cap.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { either, list, record } from './record.ts'
import { choice, text } from './texts.ts'
import { dayRule, monthDay, window } from './times.ts'

const WINDOW = { does: 'When watering is allowed; more than one as a list.', example: '23:00-05:00' }
const oneWindow = window('When watering is allowed.', '23:00-05:00')

const NOT = { does: 'Hours in which watering is forbidden; more than one as a list.', example: '10:00-16:00' }
const oneBarred = window('Hours in which watering is forbidden.', '10:00-16:00')

const WHEN = ['daylight-saving', 'standard'] as const

const RULE_KEYS = {
  authority: optional(text('Who made the rule.', 'Port Sable Water')),
  window: optional(either(WINDOW, oneWindow, list(oneWindow, { ...WINDOW, example: '[20:00-00:00, 00:00-08:00]' }))),
  not: optional(either(NOT, oneBarred, list(oneBarred, { ...NOT, example: '[10:00-16:00]' }))),
  days: optional(dayRule('On which days watering is allowed.', 'even dates')),
  'days-by-address': optional(daysByAddress),
  from: optional(monthDay('First day of the year on which it holds, month then day.', '05-01')),
  to: optional(monthDay('Last day of the year on which it holds; it may be before the first.', '09-30')),
  when: optional(
    choice('In which half of the year it holds by the legal clock: daylight-saving or standard.', WHEN, 'standard')
  ),
  'at-most': optional(dailyCap('The most that a station may get in a day: minutes, or depth.', '8 min')),
  except: optional(
    list(text('A kind of devices.', 'drip'), { does: 'Kinds of devices that it leaves free.', example: '[drip]' })
  ),
  'after-rain': optional(quantity('How long after rain nothing may water; printed, not judged.', 'duration', '48 h')),
  note: optional(text('What else it says.', '"hand watering is exempt"'))
}

export const wateringRule = record(
  'a watering rule',
  {
    does: 'A rule of the authority or of the owner.',
    example: '{ authority: Port Sable Water, window: 22:00-06:00, days: even dates }'
  },
  RULE_KEYS
)

/** A rule in a file of its own: the same keys, and a title. */
export const wateringRuleFile = record(
  'a file of a watering rule',
  { does: 'A rule that several sites share.', example: 'title: Port Sable, stage 1' },
  { title: optional(text('Name of the rule.', 'Port Sable, stage 1')), ...RULE_KEYS }
)

export function makeWateringRule(raw: z.output<typeof wateringRuleFile>, at: At): WateringRule {
  return made<WateringRule>({
    at,
    authority: given(raw.authority ?? raw.title),
    windows: listed(raw.window) ?? [],
    barred: listed(raw.not),
    days: given(raw.days),
    daysByAddress: raw['days-by-address'] ? makeAddressDays(raw['days-by-address']) : undefined,
    dates: datesOf(raw.from, raw.to),
    when: given(raw.when),
    atMost: given(raw['at-most']),
    except: given(raw.except),
    afterRain: given(raw['after-rain']),
    note: given(raw.note)
  })
}

function listed(windows: Window | readonly Window[] | null | undefined): readonly Window[] | undefined {
  if (windows === null || windows === undefined) return undefined
  return 'from' in windows ? [windows] : windows
}

/** One end alone leaves the year open at the other. */
function datesOf(from: MonthDay | null | undefined, to: MonthDay | null | undefined): WateringRule['dates'] {
  if (!from && !to) return undefined
  return { from: from ?? ('01-01' as MonthDay), to: to ?? ('12-31' as MonthDay) }
}
