import { isSameWord } from '../../load/improve/nearest.ts'
import type { Fault } from '../../load/loaded.ts'
import type { FileCheck } from '../check.ts'
import { detail, details, fixed, named, shortList } from './say.ts'

/** Where a thing of each kind is described. */
const LISTS: Readonly<Record<string, string>> = {
  box: 'boxes',
  controller: 'controllers',
  station: 'stations',
  supply: 'supplies',
  zone: 'stations'
}

export const danglingReference: FileCheck = {
  card: {
    code: 'file/dangling-reference',
    severity: 'error',
    looksAt: 'A name or a file that is pointed to and is not there.',
    why: 'A box page would not show the valve, or a limit would not be known, and nothing would say so.',
    sources: ['project-rule'],
    fix: 'Correct the name, or describe the thing that it names.',
    worked: {
      example: `sensors:
  - { id: RS1, kind: rain, controller: K7 }`,
      instead: `sensors:
  - { id: RS1, kind: rain, controller: K1 }`
    }
  },
  word: fault =>
    detail(fault, 'described') === ''
      ? { message: named(fault, sentence(fault)), fix: `${fixed(fault, otherwise(fault))}${orThere(fault)}` }
      : oddName(fault)
}

/** A name that only its own description writes as it does. */
function oddName(fault: Fault): { readonly message: string; readonly fix: string; readonly why: string } {
  const [name, described, key] = [detail(fault, 'name'), detail(fault, 'described'), detail(fault, 'key')]
  const places = Number(detail(fault, 'places'))
  return {
    message: `"${described}" is written "${name}" in ${places === 2 ? 'both' : `all ${places}`} places that lead to it.`,
    why: 'Only names that are written alike, blanks and capitals included, lead to one thing.',
    fix: `Write "${key}: ${name}" here, or "${described}" in those ${places} places.`
  }
}

function sentence(fault: Fault): string {
  const [name, kind] = [detail(fault, 'name'), detail(fault, 'kind')]
  return LISTS[kind] === undefined ? `the file of the ${kind}, ${name}, is not there.` : `there is no ${kind} ${name}.`
}

/** Where the two differ in blanks, hyphens or capitals alone, either may be the slip. */
function orThere(fault: Fault): string {
  const [name, near] = [detail(fault, 'name'), detail(fault, 'nearest')]
  const isSame = near !== '' && LISTS[detail(fault, 'kind')] !== undefined && isSameWord(name, near)
  return isSame ? ` Or write ${name} under "${LISTS[detail(fault, 'kind')]}:", where it is described.` : ''
}

function otherwise(fault: Fault): string {
  const [name, kind] = [detail(fault, 'name'), detail(fault, 'kind')]
  const list = LISTS[kind]
  if (kind === 'drawing')
    return `Put ${name} beside site.md, or correct the name. Only GeoJSON is read, in a file with the ending geojson.`
  if (list === undefined) return `Put the file at sites/${name}, or correct the path.`
  const known = [...new Set(details(fault, 'known'))]
  const there = known.length === 0 ? '' : ` There ${known.length === 1 ? 'is' : 'are'} ${shortList(known, 'and')}.`
  return `Describe ${name} under "${list}:", or name one that is there.${there}`
}
