import { describe, expect, test } from 'vitest'
import { CAUTIONS } from '../../../src/domain/safety/cautions.ts'
import type { CautionText } from '../../../src/words/en-US/cautions.ts'
import { cautionWords } from '../../../src/words/en-US/cautions.ts'

const INJURY =
  /\b(?:injur\w*|hurt\w*|kill\w*|die\w*|dead|death|burn\w*|shock\w*|wound\w*|bruis\w*|blind\w*|poison\w*|ill|sick)\b/iu
const GRAVE = /\b(?:kill\w*|die[sd]?|death|fatal\w*|cripple\w*|maim\w*)\b|\bserious(?:ly)? (?:injur|ill)/iu

const VERBS = new Set(
  (
    'Ask Call Change Check Close Connect Cover Cross Dig Do Drink Face Fence File Find Follow Get Give Hand Have Isolate Keep Lay Leave Lift Look ' +
    'Make Mark Match Measure Open Park Protect Prove Put Read Record Report Rest Seat See Set Shore Stand Stay Stop Swap Switch Take Tape Test Tie Trace ' +
    'Treat Turn Use Wait Wash Watch Wear Work'
  ).split(' ')
)

const steps = ({ avoidance, local }: CautionText) => [...avoidance, ...Object.values(local ?? {}).flat()]
const firstWord = (text: string) => /^\p{L}+/u.exec(text)?.[0]
const sentences = (text: string) => text.split(/(?<=[.!?])\s+(?=[A-Z])/u)

describe.each(CAUTIONS.map(card => ({ ...card, text: cautionWords.texts[card.id] })))('$signal $id', card => {
  const { signal, text } = card

  test('has a title, a hazard, a consequence, steps to avoid it and somebody who decides', () => {
    for (const part of [text.title, text.hazard, text.consequence, text.short, text.instead, text.deference])
      expect(part.trim().length).toBeGreaterThan(3)
    expect(steps(text).length).toBeGreaterThanOrEqual(3)
    expect(text.deference).toMatch(/ (?:decide|decides|come)\b.*\.$/u)
    expect(card.graded).toMatch(/\.$/u)
  })

  test('starts every step with a verb and ends it with a full stop', () => {
    for (const step of steps(text)) {
      expect(VERBS, step).toContain(firstWord(step))
      expect(step).toMatch(/\.$/u)
    }
    expect(VERBS, text.instead).toContain(firstWord(text.instead))
  })

  test('has no sentence of more than 25 words', () => {
    const texts = [text.hazard, text.consequence, text.short, text.instead, text.deference, ...steps(text)]
    for (const sentence of texts.flatMap(sentences))
      expect(sentence.split(/\s+/u).length, sentence).toBeLessThanOrEqual(25)
  })

  test('fits the box page: one short sentence for the hazard, one for what to do', () => {
    for (const line of [text.short, text.instead]) {
      expect(sentences(line)).toHaveLength(1)
      expect(line.length, line).toBeLessThanOrEqual(70)
    }
  })

  test('says only what its signal word allows', () => {
    const { consequence } = text
    if (signal === 'DANGER') expect(consequence).toMatch(/\bwill (?:kill|seriously injure)/u)
    if (signal === 'WARNING') {
      expect(consequence).toMatch(/\bcould\b/u)
      expect(consequence).toMatch(GRAVE)
    }
    if (signal === 'CAUTION') {
      expect(consequence).toMatch(/\bcould\b/u)
      expect(`${text.hazard} ${consequence}`).not.toMatch(GRAVE)
    }
  })
})

describe.each(CAUTIONS.filter(card => card.signal === 'NOTICE'))('the notice $id', ({ id, graded }) => {
  test('speaks of property and never of injury', () => {
    const text = cautionWords.texts[id]
    const all = [text.title, text.hazard, text.consequence, text.short, text.instead, graded, ...steps(text)]
    for (const line of all) expect(line).not.toMatch(INJURY)
  })
})

describe('the test of a NOTICE', () => {
  test('would see injury wording', () => {
    expect('A jet could hurt an eye.').toMatch(INJURY)
    expect('Spent cells burn skin.').toMatch(INJURY)
  })
})

describe('figures in the words', () => {
  test('a 4.5 ft trench needs a ladder at once and, once examined, no protective system', () => {
    const us = cautionWords.texts.trench.local?.US ?? []
    expect(us.find(step => step.includes('ladder'))).toContain('4 ft (1.22 m) deep or more')
    expect(us.find(step => step.startsWith('Shore'))).toContain('5 ft (1.52 m) deep or more')
    expect(us.find(step => step.startsWith('Do the same'))).toContain('unless a competent person examined it')
  })

  test('every figure of a US rule stands among the steps for the US alone', () => {
    for (const id of ['trench', 'fall-edge', 'confined-space'] as const) {
      const { avoidance, local } = cautionWords.texts[id]
      for (const step of [...avoidance, ...(local?.other ?? [])]) expect(step).not.toMatch(/\d\s*(?:ft|percent)/u)
    }
  })
})
