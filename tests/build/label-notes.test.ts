import { describe, expect, it } from 'vitest'
import { labelNoteTexts } from '../../src/build/label-notes.ts'

const left = (box: string) => ({ box, stations: 2 })

describe('what had no room on labels', () => {
  it('is told label by label where others of the site are printed', () => {
    const texts = labelNoteTexts('quay', { made: 1, notes: [left('VB1'), { box: 'VB2', stations: 9, shown: 6 }] })
    expect(texts).toEqual([
      expect.stringMatching(/^Not printed: the lid label of quay VB1: its words do not fit\. Shorten/u),
      'On the lid label of quay VB2 stand 6 of 9 stations; the others are on its page.'
    ])
  })

  it('is told once where none of a site fits', () => {
    const [text, ...more] = labelNoteTexts('quay', { made: 0, notes: [left('VB1'), left('VB2')] })
    expect(text).toMatch(/^Not printed: the lid labels of quay: the words of none of the 2 fit\. Shorten/u)
    expect(more).toEqual([])
    expect(labelNoteTexts('quay', { made: 0, notes: [left('VB1')] })[0]).toContain('the lid label of quay VB1')
    expect(labelNoteTexts('quay', { made: 0, notes: [] })).toEqual([])
  })
})
