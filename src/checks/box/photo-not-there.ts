import type { FileCheck } from '../check.ts'

export const photoNotThere: FileCheck = {
  card: {
    code: 'box/photo-not-there',
    severity: 'warning',
    looksAt: 'A picture that the site file or a visit names and that is not in the photos folder of the site.',
    why: 'The binder and the box page leave the picture out.',
    sources: ['project-rule'],
    fix: 'Put the picture in the photos folder, or correct its name.',
    worked: {
      example: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"], photos: [not-there.jpg] }`,
      instead: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`
    }
  },
  word: ({ subject, details }) => ({
    message: `${subject}: there is no picture ${details['file']} in ${details['folder']}.`,
    fix:
      details['near'] === ''
        ? `Put ${details['file']} in ${details['folder']}, or correct the name.`
        : `The picture there is ${details['near']}: write it so, capitals included.`
  })
}
