import { tagProblem } from '../../domain/tags/tag-problem.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { tagIndex } from './tag-index.ts'

export const tagIssuedButGone: SiteCheck = {
  card: {
    code: 'tag/issued-but-gone',
    severity: 'error',
    looksAt: 'A live tag of the register that no box of its site carries any more.',
    why: 'A label with that code is still under a lid somewhere, and whoever scans it has to be told what became of the box.',
    sources: ['project-rule'],
    fix: 'Put the tag back in the site file, or mark it moved, retired or replaced.',
    worked: {
      example: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`,
      instead: `title: Base site`
    }
  },
  run: ({ site, fleet }, report) => {
    const held = new Set(site.boxes.map(box => box.tag))
    for (const entry of tagIndex(fleet).bySite.get(site.id) ?? []) {
      if (entry.state !== 'live' || held.has(entry.tag)) continue
      const box = site.boxes.find(one => one.id === entry.box)
      // Where the box carries its neighbor's tag instead, tag/duplicate names this one.
      if (box && site.boxes.some(one => one.id !== box.id && one.tag !== undefined && one.tag === box.tag)) continue
      // Where the box carries a slip of it, tag/malformed names this one.
      if (box?.tag !== undefined && tagProblem(box.tag)) continue
      report({
        subject: entry.box,
        at: box ? at(box, 'tag') : at(site, 'boxes'),
        message: `The register holds the live tag ${entry.tag} for ${entry.box}, and no box of this site carries it.`,
        fix: `Put "tag: ${entry.tag}" back, or run: npx underlid tag ${site.id} --retire ${entry.tag}`,
        values: { tag: entry.tag }
      })
    }
  }
}
