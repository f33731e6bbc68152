import { isAbsent } from '../../base/absent.ts'
import { leastLoadWords, ratingIsEnough } from '../../domain/box/box-load.ts'
import { boxLocationOf } from '../../domain/box/box-location.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { boxesInUse } from './in-use.ts'

export const loadRating: SiteCheck = {
  card: {
    code: 'box/load-rating',
    severity: 'warning',
    looksAt: 'The load rating of a box and its lid, against the least for the place that it lies in.',
    why: 'A lid that breaks under a wheel or a foot leaves an open hole, and the kit under it in pieces.',
    sources: ['scte-77', 'en-124', 'aashto-h20', 'project-rule'],
    fix: 'Fit a box and lid that are rated for the place. The designer and the road authority decide.',
    worked: {
      example: `place: roundabout
boxes:
  - { id: VB1, where: center island, load-rating: B125 }`,
      instead: `place: roundabout
boxes:
  - { id: VB1, where: center island, load-rating: C250 }`
    }
  },
  run: ({ site }, report) => {
    for (const box of boxesInUse(site)) {
      if (box.loadRating === undefined) continue
      const location = boxLocationOf(site.place, box.where)
      const enough = ratingIsEnough(box.loadRating, location)
      if (isAbsent(enough)) {
        report({
          subject: box.id,
          at: at(box, 'load-rating'),
          severity: 'note',
          message: `${box.id}: "${box.loadRating}" is not a rating known here, so it is held against nothing.`,
          fix: `Write what is cast in the lid: "Tier 15", "B125" or "H-20". This place (${location}) takes ${leastLoadWords(location)}.`
        })
      } else if (!enough) {
        report({
          subject: box.id,
          at: at(box, 'load-rating'),
          message: `${box.id} is rated ${box.loadRating}; its place (${location}) takes ${leastLoadWords(location)} or more.`,
          fix: `Fit a box and lid of ${leastLoadWords(location)}, or say under "where:" what it lies in. The designer and the road authority decide.`,
          values: { rating: box.loadRating, least: leastLoadWords(location) }
        })
      }
    }
  }
}
