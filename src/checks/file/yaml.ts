import type { Fault } from '../../load/loaded.ts'
import type { FileCheck } from '../check.ts'
import { detail, details, fixed, shortList } from './say.ts'

export const fileYaml: FileCheck = {
  card: {
    code: 'file/yaml',
    severity: 'error',
    looksAt:
      'Keys that are not written as YAML asks: a quote that is not closed, a colon in a text, a line that is indented askew.',
    why: 'From here on it cannot be told what belongs to what.',
    sources: ['yaml-1-2'],
    fix: 'Put the line right as the message says. Text with a colon, a number sign or a bracket in it goes in quotes.',
    worked: {
      example: 'title: Base Site: north',
      instead: 'title: "Base Site: north"'
    }
  },
  word: fault => {
    const words = WORDS[detail(fault, 'kind')] ?? other
    const { message, fix } = words(fault)
    return { message, fix: fixed(fault, fix) }
  }
}

function linesOf(fault: Fault): string {
  const lines = details(fault, 'lines')
  return lines.length === 1 ? `line ${lines[0]}` : `lines ${shortList(lines, 'and')}`
}

type Words = (fault: Fault) => { readonly message: string; readonly fix: string }

const other: Words = fault => ({
  message: `This line cannot be read (${detail(fault, 'parser')}).`,
  fix: 'See that each key has a colon and a space after it, and that what belongs to it is indented by two spaces.'
})

const WORDS: Readonly<Record<string, Words>> = {
  alias: () => ({
    message: 'A value that starts with & or * points to another place in the file, and such pointers are not read.',
    fix: 'Write the value out in each place, or put it in quotes if it is text.'
  }),
  'bracket-open': () => ({
    message: 'The bracket that opens here is not closed.',
    fix: 'Close it with ] or }, and put a comma between entries.'
  }),
  'colon-in-text': () => ({
    message: 'A colon stands inside the text, so the text is taken for another key.',
    fix: 'Put the text in quotes.'
  }),
  'colon-missing': () => ({
    message: 'This line has no colon after its key.',
    fix: 'Write the key, a colon, a space, and the value.'
  }),
  'comma-extra': () => ({
    message: 'A comma stands here with no entry before it.',
    fix: 'Take the comma out, or write the entry.'
  }),
  'comma-missing': () => ({
    message: 'A comma is missing between two entries in brackets.',
    fix: 'Put a comma between them. Text that holds a bracket or a comma goes in quotes.'
  }),
  'curly-quotes': () => ({
    message: 'The quotes on this line are the curly ones of a word processor; they do not hold a text together here.',
    fix: 'Type straight quotes, " or \', in their place.'
  }),
  'document-end': () => ({
    message: 'A line of dots or a line that starts with a percent sign ends the keys here.',
    fix: 'Take the line out.'
  }),
  escape: () => ({
    message: 'A backslash in double quotes starts a special character, and this one is not known.',
    fix: 'Use single quotes around text with a backslash, or write it twice.'
  }),
  indent: () => ({
    message: 'This line is indented askew, so it cannot be told what it belongs to.',
    fix: 'Start it in the same column as the lines beside it; what belongs to a key stands two spaces further in.'
  }),
  'list-inline': () => ({
    message: 'A list that starts with a dash cannot stand on the line of its key.',
    fix: 'Put the list in square brackets, or each entry on a line of its own.'
  }),
  merge: fault => ({
    message: `Two versions of this file were joined, and the marks between them still stand on ${linesOf(fault)}.`,
    fix: 'Between the marks, keep what is true of each version; then take out the lines that start with <<<<<<<, ======= and >>>>>>>.'
  }),
  'odd-space': () => ({
    message:
      'A space of another kind stands here, as web pages and word processors write it; it does not count as a space.',
    fix: 'Type a plain space in its place, here and wherever the text was pasted.'
  }),
  'question-mark': () => ({
    message: 'A question mark stands where a value is due.',
    fix: 'Leave the key out, or blank after its colon, until the value is known.'
  }),
  'quote-open': () => ({
    message: 'The quote that opens here is not closed.',
    fix: 'Close it on the same line. A quote inside the text needs single quotes around the whole.'
  }),
  'reserved-character': fault => ({
    message: `A value cannot start with ${detail(fault, 'found').slice(0, 1)} unless it is in quotes.`,
    fix: 'Put the text in quotes.'
  }),
  'space-after-colon': () => ({
    message: 'The colon needs a space after it.',
    fix: 'Put a space after the colon.'
  }),
  table: () => ({
    message: 'A table stands here, and tables are not read among the keys.',
    fix: 'Write its rows as entries of a list, or save it as CSV and bring it in with "underlid import".'
  }),
  tag: () => ({
    message: 'A value that starts with an exclamation mark asks for a special kind of data, and none is read.',
    fix: 'Put the text in quotes.'
  }),
  'text-after-quote': () => ({
    message: 'Text stands after the closing quote.',
    fix: 'Put the whole value in quotes, with single quotes inside.'
  }),
  'too-deep': () => ({
    message: 'Brackets are nested far deeper than any site file needs.',
    fix: 'Look for a bracket that is opened again and again.'
  })
}
