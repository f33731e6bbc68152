import type { FileCheck } from '../check.ts'

export const photoNotAPicture: FileCheck = {
  card: {
    code: 'box/photo-not-a-picture',
    severity: 'warning',
    looksAt: 'A file named as a photograph that is not a JPEG, PNG or WebP, whatever its name ends in.',
    why: 'Browsers and printers do not show it, and what the camera wrote into it cannot be taken out, so the outputs leave it out.',
    sources: ['project-rule'],
    fix: 'Save the picture anew as JPEG or PNG.',
    worked: {
      example: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"], photos: [vb1-open.heic] }`,
      instead: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"], photos: [vb1-open.jpg] }`
    }
  },
  word: ({ subject, details }) => ({
    message: `${subject}: ${details['file']} is not a picture in JPEG, PNG or WebP.`,
    fix: `Save it anew as JPEG or PNG in ${details['folder']}, and name that file.`
  })
}
