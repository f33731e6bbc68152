import type { Box, Site } from '../../model/site.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { registeredTag, tagIndex } from './tag-index.ts'
import type { TagHolder } from './tag-index.ts'

export const tagDuplicate: SiteCheck = {
  card: {
    code: 'tag/duplicate',
    severity: 'error',
    looksAt: 'One tag on two boxes, in this site or in any other.',
    why: 'Two boxes would open one page, and a technician at the second would work from the wrong plan.',
    sources: ['project-rule'],
    fix: 'Keep it on the box that carries the label and draw a new tag for the other.',
    worked: {
      example: `boxes:
  - { id: VB1, tag: 7KQ3F9X, where: north, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
  - { id: VB2, tag: 7KQ3F9X, where: south, ties: ["4.4 m from lamp post 7", "6.2 m from curb"] }`,
      instead: `boxes:
  - { id: VB1, tag: 7KQ3F9X, where: north, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
  - { id: VB2, where: south, ties: ["4.4 m from lamp post 7", "6.2 m from curb"] }`
    }
  },
  run: ({ site, fleet }, report) => {
    const { holders, bySite } = tagIndex(fleet)
    for (const [index, box] of site.boxes.entries()) {
      const first = box.tag === undefined ? undefined : firstHolder(box, index, site, holders.get(box.tag) ?? [])
      if (!first) continue
      report({
        subject: box.id,
        at: at(box, 'tag'),
        message: `${box.id} carries the tag ${box.tag}, which ${first.box} ${first.site === site.id ? 'of this site' : `of ${first.site}`} carries too.`,
        fix: fixText(box.id, site.id, registeredTag(box, site, bySite.get(site.id) ?? [])),
        values: { tag: box.tag ?? '', other_box: first.box, other_site: first.site }
      })
    }
  }
}

/** The holder to keep: an earlier box of this site, or a box of a site whose name sorts first. One finding a pair. */
function firstHolder(box: Box, index: number, site: Site, holders: readonly TagHolder[]): TagHolder | undefined {
  const own = site.boxes.slice(0, index).find(one => one.tag === box.tag)
  if (own) return { site: site.id, box: own.id }
  return holders.find(other => other.site < site.id)
}

function fixText(box: string, site: string, own: string | undefined): string {
  return own === undefined
    ? `See which box carries the label; remove the tag from the other and run "npx underlid tag ${site}".`
    : `See the label of ${box}: the register holds ${own} for it. If that is what it says, write "tag: ${own}".`
}
