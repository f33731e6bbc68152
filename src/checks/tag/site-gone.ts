import type { FileCheck } from '../check.ts'
import { detail, details, listed } from '../file/say.ts'

export const tagSiteGone: FileCheck = {
  card: {
    code: 'tag/site-gone',
    severity: 'warning',
    looksAt: 'Live tags of the register whose site has no folder any more.',
    why: 'Labels with those codes are still under lids somewhere. Whoever scans one is told only that the tag was issued.',
    sources: ['project-rule'],
    fix: 'Bring the folder of the site back, or mark its tags retired, moved or replaced in the register.',
    worked: {
      example: 'tag,site,box,state,issued,now\n7KQ3F9X,gone-site,VB1,live,2026-03-20,',
      instead: 'tag,site,box,state,issued,now\n7KQ3F9X,gone-site,VB1,retired,2026-03-20,'
    }
  },
  word: fault => {
    const tags = details(fault, 'tags')
    const [site, folder] = [detail(fault, 'site'), detail(fault, 'folder')]
    const them = tags.length === 1 ? 'it' : 'them'
    return {
      message: `The register holds ${tags.length === 1 ? 'the live tag' : `${tags.length} live tags`} ${listed(tags, 'and')} of the site ${site}, and there is no folder ${folder}/${site}.`,
      fix: `Bring ${folder}/${site} back. If it was renamed, write its new name in the register; if it is gone, mark ${them} retired, moved or replaced there.`
    }
  }
}
