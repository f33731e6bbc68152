import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const boxHazards: SiteCheck = {
  card: {
    code: 'safety/box-hazards',
    severity: 'note',
    looksAt: 'Hazards that the site file lists for a box.',
    why: 'The next person reaches into the box with a hand, and reads this only if it is said.',
    sources: ['niosh-outdoor', 'site-record'],
    fix: 'Clear the hazard and take it off the list, or leave it there for the next visit to see.',
    worked: {
      example: `boxes:
  - { id: VB1, tag: 7KQ3F9X, ties: ["4.2 m from lamp post 7", "6.0 m from curb"], hazards: [wasps in summer] }
  - { id: VB2, tag: P5DAU38, ties: ["3.0 m from bench", "5.5 m from curb"] }`,
      instead: `boxes:
  - { id: VB1, tag: 7KQ3F9X, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
  - { id: VB2, tag: P5DAU38, ties: ["3.0 m from bench", "5.5 m from curb"] }`
    }
  },
  run: ({ site }, report) => {
    for (const box of site.boxes) {
      if (box.hazards.length === 0) continue
      report({
        subject: box.id,
        at: at(box, 'hazards'),
        message: `${box.id} lists: ${box.hazards.join(', ')}.`,
        fix: 'Look in with a light first and wear gloves. Once it is cleared, take it off the list. Local pest rules and first-aid advice decide.',
        values: { hazards: box.hazards.length }
      })
    }
  }
}
