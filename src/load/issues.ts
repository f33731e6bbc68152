import type { z } from 'zod'
import type { Fault } from './loaded.ts'
import { corrected } from './corrected.ts'
import { fatalFault } from './fault.ts'
import type { Details } from './fault.ts'
import type { FrontMatter } from './front-matter.ts'
import { nearestKey } from './improve/key.ts'
import { inSystem } from './improve/system.ts'
import { placeOf, placeOfKey, writtenAt } from './place.ts'
import { wrongOf } from './schema/field.ts'
import type { Wrong } from './schema/field.ts'
import { unpackNote } from './schema/record.ts'
import { subjectOf, valueAt } from './subject.ts'

type Path = readonly (string | number)[]
type Issue = z.core.$ZodIssue

/** The faults of a file whose keys are read by a schema: one for each thing that is wrong, where it is wrong. */
export function issueFaults(front: FrontMatter, issues: readonly Issue[], above: Path = []): Fault[] {
  return issues.flatMap(issue => {
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
  })
}

function valueFault(front: FrontMatter, path: Path, found: Wrong): Fault {
  const wrong = inSystem(found, front.data['units'])
  const details: Details = {
    key: keyOf(path),
    value: shortened(writtenAt(front, path) ?? ''),
    ...wrong.details,
    ...(wrong.value === undefined ? {} : { corrected: corrected(front, path, wrong.value) })
  }
  return fatalFault(wrong.code, subjectOf(front.data, path), placeOf(front, path), details)
}

function unknownKey(front: FrontMatter, path: Path, key: string, note: string): Fault {
  const { what, keys } = unpackNote(note)
  const full = [...path, key]
  const value = writtenAt(front, full)
  const near = nearestKey(key, keys)
  const details: Details = {
    key,
    what,
    known: keys,
    ...(near === undefined ? {} : { nearest: near }),
    ...(near === undefined || value === undefined || value === '' ? {} : { corrected: `${near}: ${shortened(value)}` }),
    blank: value === undefined || value === ''
  }
  return fatalFault('file/unknown-key', subjectOf(front.data, full), placeOfKey(front, full), details)
}

/** A map or a list where something else stands, or nothing at all. */
function shapeFault(front: FrontMatter, path: Path, issue: Issue): Fault {
  const { what, example } = unpackNote(issue.message)
  const value = valueAt(front.data, path)
  const subject = subjectOf(front.data, path)
  const base = { key: keyOf(path), what, example }
  if (value === undefined || value === null) {
    return fatalFault('file/missing-key', subject, placeOf(front, path), {
      ...base,
      corrected: corrected(front, path, example)
    })
  }
  const expected = issue.code === 'invalid_type' && issue.expected === 'array' ? 'a list' : 'keys with values'
  const written = writtenAt(front, path) ?? ''
  const asList = expected === 'a list' && written !== '' && !written.includes('\n') ? `[${written}]` : example
  const details: Details = {
    ...base,
    value: shortened(written),
    expected,
    got: shapeOf(value),
    corrected: corrected(front, path, expected === 'a list' ? asList : example)
  }
  return fatalFault('file/wrong-shape', subject, placeOf(front, path), details)
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
  const details: Details = { key: 'stations', value: keyOf(path), expected: 'a station number', example: '1: 25 min' }
  return fatalFault('file/not-understood', subjectOf(front.data, path), placeOfKey(front, path), details)
}

function shapeOf(value: unknown): string {
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' ? 'keys with values' : 'one value'
}

function keyOf(path: Path): string {
  return String(path.findLast(step => typeof step === 'string') ?? '')
}

function shortened(text: string): string {
  const line = text.replace(/\s+/gu, ' ')
  return line.length > 60 ? `${line.slice(0, 57)}...` : line
}
