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
  word: fault => ({ message: named(fault, sentence(fault)), fix: `${fixed(fault, otherwise(fault))}${orThere(fault)}` })
}

function sentence(fault: Fault): string {
  const [name, kind] = [detail(fault, 'name'), detail(fault, 'kind')]
  return LISTS[kind] === undefined ? `the file of the ${kind}, ${name}, is not there.` : `there is no ${kind} ${name}.`
}

/** Where the two differ in blanks or capitals alone, either may be the slip. */
function orThere(fault: Fault): string {
  const [name, near] = [detail(fault, 'name'), detail(fault, 'nearest')]
  const plain = (text: string): string => text.toLowerCase().replace(/\s+/gu, '')
  const isSame = near !== '' && LISTS[detail(fault, 'kind')] !== undefined && plain(name) === plain(near)
  return isSame ? ` Or write ${name} under "${LISTS[detail(fault, 'kind')]}:", where it is described.` : ''
}

function otherwise(fault: Fault): string {
  const [name, kind] = [detail(fault, 'name'), detail(fault, 'kind')]
  const list = LISTS[kind]
  if (list === undefined) return `Put the file at sites/${name}, or correct the path.`
  const known = [...new Set(details(fault, 'known'))]
  const there = known.length === 0 ? '' : ` There ${known.length === 1 ? 'is' : 'are'} ${shortList(known, 'and')}.`
  return `Describe ${name} under "${list}:", or name one that is there.${there}`
}
