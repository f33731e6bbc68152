import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

const ON_A_WALL = /\b(wall|post|pole|pedestal|indoors?|cabinet)\b/iu
const IN_A_BOX = /\b(box|lid|vault)\b/iu
const IN_THE_GROUND =
  /\bin (the )?(ground|lawn|bed|planter|sidewalk|footway|pavement)\b|\bburied\b|\bbelow (grade|ground)\b|\bflush\b/iu

export const mountingAgainstSheet: SiteCheck = {
  card: {
    code: 'box/mounting-against-sheet',
    severity: 'warning',
    looksAt:
      'A controller whose product sheet says that it is fixed to a wall or a post, in a box that is in the ground.',
    why: 'Such a unit is made to drain and dry in the air. In a box it stands in damp and water, whatever its code says, and the sheet does not answer for it.',
    sources: ['product-sheet', 'common-practice'],
    fix: 'Mount it as the sheet says, or fit a unit that is made for the box.',
    worked: {
      example: `boxes:
  - { id: VB1, where: north bed, mounting: in the ground }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/on-a-wall.md }`,
      instead: `boxes:
  - { id: VB1, where: north bed, mounting: "on a post, 1.2 m up" }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/on-a-wall.md }`
    }
  },
  run: ({ site }, report) => {
    for (const { id, sheet, where, box: boxId } of controllersInService(site)) {
      // One that says where it is itself stands there; its box holds its splices.
      if (where !== undefined) continue
      const mounting = sheet?.mounting
      const box = site.boxes.find(one => one.id === boxId)
      if (!sheet || mounting === undefined || box?.mounting === undefined) continue
      if (!ON_A_WALL.test(mounting) || IN_A_BOX.test(mounting) || !IN_THE_GROUND.test(box.mounting)) continue
      report({
        subject: id,
        at: at(box, 'mounting'),
        message: `${id}: its sheet says "${mounting}", and ${box.id} is ${box.mounting}.`,
        fix: 'Mount it as the sheet says, or fit a unit that is made for the box.',
        related: [{ at: at(sheet, 'mounting'), note: 'how it is to be mounted' }]
      })
    }
  }
}
