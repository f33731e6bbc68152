import type { Command } from 'commander'
import { distance } from 'fastest-levenshtein'
import { Refusal } from '../../base/refusal.ts'
import { sortedBy } from '../../base/collections.ts'
import { CHECKS } from '../../checks/list.ts'
import { explainJson, explainText } from '../../report/explain.ts'
import { withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { makeOutput } from '../output.ts'

export function addExplain(program: Command): void {
  withCommonOptions(
    program
      .command('explain')
      .description('what a finding means, why it matters and where that comes from')
      .argument('[code]')
  ).action((code: string | undefined, options: CommonOptions) => {
    const { say } = makeOutput(options)
    if (code === undefined) {
      if (options.format === 'json') say(JSON.stringify(CHECKS.map(explainJson), undefined, 2))
      else
        say(CHECKS.map(({ card }) => `${card.code.padEnd(34)} ${card.severity.padEnd(8)} ${card.looksAt}`).join('\n'))
      return
    }
    const check = CHECKS.find(one => one.card.code === code)
    if (!check)
      throw new Refusal(
        `There is no finding ${code}.`,
        `Did you mean ${nearest(code)}? "underlid explain" lists them all.`
      )
    say(options.format === 'json' ? JSON.stringify(explainJson(check), undefined, 2) : explainText(check))
  })
}

function nearest(code: string): string {
  return sortedBy(CHECKS, one => distance(one.card.code, code))[0]?.card.code ?? ''
}
