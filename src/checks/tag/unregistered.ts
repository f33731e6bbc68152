import type { RegisteredTag } from '../../model/fleet.ts'
import type { SiteCheck } from '../check.ts'
import { tagProblem } from '../../domain/tags/tag-problem.ts'
import { at } from '../at.ts'
import { tagIndex } from './tag-index.ts'

export const tagUnregistered: SiteCheck = {
  card: {
    code: 'tag/unregistered',
    severity: 'warning',
    looksAt: 'A tag in a site file that the register does not hold for that box.',
    why: 'The register is what keeps a printed code answerable for good, and a tag from being given twice.',
    sources: ['project-rule'],
    fix: 'Run "underlid tag SITE"; it enters the tags that are missing.',
    worked: {
      example: `boxes:
  - { id: VB9, tag: 7KQ3F9X, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`,
      instead: `boxes:
  - { id: VB9, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`
    }
  },
  run: ({ site, fleet }, report) => {
    if (fleet.registerGone === true) return
    const { registered } = tagIndex(fleet)
    for (const box of site.boxes) {
      const { tag } = box
      // A tag that is none is told by tag/malformed; registering it would not mend it.
      if (tag === undefined || tagProblem(tag)) continue
      const entry = registered.get(tag)
      const own = entry?.site === site.id && entry.box === box.id
      if (entry && own && entry.state === 'live') continue
      // The box for which it is registered carries it too: that is told as one tag on two boxes.
      if (entry && !own && site.boxes.some(one => one.id === entry.box && one.tag === tag) && entry.site === site.id)
        continue
      report({
        subject: box.id,
        at: at(box, 'tag'),
        message: entry && own ? goneText(box.id, entry) : otherText(box.id, tag, entry),
        fix: !entry
          ? `Run: npx underlid tag ${site.id}`
          : own
            ? 'See which tag is on the label. A tag that was given up is not used again: take it out here, or correct the register.'
            : `See which of the two boxes carries the label, and correct the other.${renamed(site.id, box.id, entry)}`,
        values: { tag, ...(entry ? { state: entry.state } : {}) }
      })
    }
  }
}

/** The same box of another site: most likely its folder has another name now. */
const renamed = (site: string, box: string, entry: RegisteredTag): string =>
  entry.site !== site && entry.box === box
    ? ` If the folder ${entry.site} was renamed, give it that name again, or write ${site} for ${entry.site} in the register.`
    : ''

const goneText = (box: string, { tag, state, now }: RegisteredTag): string =>
  `${box}: the register says that the tag ${tag} is ${state}${now === undefined ? '' : ` (now ${now})`}.`

function otherText(box: string, tag: string, entry: RegisteredTag | undefined): string {
  const elsewhere = entry ? ` It is registered for ${entry.box} of ${entry.site}.` : ''
  return `${box}: the tag ${tag} is not in the register for this box.${elsewhere}`
}
