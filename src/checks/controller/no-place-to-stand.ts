import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

export const noPlaceToStand: SiteCheck = {
  card: {
    code: 'controller/no-place-to-stand',
    severity: 'note',
    looksAt: 'A controller that is set by radio, of which nobody wrote where to stand with the phone.',
    why: 'A lid, wet soil and a wall shorten the range; the wrong place looks like a dead unit, or is the road.',
    sources: ['common-practice'],
    fix: 'Find the place at the next visit, off the road, and write it under "stand:".',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/by-radio.md }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/by-radio.md, stand: "on the path beside the box" }`
    }
  },
  run: ({ site }, report) => {
    for (const controller of controllersInService(site)) {
      if (controller.sheet?.setBy !== 'radio' || controller.stand !== undefined) continue
      report({
        subject: controller.id,
        at: at(controller, 'stand'),
        message: `${controller.id} is set by radio, and where to stand with the phone is not written.`,
        fix: 'Find the place at the next visit, off the road and within range, and write it: stand: "on the path beside the box".'
      })
    }
  }
}
