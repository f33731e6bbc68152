import type { Command } from 'commander'
import { assessFleet } from '../../build/assess.ts'
import { contextOf } from '../../build/page-context.ts'
import { publicAddressOf } from '../../build/public-address.ts'
import { dueItems } from '../../binder/due-items.ts'
import { sortedDue } from '../../binder/make-fleet-page.ts'
import { Refusal } from '../../base/refusal.ts'
import { daysBetween } from '../../units/date.ts'
import { dueJson, dueText } from '../../report/due.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'

interface DueOptions extends CommonOptions {
  readonly within: string
}

export function addDue(program: Command): void {
  withCommonOptions(program.command('due').description('what is due, and what to take along').argument('[site...]'))
    .option('--within <days>', 'so many days ahead, such as 60d', '60d')
    .action((sites: string[], options: DueOptions) => {
      const { say } = makeOutput(options)
      const on = dayOf(options)
      const within = daysOf(options.within)
      const assessment = assessFleet(options.sites, on, sites)
      const address = publicAddressOf(assessment)
      const items = sortedDue(assessment.sites.flatMap(one => contextOf(one, address)).flatMap(dueItems)).filter(
        item => item.dueOn === undefined || daysBetween(on, item.dueOn) <= within
      )
      say(options.format === 'json' ? JSON.stringify(dueJson(items, on), undefined, 2) : dueText(items, on, within))
      process.exitCode = EXIT.done
    })
}

function daysOf(text: string): number {
  const match = /^(\d+)\s*(?:d|days?)?$/u.exec(text.trim())
  if (!match) throw new Refusal(`"${text}" is not a number of days.`, 'Write it like this: --within 60d')
  return Number(match[1])
}
