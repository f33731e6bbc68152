import type { FileCheck } from '../check.ts'

export const attachmentNotThere: FileCheck = {
  card: {
    code: 'closeout/attachment-not-there',
    severity: 'warning',
    looksAt: 'A drawing, report or signed sheet that the closeout names and that is not beside the site file.',
    why: 'The binder cannot bind it in, and its place says so.',
    sources: ['project-rule'],
    fix: 'Put the file beside the site file, or correct its name.',
    worked: {
      example: `closeout:
  record-drawings:
    - { number: RD-1, file: not-there.pdf }`,
      instead: `closeout:
  record-drawings:
    - { number: RD-1 }`
    }
  },
  word: ({ details }) => ({
    message: `There is no file ${details['file']} in ${details['folder']}.`,
    fix: `Put ${details['file']} in ${details['folder']}, or correct the name.`
  })
}
