import type { Fault, ReadTrouble } from '../../load/loaded.ts'
import { detail } from './say.ts'

/** Words for a file that is there and cannot be read. */
export function unreadable(fault: Fault): { readonly message: string; readonly fix: string } {
  return WORDS[detail(fault, 'trouble') as ReadTrouble]
}

const WORDS: Readonly<Record<ReadTrouble, { readonly message: string; readonly fix: string }>> = {
  encoding: {
    message: 'The file is not UTF-8 text.',
    fix: 'Open it in the program that wrote it, and save it again as UTF-8 ("Encoding" in the window that saves).'
  },
  right: { message: 'The file may not be read.', fix: 'Give yourself the right to read it.' },
  link: { message: 'The link leads in a ring or nowhere.', fix: 'Put the file itself in its place.' },
  'no-file': { message: 'A folder stands where a file is due.', fix: 'Move it, and put the file in its place.' },
  disk: { message: 'The disk did not hand the file over.', fix: 'Look after the disk, or put a copy in its place.' }
}
