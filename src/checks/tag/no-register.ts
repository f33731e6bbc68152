import type { FileCheck } from '../check.ts'
import { detail, details, shortList } from '../file/say.ts'

export const tagNoRegister: FileCheck = {
  card: {
    code: 'tag/no-register',
    severity: 'warning',
    looksAt: 'A register of tags that is not there, or holds no line, while boxes carry tags.',
    why: 'It alone knows the tags that were retired, moved or replaced: without it their printed codes lead nowhere.',
    sources: ['project-rule'],
    fix: 'Bring the register back from a copy or from the history of the folder. Only where there never was one, run "underlid tag".',
    worked: {
      example: 'tag,site,box,state,issued,now',
      instead: 'tag,site,box,state,issued,now\n7KQ3F9X,base,VB1,live,2026-03-20,'
    }
  },
  word: fault => {
    const [file, sites] = [detail(fault, 'file'), details(fault, 'sites')]
    const what =
      fault.details['isThere'] === true ? `The register ${file} holds no tag` : `There is no register ${file}`
    return {
      message: `${what}, and boxes of ${shortList(sites, 'and')} carry tags.`,
      fix: `Bring ${file} back from a copy or from the history of the folder. Only where there never was one, run "npx underlid tag".`,
      values: { sites: sites.length }
    }
  }
}
