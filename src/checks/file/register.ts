import type { Fault } from '../../load/loaded.ts'
import type { FileCheck } from '../check.ts'
import { detail, details, listed, shortList } from './say.ts'
import { unreadable } from './unreadable.ts'

export const fileRegister: FileCheck = {
  card: {
    code: 'file/register',
    severity: 'error',
    looksAt: 'A line of the register of tags that cannot be taken.',
    why: 'A tag that drops out of the register is a printed code that leads nowhere.',
    sources: ['project-rule'],
    fix: 'Correct the line. Spreadsheets like to turn tags into numbers and dates into their own form: format the columns as text.',
    worked: {
      example: 'tag,site,box,state,issued,now\n7KQ3F9X,base,VB1,lost,2026-03-20,',
      instead: 'tag,site,box,state,issued,now\n7KQ3F9X,base,VB1,live,2026-03-20,'
    }
  },
  word: fault => WORDS[detail(fault, 'kind')]?.(fault) ?? { message: 'This line cannot be taken.', fix: 'Correct it.' }
}

const WORDS: Readonly<Record<string, (fault: Fault) => { readonly message: string; readonly fix: string }>> = {
  unreadable,
  empty: fault => ({
    message: 'The register is empty.',
    fix: `Bring back what stood in it from a copy. One without any tag is the line "${details(fault, 'columns').join(',')}".`
  }),
  columns: fault => ({
    message: `The register has no column ${listed(details(fault, 'missing'), 'or')}.`,
    fix: `Make the first line "${details(fault, 'columns').join(',')}".`
  }),
  'no-head': fault => ({
    message: 'The first line of the register is a tag; the names of the columns should stand above it.',
    fix: `Put the line "${details(fault, 'columns').join(',')}" in front of it.`
  }),
  merge: fault => ({
    message: `Two versions of the register were joined, and the marks between them still stand on ${details(fault, 'lines').length === 1 ? 'line' : 'lines'} ${shortList(details(fault, 'lines'), 'and')}.`,
    fix: 'Keep every tag of both versions, once; then take out the lines that start with <<<<<<<, ======= and >>>>>>>.'
  }),
  quotes: () => ({
    message: 'A quotation mark opens in this line and is closed nowhere, so what follows it is not read.',
    fix: 'Take the mark out, or close it behind its cell.'
  }),
  blank: fault => ({
    message: `The column ${detail(fault, 'column')} is blank in the line of the tag ${detail(fault, 'tag') || 'that is missing'}.`,
    fix: `Fill in ${detail(fault, 'column')}.`
  }),
  tag: fault => ({
    message: `${detail(fault, 'tag')} is not a tag.`,
    fix:
      detail(fault, 'nearest') === ''
        ? 'Copy it again from the label or from the site file.'
        : `Write ${detail(fault, 'nearest')}, in capitals.`
  }),
  state: fault => ({
    message: `${detail(fault, 'tag')}: "${detail(fault, 'state')}" is not a state of a tag.`,
    fix: `Write ${detail(fault, 'nearest') || listed(details(fault, 'known'), 'or')}.`
  }),
  date: fault => ({
    message: `${detail(fault, 'tag')}: "${detail(fault, 'issued')}" is not a day written year-month-day.`,
    fix: `Write ${listed(details(fault, 'candidates'), 'or') || 'it as 2026-05-04'}.`
  }),
  now: fault => ({
    message: `${detail(fault, 'tag')} is replaced, and no tag stands in its place.`,
    fix: 'Write the tag that answers instead in the column "now".'
  })
}
