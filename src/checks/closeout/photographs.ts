import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'
import type { PhotoKind } from '../../model/closeout.ts'

const ASKED: readonly PhotoKind[] = ['open trench', 'splice', 'shut-off', 'meter']

export const closeoutPhotographs: SiteCheck = {
  card: {
    code: 'closeout/photographs',
    severity: 'warning',
    looksAt:
      'Photographs of what is buried and of each box: open trench, splices, shut-off, meter, box with the lid off.',
    why: 'What was photographed before the trench was closed need not be dug up to be found.',
    sources: ['project-rule'],
    fix: 'Take those that are lacking and write them under photographs.',
    worked: {
      example: `closeout: { acceptance: 2025-04-30, photographs: [{ file: vb1-open.jpg, kind: box open, of: VB1 }] }`,
      instead: `closeout:
  acceptance: 2025-04-30
  photographs:
    - { file: vb1-open.jpg, kind: box open, of: VB1 }
    - { file: vb2-open.jpg, kind: box open, of: VB2 }
    - { file: trench.jpg, kind: open trench }
    - { file: splice.jpg, kind: splice }
    - { file: shut-off.jpg, kind: shut-off }
    - { file: meter.jpg, kind: meter }`
    }
  },
  run: ({ site }, report) => {
    const closeout = closedOut(site)
    if (!closeout) return
    const { photographs } = closeout
    const kinds = ASKED.filter(kind => !photographs.some(one => one.kind === kind))
    const boxes = site.boxes.filter(
      ({ id, photos, status }) =>
        status === undefined &&
        photos.length === 0 &&
        !photographs.some(one => one.kind === 'box open' && one.of === id)
    )
    const lacking = [...kinds, ...boxes.map(one => one.id)]
    if (lacking.length > 0)
      report({
        subject: lacking.join(', '),
        at: at(closeout, 'photographs'),
        message: `No photograph of ${joined(lacking)}.`,
        fix: 'Put them into the photos folder and write them under photographs.'
      })
  }
}
