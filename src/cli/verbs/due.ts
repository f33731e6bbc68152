import type { Command } from 'commander'
import { digestFleet } from '../../build/digest-fleet.ts'
import type { DigestedFleet } from '../../build/digest-fleet.ts'
import { calendarOf, calendarSites } from '../../build/due-outputs.ts'
import { readCompany } from '../../load/companions.ts'
import { parseQuantity } from '../../units/quantity.ts'
import { Refusal } from '../../base/refusal.ts'
import type { DueItem } from '../../binder/due-items.ts'
import { sortedDue } from '../../binder/make-fleet-page.ts'
import { makeRoutePage } from '../../binder/make-route-page.ts'
import { summaryOf } from '../../build/site-digest.ts'
import { toolVersion } from '../../build/tool-version.ts'
import { routeText } from '../../report/route.ts'
import { EN_US } from '../../words/words.ts'
import { dueCsv } from '../../export/due-csv.ts'
import { dueGeojson } from '../../export/geojson.ts'
import { daysBetween } from '../../units/date.ts'
import type { IsoDate } from '../../units/date.ts'
import { dueJson, dueText } from '../../report/due.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'

interface DueOptions extends CommonOptions {
  readonly within: string
  readonly route?: boolean
  readonly hoursAWeek?: string
}

export function addDue(program: Command): void {
  withCommonOptions(program.command('due').description('what is due, and what to take along').argument('[site...]'), [
    'text',
    'json',
    'csv',
    'ics',
    'geojson'
  ])
    .option('--route', 'as a route sheet: stops in order, minutes, access, tools, parts, and the work by week')
    .option('--hours-a-week <hours>', 'with --route: level the work to what a week holds, such as 30h')
    .option('--within <days>', 'so many days ahead, such as 60d', '60d')
    .action(async (only: string[], options: DueOptions) => {
      const on = dayOf(options)
      const within = daysOf(options.within)
      const { sites, out } = options
      const { progress } = makeOutput(options)
      const found = await digestFleet({ sites, out, on, only, onSite: (done, of) => progress('Sites', done, of) })
      const items = sortedDue(found.digests.flatMap(one => one.built?.summary.due ?? [])).filter(
        item => item.dueOn === undefined || daysBetween(on, item.dueOn) <= within
      )
      answer(options, items, { ...found, on, within, ...weekOf(options, found) })
      process.exitCode = EXIT.done
    })
}

interface Asked extends DigestedFleet {
  readonly on: IsoDate
  readonly within: number
  /** Time on sites that a week holds, s. */
  readonly weekS?: number
}

/** As it is asked for, else as the company file has it. */
function weekOf({ hoursAWeek }: DueOptions, { fleet: { sources } }: DigestedFleet): { readonly weekS?: number } {
  if (hoursAWeek === undefined) {
    const weekS = readCompany(sources.shared)?.hoursAWeek?.si
    return weekS === undefined ? {} : { weekS }
  }
  const read = parseQuantity(hoursAWeek, 'duration')
  if (!read.ok || read.value.si <= 0)
    throw new Refusal(`"${hoursAWeek}" is not a time.`, 'Write it like this: --hours-a-week 30h')
  return { weekS: read.value.si }
}

/** Files for other programs go out byte by byte, without a line end more. */
function answer(options: DueOptions, items: readonly DueItem[], asked: Asked): void {
  const { digests, fleet, on, within, weekS } = asked
  const { say, pass } = makeOutput(options)
  if (options.route) {
    const page = makeRoutePage({
      sites: digests.flatMap(one => summaryOf(one) ?? []),
      on,
      within,
      words: EN_US,
      version: toolVersion(),
      ...(weekS === undefined ? {} : { weekS })
    })
    return say(options.format === 'json' ? JSON.stringify(page, undefined, 2) : routeText(page))
  }
  if (options.format === 'csv') return pass(dueCsv(items, on))
  if (options.format === 'ics') return pass(calendarOf(items, calendarSites(digests, fleet.common.publicAddress), on))
  const json = (value: object) => say(JSON.stringify(value, undefined, 2))
  if (options.format === 'json') return json(dueJson(items, on))
  const features = digests.flatMap(one => one.built?.features ?? [])
  return options.format === 'geojson' ? json(dueGeojson(items, features)) : say(dueText(items, on, within))
}

function daysOf(text: string): number {
  const match = /^(\d+)\s*(?:d|days?)?$/u.exec(text.trim())
  if (!match) throw new Refusal(`"${text}" is not a number of days.`, 'Write it like this: --within 60d')
  return Number(match[1])
}
