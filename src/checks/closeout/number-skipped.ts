import { groupBy } from '../../base/collections.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut, joined } from './closed-out.ts'

export const numberSkipped: SiteCheck = {
  card: {
    code: 'closeout/number-skipped',
    severity: 'note',
    looksAt: 'Numbers of boxes, controllers and zones at handover: one that is left out between two others.',
    why: 'Whoever finds VB1 and VB3 looks for VB2 until somebody says that there is none.',
    sources: ['project-rule'],
    fix: 'Keep the record of what was taken out, with what became of it, or tell it in the prose of the file.',
    worked: {
      example: `boxes:
  - { id: VB1, where: north, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
  - { id: VB2, where: center, ties: ["4.4 m from lamp post 7", "6.2 m from curb"] }
  - { id: VB4, where: south, ties: ["4.6 m from lamp post 7", "6.4 m from curb"] }
closeout: { acceptance: 2025-04-30 }`,
      instead: `boxes:
  - { id: VB1, where: north, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
  - { id: VB2, where: center, ties: ["4.4 m from lamp post 7", "6.2 m from curb"] }
  - { id: VB3, where: by the path, status: taken out in 2025, ties: ["4.5 m from lamp post 7", "6.3 m from curb"] }
  - { id: VB4, where: south, ties: ["4.6 m from lamp post 7", "6.4 m from curb"] }
closeout: { acceptance: 2025-04-30 }`
    }
  },
  run: ({ site }, report) => {
    if (!closedOut(site)) return
    const lists = [
      ['boxes', site.boxes.map(one => one.id)],
      ['controllers', site.controllers.map(one => one.id)],
      ['stations', site.stations.map(one => one.zone)]
    ] as const
    for (const [key, names] of lists) {
      // What the prose names has its reason there.
      const skipped = skippedIn(names).filter(name => !site.prose.some(one => one.markdown.includes(name)))
      if (skipped.length > 0)
        report({
          subject: skipped.join(', '),
          at: at(site, key),
          message: `The numbers leave out ${joined(skipped)}.`,
          fix: 'Keep its record with what became of it, or say in the prose of the file why there is none.',
          values: { count: skipped.length }
        })
    }
  }
}

/** A gap longer than this is another way of counting, by hundreds for instance. */
const LONGEST_GAP = 5

/** "VB3" of VB1, VB2 and VB4. */
function skippedIn(names: readonly string[]): string[] {
  const numbered = names.flatMap(name => {
    const [, before = '', digits = ''] = /^(.*?)(\d{1,6})$/u.exec(name) ?? []
    return digits === '' ? [] : [{ before, digits }]
  })
  return [...groupBy(numbered, one => one.before)].flatMap(([before, all]) => {
    const sorted = [...new Set(all.map(one => Number(one.digits)))].sort((a, b) => a - b)
    const wide = Math.min(...all.map(one => one.digits.length))
    return sorted.flatMap((number, index) => {
      const gap = number - (sorted[index - 1] ?? number - 1) - 1
      if (gap > LONGEST_GAP) return []
      return Array.from({ length: gap }, (_, step) => `${before}${String(number - gap + step).padStart(wide, '0')}`)
    })
  })
}
