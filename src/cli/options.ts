import { Option } from 'commander'
import type { Command } from 'commander'
import { Refusal } from '../base/refusal.ts'
import { today } from '../build/clock.ts'
import { FIRST_YEAR, LAST_YEAR, parseDate } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'

/** Options that every verb takes. */
export interface CommonOptions {
  readonly sites: string
  readonly out: string
  readonly on?: string
  readonly format: string
  readonly quiet?: boolean
  readonly color: string
}

export function withCommonOptions(command: Command, formats: readonly string[] = ['text', 'json']): Command {
  return command
    .option('--sites <folder>', 'folder of the sites', 'sites')
    .option('--out <folder>', 'folder of the outputs', 'dist')
    .option('--on <date>', 'the day it is taken to be, YYYY-MM-DD (default: today)')
    .addOption(new Option('--format <format>', 'how to answer').choices(formats).default('text'))
    .option('--quiet', 'say only what was asked for')
    .addOption(
      new Option('--color <when>', 'color in the terminal').choices(['auto', 'always', 'never']).default('auto')
    )
}

export function dayOf(options: Pick<CommonOptions, 'on'>): IsoDate {
  if (options.on === undefined) return today()
  const day = parseDate(options.on)
  if (!day)
    throw new Refusal(
      `"${options.on}" is not a day of the calendar.`,
      `Write it like this: --on 2026-05-01, of the years ${FIRST_YEAR} to ${LAST_YEAR}.`
    )
  return day
}
