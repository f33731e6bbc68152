import { needleIndex } from '../../domain/privacy/needle-index.ts'
import type { SiteCheck } from '../check.ts'
import { publicTexts } from './public-texts.ts'

export const privateWordPublic: SiteCheck = {
  card: {
    code: 'privacy/private-word-public',
    severity: 'error',
    looksAt: 'A word kept under "private:", or a private phone, that also stands in a text the scanned page carries.',
    why: 'Anybody who lifts the lid can read the page, so a gate code there is a code given away.',
    sources: ['project-rule'],
    fix: 'Take it out of the public text and keep it under "private:" alone.',
    worked: {
      example: `boxes:
  - { id: VB1, where: "behind the gate, code 7719", ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
private: { keys: "depot locker 14, code 7719" }`,
      instead: `boxes:
  - { id: VB1, where: behind the gate, ties: ["4.2 m from lamp post 7", "6.0 m from curb"] }
private: { keys: "depot locker 14, code 7719" }`
    }
  },
  run: ({ site }, report) => {
    const words = site.privateWords
    if (words.length === 0) return
    const index = needleIndex(words.map(word => word.text))
    for (const { text, at } of publicTexts(site)) {
      for (const word of index.wordsIn(text, () => true).flatMap(position => words[position] ?? [])) {
        report({
          subject: word.label,
          at,
          message: `This text is public, and it holds a word kept private under "${word.label}".`,
          fix: 'Take the word out here. If the code was on a page that is hosted, change the code.',
          related: [{ at: word.at, note: 'kept private here' }]
        })
      }
    }
  }
}
