import type { Fault } from '../load/loaded.ts'
import type { SiteSources } from './read-fleet.ts'

/** Texts in the visits folder that are not read as visits, since their names do not end in .md: saved by another program, or below another folder. */
const TEXT = /^visits\/.*\.(?:txt|text|markdown|mdown|docx?|odt|rtf|ya?ml|md)$/iu
/** A text that is named as visits are, in another folder of the site: beside site.md, or in one that is called "visit". */
const ELSEWHERE = /(?:^|\/)\d{4}-\d{1,2}-\d{1,2}(?!\d)[^/]*\.(?:md|markdown|mdown)$/iu
/** Copies that editors keep (site.md~, site.md.bak) say nothing that site.md did not say. */
const SITE_COPY = /^site(?![a-z0-9])[^/]*\.(?:md|markdown|md\.txt)$/iu

/** Texts of a site that nobody reads and somebody may have written for it. */
export function unreadTextFaults({ folder, others, site }: Pick<SiteSources, 'folder' | 'others' | 'site'>): Fault[] {
  return others.flatMap(path => {
    const isVisit = TEXT.test(path) || ELSEWHERE.test(path)
    if (!isVisit && !(site && SITE_COPY.test(path))) return []
    return [
      {
        code: isVisit ? 'file/not-a-visit' : 'file/site-copy',
        subject: '',
        place: { file: `${folder}/${path}`, line: 1, column: 1, length: 0, text: '' },
        details: { name: path.slice(path.lastIndexOf('/') + 1) },
        fatal: false
      }
    ]
  })
}
