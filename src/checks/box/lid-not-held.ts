import { boxLocationOf } from '../../domain/box/box-location.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { boxesInUse } from './in-use.ts'

/** Words for a lid that nothing holds. Only words that say it outright: a lid of which nothing is said is asked for elsewhere. */
const LOOSE =
  /\bpush[- ]?(fit|in|on)\b|\bsnap(s)?[- ]?(fit|in|on)\b|\bloose\b|\blift(s)?[- ]?off\b|\b(not|un)[- ]?(bolted|locked|fixed|screwed)\b|\b(no|without|missing) (a )?(bolts?|screws?|locks?)\b|\bbolts? (is |are )?missing\b/iu

export const lidNotHeld: SiteCheck = {
  card: {
    code: 'box/lid-not-held',
    severity: 'warning',
    looksAt:
      'A lid that the site file says is loose or pushed in, with no lock, where people walk or vehicles can reach.',
    why: 'A lid that tips or is carried off leaves an open hole in the way of feet and wheels, and the kit under it to anybody.',
    sources: ['common-practice'],
    fix: 'Bolt or lock the lid, and write how: "bolted, two hex bolts".',
    worked: {
      example: `place: roundabout
boxes:
  - { id: VB1, where: center island, load-rating: C250, lid: push-fit }`,
      instead: `place: roundabout
boxes:
  - { id: VB1, where: center island, load-rating: C250, lid: "bolted, two hex bolts" }`
    }
  },
  run: ({ site }, report) => {
    for (const box of boxesInUse(site)) {
      const { id, lid, lock, where } = box
      if (lid === undefined || lock !== undefined || !LOOSE.test(lid)) continue
      const location = boxLocationOf(site.place, where)
      if (location === 'lawn or planting') continue
      report({
        subject: id,
        at: at(box, 'lid'),
        message: `${id}: its lid is written as "${lid}", and its place is ${location}.`,
        fix: 'Bolt it or fit a lock, and write that under "lid:" or "lock:". The road authority may ask for more.'
      })
    }
  }
}
