import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const tagMissing: SiteCheck = {
  card: {
    code: 'tag/missing',
    severity: 'warning',
    looksAt: 'A box without a tag.',
    why: 'Without a tag there is no code to print and no page behind it.',
    sources: ['project-rule'],
    fix: 'Run "underlid tag SITE"; it draws the tag and enters it in the register.',
    worked: {
      example: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`,
      instead: `boxes:
  - { id: VB1, tag: 7KQ3F9X, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`
    }
  },
  run: ({ site }, report) => {
    for (const box of site.boxes) {
      if (box.tag !== undefined) continue
      report({
        subject: box.id,
        at: at(box, 'tag'),
        message: `${box.id} has no tag, so no code and no page.`,
        fix: `Run: npx underlid tag ${site.id}`
      })
    }
  }
}
