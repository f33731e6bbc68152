import { isPresent } from '../../src/base/absent.ts'
import type { OutputValue } from '../../src/domain/calculation.ts'
import { CALCULATIONS } from '../../src/domain/list.ts'
import { parseInputs } from '../../src/domain/parse-inputs.ts'

/** A card run as `calc` runs it, from typed text; throws with the reason where it gives no value. */
export function calc(name: string, inputs: Record<string, string>): Readonly<Record<string, OutputValue>> {
  const result = calcOrAbsent(name, inputs)
  if (typeof result === 'string') throw new Error(result)
  return result
}

export const calcNumber = (name: string, inputs: Record<string, string>, output: string): number =>
  calc(name, inputs)[output] as number

/** The value, or the reason why there is none. */
export function calcOrAbsent(
  name: string,
  inputs: Record<string, string>
): Readonly<Record<string, OutputValue>> | string {
  const card = CALCULATIONS.find(one => one.name === name)
  if (!card) throw new Error(`no card ${name}`)
  const parsed = parseInputs(card, inputs)
  if (!parsed.ok) return parsed.problems.map(problem => problem.message).join(' ')
  const result = card.run(parsed.inputs)
  return isPresent(result) ? result.value : result.reason
}
