import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const tagUnregistered: SiteCheck = {
  card: {
    code: 'tag/unregistered',
    severity: 'warning',
    looksAt: 'A tag in a site file that the register does not hold for that box.',
    why: 'The register is what keeps a printed code answerable for good, and a tag from being given twice.',
    sources: ['project-rule'],
    fix: 'Run "underlid tag SITE"; it enters the tags that are missing.',
    worked: {
      example: `boxes:
  - { id: VB9, tag: 7KQ3F9X, where: centre, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`,
      instead: `boxes:
  - { id: VB9, where: centre, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`
    }
  },
  run: ({ site, fleet }, report) => {
    for (const box of site.boxes) {
      if (box.tag === undefined) continue
      const entry = fleet.register.find(one => one.tag === box.tag)
      if (entry && entry.site === site.id && entry.box === box.id) continue
      const elsewhere = entry ? ` It is registered for ${entry.box} of ${entry.site}.` : ''
      report({
        subject: box.id,
        at: at(box, 'tag'),
        message: `${box.id}: the tag ${box.tag} is not in the register for this box.${elsewhere}`,
        fix: entry
          ? 'See which of the two boxes carries the label, and correct the other.'
          : `Run: npx underlid tag ${site.id}`
      })
    }
  }
}
