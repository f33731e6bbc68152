import { tagProblem } from '../../domain/tags/tag-problem.ts'
import type { TagProblem } from '../../domain/tags/tag-problem.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { registeredTag, tagIndex } from './tag-index.ts'

export const tagMalformed: SiteCheck = {
  card: {
    code: 'tag/malformed',
    severity: 'error',
    looksAt: 'A tag that is not seven characters of the tag alphabet, or whose last character does not check.',
    why: 'A wrong tag prints a code that leads nowhere. The last character catches one wrong character or two that changed places.',
    sources: ['project-rule'],
    fix: 'Copy the tag from the label or from the register again; never make one up.',
    worked: {
      example: `boxes:
  - { id: VB1, tag: 7KQ3F90, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`,
      instead: `boxes:
  - { id: VB1, where: center, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }`
    }
  },
  run: ({ site, fleet }, report) => {
    const { bySite } = tagIndex(fleet)
    for (const box of site.boxes) {
      const problem = box.tag === undefined ? undefined : tagProblem(box.tag)
      if (problem === undefined) continue
      report({
        subject: box.id,
        at: at(box, 'tag'),
        message: `${box.id}: the tag ${box.tag} ${problemText(problem)}.`,
        fix: fixText(box.id, registeredTag(box, site, bySite.get(site.id) ?? []))
      })
    }
  }
}

const fixText = (box: string, own: string | undefined): string =>
  own === undefined
    ? 'Copy it from the label or from sites/tags.csv again, or remove it and run "npx underlid tag".'
    : `See the label of ${box}: the register holds ${own} for it. If that is what it says, write "tag: ${own}".`

function problemText(problem: TagProblem): string {
  switch (problem.kind) {
    case 'length':
      return `has ${problem.length} characters; a tag has seven`
    case 'character':
      return `holds "${problem.character}", which no tag has`
    case 'small-letters':
      return `is written in small letters; a tag is ${problem.perhaps}`
    case 'check':
      return 'does not check: one character is wrong, or two changed places'
  }
}
