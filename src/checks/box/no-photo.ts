import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { boxesInUse } from './in-use.ts'

export const noPhoto: SiteCheck = {
  card: {
    code: 'box/no-photo',
    severity: 'note',
    looksAt: 'A valve box without a photograph.',
    why: 'One picture with the lid open and the tag readable tells a stranger that it is the right box.',
    sources: ['project-rule'],
    fix: 'Take one with the lid open at the next visit.',
    worked: {
      example: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`,
      instead: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"], photos: [vb1-open.jpg] }`
    }
  },
  run: ({ site }, report) => {
    const without = boxesInUse(site).filter(box => box.photos.length === 0)
    const [first] = without
    if (!first) return
    const names = without.map(box => box.id).join(', ')
    report({
      subject: without.length === 1 ? first.id : '',
      at: at(first, 'photos'),
      message:
        without.length === 1
          ? `${first.id} has no photograph.`
          : `${without.length} boxes have no photograph: ${names}.`,
      fix: `At the next visit take one${without.length === 1 ? '' : ' of each'} with the lid open and the tag readable, and list it under "photos:".`,
      values: { boxes: without.length }
    })
  }
}
