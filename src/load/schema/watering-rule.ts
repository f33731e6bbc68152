import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { WateringRule } from '../../model/site.ts'
import type { Window } from '../../units/clock.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { either, list, record } from './record.ts'
import { text } from './texts.ts'
import { dayRule, window } from './times.ts'

const WINDOW = { does: 'When watering is allowed; more than one as a list.', example: '23:00-05:00' }
const oneWindow = window('When watering is allowed.', '23:00-05:00')

const NOT = { does: 'Hours in which watering is forbidden; more than one as a list.', example: '10:00-16:00' }
const oneBarred = window('Hours in which watering is forbidden.', '10:00-16:00')

const RULE_KEYS = {
  authority: optional(text('Who made the rule.', 'Port Sable Water')),
  window: optional(either(WINDOW, oneWindow, list(oneWindow, { ...WINDOW, example: '[20:00-00:00, 00:00-08:00]' }))),
  not: optional(either(NOT, oneBarred, list(oneBarred, { ...NOT, example: '[10:00-16:00]' }))),
  days: optional(dayRule('On which days watering is allowed.', 'even dates')),
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
    note: given(raw.note)
  })
}

function listed(windows: Window | readonly Window[] | null | undefined): readonly Window[] | undefined {
  if (windows === null || windows === undefined) return undefined
  return 'from' in windows ? [windows] : windows
}
