import type { z } from 'zod'
import type { Fault } from '../loaded.ts'
import type { FrontMatter } from '../front-matter.ts'
import { placeOfKey } from '../place.ts'
import { wrongOf } from '../schema/field.ts'
import { fatalFault } from './fault.ts'
import type { Details } from './fault.ts'
import { keyOf } from './fragment.ts'
import { shapeFault } from './shape-fault.ts'
import { subjectOf, valueAt } from './subject.ts'
import { unknownKey } from './unknown-key.ts'
import { valueFault } from './value-fault.ts'

type Path = readonly (string | number)[]
type Issue = z.core.$ZodIssue

/** The faults of a file whose keys are read by a schema: one for each thing that is wrong, where it is wrong. */
export function issueFaults(front: FrontMatter, issues: readonly Issue[], above: Path = []): Fault[] {
  const faults = issues.flatMap(issue => faultsOf(front, issue, above))
  // A number or a date cut in two by its comma is one fault, not two.
  const cut = faults.filter(fault => fault.details['cut'] === true).map(placeKey)
  const told = faults.filter(fault => fault.details['cut'] === true || !cut.includes(placeKey(fault)))
  return told.filter(fault => !isMisspelt(fault, told))
}

/** A key that is missing because it stands there with a slip is told as the slip alone. */
function isMisspelt(fault: Fault, faults: readonly Fault[]): boolean {
  if (fault.code !== 'file/missing-key') return false
  return faults.some(
    ({ code, subject, details }) =>
      code === 'file/unknown-key' && subject === fault.subject && details['nearest'] === fault.details['key']
  )
}

const placeKey = ({ place }: Fault): string => `${place.line}:${place.column}`

function faultsOf(front: FrontMatter, issue: Issue, above: Path): Fault[] {
  const path = [...above, ...issue.path] as Path
  const wrong = wrongOf(issue)
  if (wrong) return [valueFault(front, path, wrong)]
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map(key => unknownKey(front, path, key, issue.message))
    case 'invalid_union':
      return unionFaults(front, issue, path)
    case 'invalid_key':
      return [notAStation(front, path)]
    default:
      return [shapeFault(front, path, issue)]
  }
}

/** The faults of the one shape that was meant; of none, where what stands has no shape that is known here. */
function unionFaults(front: FrontMatter, issue: Issue & { code: 'invalid_union' }, path: Path): Fault[] {
  const meant = issue.errors.filter(branch => !branch.some(isShapeIssue))
  const [only] = meant
  if (only && valueAt(front.data, path) !== undefined) return issueFaults(front, only, path)
  return [shapeFault(front, path, issue)]
}

function isShapeIssue(issue: Issue): boolean {
  return issue.path.length === 0 && (issue.code === 'invalid_type' || wrongOf(issue)?.code === 'file/wrong-shape')
}

function notAStation(front: FrontMatter, path: Path): Fault {
  const details: Details = { key: 'stations', written: keyOf(path), expected: 'a station number', example: '1: 25 min' }
  return fatalFault('file/not-understood', subjectOf(front.data, path), placeOfKey(front, path), details)
}
