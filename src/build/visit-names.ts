import type { Fault } from '../load/loaded.ts'
import type { SiteSources } from './read-fleet.ts'

/** Texts in the visits folder that are not read as visits, since their names do not end in .md: saved by another program, or below another folder. */
const TEXT = /^visits\/.*\.(?:txt|text|markdown|mdown|docx?|odt|rtf|ya?ml|md)$/iu

export function unreadVisitFaults({ folder, others }: Pick<SiteSources, 'folder' | 'others'>): Fault[] {
  return others
    .filter(path => TEXT.test(path))
    .map(path => ({
      code: 'file/not-a-visit',
      subject: '',
      place: { file: `${folder}/${path}`, line: 1, column: 1, length: 0, text: '' },
      details: { name: path.slice(path.lastIndexOf('/') + 1) },
      fatal: false
    }))
}
