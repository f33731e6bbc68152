import type { FileCheck } from '../check.ts'

export const attachmentNotReadable: FileCheck = {
  card: {
    code: 'closeout/attachment-not-readable',
    severity: 'warning',
    looksAt: 'A drawing, report or signed sheet that is no PDF or picture, though its name says so.',
    why: 'The binder cannot bind it in: the owner gets a place without its sheet.',
    sources: ['project-rule'],
    fix: 'Save the document anew as PDF, or the picture as JPEG or PNG.',
    worked: {
      example: `closeout:
  record-drawings:
    - { number: RD-1, file: scan.jpg }`,
      instead: `closeout:
  record-drawings:
    - { number: RD-1, file: record-drawing.pdf }`
    }
  },
  word: ({ details }) => {
    const file = String(details['file'])
    return /\.pdf$/iu.test(file)
      ? {
          message: `${file} is not a PDF, though its name says so.`,
          fix: `Open the document in the program that made it, save it as PDF in ${details['folder']}, and name that file.`
        }
      : {
          message: `${file} is not a picture in JPEG, PNG or WebP, though its name says so.`,
          fix: `Save it anew as JPEG, PNG or PDF in ${details['folder']}, and name that file.`
        }
  }
}
