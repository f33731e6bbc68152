import type { Command } from 'commander'
import { distance } from 'fastest-levenshtein'
import { isAbsent } from '../../base/absent.ts'
import { sortedBy } from '../../base/collections.ts'
import { Refusal } from '../../base/refusal.ts'
import type { Calculation } from '../../domain/calculation.ts'
import { CALCULATIONS } from '../../domain/list.ts'
import { parseInputs } from '../../domain/parse-inputs.ts'
import { calculationJson, calculationText, kebab, listText, resultJson, resultText } from '../../report/calculation.ts'
import { withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { makeOutput } from '../output.ts'

interface CalcOptions extends CommonOptions {
  readonly list?: boolean
}

export function addCalc(program: Command): void {
  const command = withCommonOptions(
    program.command('calc').description('one calculation with its steps, units and source').argument('[name]')
  )
  command
    .option('--list', 'name them all with their inputs')
    .allowUnknownOption()
    .allowExcessArguments()
    .addHelpText(
      'after',
      '\nInputs are options with a unit: npx underlid calc wire-loop --size "0.75 mm²" --length "128 m"'
    )
    .action((name: string | undefined, options: CalcOptions) => {
      const { say } = makeOutput(options)
      const json = options.format === 'json'
      if (name === undefined || options.list) {
        say(json ? JSON.stringify(CALCULATIONS.map(calculationJson), undefined, 2) : listText(CALCULATIONS))
        return
      }
      const card = CALCULATIONS.find(one => one.name === name)
      if (!card)
        throw new Refusal(
          `There is no calculation ${name}.`,
          `Did you mean ${nearest(name)}? "underlid calc --list" names them all.`
        )
      const given = givenInputs(command.args.slice(1), card)
      if (Object.keys(given).length === 0) {
        say(json ? JSON.stringify(calculationJson(card), undefined, 2) : calculationText(card))
        return
      }
      const parsed = parseInputs(card, given)
      if (!parsed.ok)
        throw new Refusal(
          ...parsed.problems.flatMap(({ input, message, fix }) => [`--${input}: ${message}`, `  ${fix}`])
        )
      const worked = card.run(parsed.inputs)
      if (isAbsent(worked)) throw new Refusal(`${card.title}: not computed.`, worked.reason)
      say(json ? JSON.stringify(resultJson(card, worked), undefined, 2) : resultText(card, worked))
    })
}

/** "--length 128 m", "--length=128 m", with kebab-case names for camel-case inputs. */
function givenInputs(args: readonly string[], card: Calculation): Record<string, string> {
  const given: Record<string, string> = {}
  for (let index = 0; index < args.length; index += 1) {
    const arg = args[index] ?? ''
    if (!arg.startsWith('--'))
      throw new Refusal(`"${arg}" belongs to no input.`, 'Put a value with spaces in quotes: --length "128 m"')
    const [name = '', inline] = arg.slice(2).split(/=(.*)/su)
    const input = Object.keys(card.inputs).find(one => one === name || kebab(one) === name)
    if (!input)
      throw new Refusal(
        `${card.name} has no input --${name}.`,
        `It takes ${Object.keys(card.inputs)
          .map(one => `--${kebab(one)}`)
          .join(', ')}.`
      )
    if (inline === undefined) index += 1
    const value = inline ?? args[index]
    if (value === undefined) throw new Refusal(`--${name} has no value.`)
    given[input] = value
  }
  return given
}

function nearest(name: string): string {
  return sortedBy(CALCULATIONS, one => distance(one.name, name))[0]?.name ?? ''
}
