import type { FileCheck } from '../check.ts'
import { detail, fixed, named, suchAs } from './say.ts'

export const wrongShape: FileCheck = {
  card: {
    code: 'file/wrong-shape',
    severity: 'error',
    looksAt: 'One value where a list is due, a list where one value is due, a bare number where a name is due.',
    why: 'What stands there cannot be taken for what the key holds.',
    sources: ['project-rule'],
    fix: 'Write it in the shape that the message shows.',
    worked: {
      example: `boxes:
  - { id: VB1, where: north bed, ties: "4.2 m from lamp post 7", photos: [vb1-open.jpg] }
  - { id: VB2, where: south bed, ties: ["3.0 m from bench", "5.5 m from curb"], photos: [vb2-open.jpg] }`,
      instead: `boxes:
  - { id: VB1, where: north bed, ties: ["4.2 m from lamp post 7", "6.0 m from curb"], photos: [vb1-open.jpg] }
  - { id: VB2, where: south bed, ties: ["3.0 m from bench", "5.5 m from curb"], photos: [vb2-open.jpg] }`
    }
  },
  word: fault => ({
    message: named(
      fault,
      `"${detail(fault, 'written')}" is ${detail(fault, 'got')}, not ${detail(fault, 'expected')}.`
    ),
    fix: fixed(fault, suchAs(`${detail(fault, 'key')}: ${detail(fault, 'example')}`))
  })
}
