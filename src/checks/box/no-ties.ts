import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { boxesInUse } from './in-use.ts'

/** Two permanent points fix a place on the ground; one leaves a circle. */
const LEAST_TIES = 2

export const noTies: SiteCheck = {
  card: {
    code: 'box/no-ties',
    severity: 'warning',
    looksAt: 'A valve box with fewer than two measured distances to permanent things.',
    why: 'A box under mulch or grass cannot be found without two distances to things that stay.',
    sources: ['nc-record-drawing'],
    fix: 'Measure from two permanent points, such as a pole and a curb.',
    worked: {
      example: `boxes:
  - { id: VB1, tag: 7KQ3F9X, where: center, ties: ["4.2 m from lamp post 7"] }
  - { id: VB2, where: south, ties: ["4.2 m from lamp post 7", "6 m from curb"] }`,
      instead: `boxes:
  - { id: VB1, tag: 7KQ3F9X, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
  - { id: VB2, where: south, ties: ["4.2 m from lamp post 7", "6 m from curb"] }`
    }
  },
  run: ({ site }, report) => {
    for (const box of boxesInUse(site)) {
      if (box.ties.length >= LEAST_TIES) continue
      report({
        subject: box.id,
        at: at(box, 'ties'),
        message:
          box.ties.length === 0
            ? `${box.id} has no measured ties.`
            : `${box.id} has one measured tie; it takes two to find a box.`,
        fix: 'Write two: ties: ["4.2 m from lamp post 7", "6.0 m from curb"].',
        values: { ties: box.ties.length }
      })
    }
  }
}
