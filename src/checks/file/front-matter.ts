import type { Fault } from '../../load/loaded.ts'
import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'
import { unreadable } from './unreadable.ts'

export const fileFrontMatter: FileCheck = {
  card: {
    code: 'file/front-matter',
    severity: 'error',
    looksAt: 'A file whose keys do not stand between two lines of three dashes.',
    why: 'Only what stands between the two lines is read as data.',
    sources: ['project-rule'],
    fix: 'Start the file with a line of three dashes, end the keys with another, and write prose below.',
    worked: {
      example: '---- notes',
      instead: 'title: Base Site'
    }
  },
  word: fault =>
    WORDS[detail(fault, 'kind')]?.(fault) ?? {
      message: 'The keys of this file were not found.',
      fix: 'Put them between two lines of "---".'
    }
}

const WORDS: Readonly<Record<string, (fault: Fault) => { readonly message: string; readonly fix: string }>> = {
  unreadable,
  empty: () => ({
    message: 'The file is empty.',
    fix: 'Bring back what stood in it, or start it with "---", a title and another "---".'
  }),
  missing: () => ({
    message: 'The file does not start with a line of three dashes.',
    fix: 'Make "---" the first line, before the first key.'
  }),
  'line-ends': () => ({
    message:
      'The lines of this file end in carriage returns alone, as old text editors write them, or in one too many, as a wrong transfer leaves them.',
    fix: 'Save it with Unix (LF) or Windows (CR LF) line ends: editors ask for it where they save, or show it at the foot of the window.'
  }),
  unseen: () => ({
    message: 'A blank or a sign that cannot be seen stands before the dashes of the first line.',
    fix: 'Take the first line out and type it anew: "---".'
  }),
  language: fault => ({
    message: `The first line is "${fault.place.text.trim().slice(0, 40)}"; only the three dashes may stand there. Keys in another language are not read, and nothing is run.`,
    fix: 'Make the first line "---" and nothing else.'
  }),
  open: () => ({
    message: 'The second line of three dashes is missing, so the keys have no end.',
    fix: 'Put "---" on a line of its own after the last key. Where the file ends in the middle, it was not saved whole: bring back the last copy.'
  }),
  closing: fault => ({
    message: `"${fault.place.text.trim().slice(0, 40)}" would end the keys here.`,
    fix: 'Only the three dashes may stand on the line that ends the keys; elsewhere do not start a line with them.'
  }),
  'more-keys': () => ({
    message: 'Keys stand between lines of dashes once more here, and are not read: they are printed as prose.',
    fix: 'Move them up to the other keys, above the second line of dashes of this file, and take these dashes out.'
  }),
  'no-keys': () => ({
    message: 'Text or a list stands between the dashes where keys are due.',
    fix: 'Write keys with values, such as "title: Kestrel Cross Roundabout".'
  }),
  'no-file': fault => ({
    message: 'The folder has no file site.md.',
    fix:
      detail(fault, 'instead') === ''
        ? 'Write the file, or start the site with: npx underlid new SITE'
        : `There is ${detail(fault, 'instead')}. If that is it, save it as text under the name site.md, in small letters.`
  })
}
