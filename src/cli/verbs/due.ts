import type { Command } from 'commander'
import { assessFleet } from '../../build/assess.ts'
import { contextOf } from '../../build/page-context.ts'
import { allDue, calendarOf } from '../../build/due-outputs.ts'
import type { Assessment } from '../../build/assess.ts'
import { readCompany } from '../../load/companions.ts'
import { parseQuantity } from '../../units/quantity.ts'
import { publicAddressOf } from '../../build/public-address.ts'
import { Refusal } from '../../base/refusal.ts'
import type { DueItem } from '../../binder/due-items.ts'
import type { PageContext } from '../../binder/context.ts'
import { makeRoutePage } from '../../binder/make-route-page.ts'
import { siteSummary } from '../../binder/site-summary.ts'
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
    .action((sites: string[], options: DueOptions) => {
      const on = dayOf(options)
      const within = daysOf(options.within)
      const assessment = assessFleet(options.sites, on, sites)
      const address = publicAddressOf(assessment)
      const contexts = assessment.sites.flatMap(one => contextOf(one, address))
      const items = allDue(contexts).filter(item => item.dueOn === undefined || daysBetween(on, item.dueOn) <= within)
      answer(options, items, { contexts, on, within, ...weekOf(options, assessment) })
      process.exitCode = EXIT.done
    })
}

interface Asked {
  readonly contexts: readonly PageContext[]
  readonly on: IsoDate
  readonly within: number
  /** Time on sites that a week holds, s. */
  readonly weekS?: number
}

/** As it is asked for, else as the company file has it. */
function weekOf({ hoursAWeek }: DueOptions, { sources }: Assessment): { readonly weekS?: number } {
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
function answer(options: DueOptions, items: readonly DueItem[], { contexts, on, within, weekS }: Asked): void {
  const { say, pass } = makeOutput(options)
  if (options.route) {
    const sites = contexts.map(context => siteSummary(context, EN_US))
    const page = makeRoutePage({
      sites,
      on,
      within,
      words: EN_US,
      version: toolVersion(),
      ...(weekS === undefined ? {} : { weekS })
    })
    return say(options.format === 'json' ? JSON.stringify(page, undefined, 2) : routeText(page))
  }
  if (options.format === 'csv') return pass(dueCsv(items, on))
  if (options.format === 'ics') return pass(calendarOf(items, contexts, on))
  const json = (value: object) => say(JSON.stringify(value, undefined, 2))
  if (options.format === 'json') return json(dueJson(items, on))
  const sites = contexts.map(one => one.site)
  return options.format === 'geojson' ? json(dueGeojson(items, sites)) : say(dueText(items, on, within))
}

function daysOf(text: string): number {
  const match = /^(\d+)\s*(?:d|days?)?$/u.exec(text.trim())
  if (!match) throw new Refusal(`"${text}" is not a number of days.`, 'Write it like this: --within 60d')
  return Number(match[1])
}
