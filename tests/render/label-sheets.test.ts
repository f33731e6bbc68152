import { describe, expect, it } from 'vitest'
import type { LabelSheet } from '../../src/binder/pages.ts'
import { PLAIN_LABEL, PLAN_LABEL } from '../../src/binder/label-size.ts'
import { labelPage, labelSheets } from '../../src/render/label-sheets.ts'
import { LABELS_METRIC } from '../look/sheets.ts'

const [label] = LABELS_METRIC.labels as [LabelSheet['labels'][number]]
const some = (count: number) => Array.from({ length: count }, () => label)
const sheetOf = (widthMm: number, heightMm: number, paper: 'A4' | 'Letter', count = 30) =>
  labelSheets({ paper, labels: some(count), cut: { widthMm, heightMm, single: false } })

describe('a sheet of labels', () => {
  it.each([
    [PLAIN_LABEL.widthMm, PLAIN_LABEL.heightMm, 'A4', 3],
    [PLAIN_LABEL.widthMm, PLAIN_LABEL.heightMm, 'Letter', 3],
    [PLAN_LABEL.widthMm, PLAN_LABEL.heightMm, 'A4', 2],
    [PLAN_LABEL.widthMm, PLAN_LABEL.heightMm, 'Letter', 2],
    [90, 60, 'A4', 8],
    [90, 60, 'Letter', 8],
    [127, 76.2, 'Letter', 3],
    [100, 60, 'A4', 4],
    [190, 84, 'A4', 3],
    [190, 250, 'A4', 1],
    [190, 250, 'Letter', 1]
  ] as const)('of %d × %d mm holds on %s as many as have room: %d', (widthMm, heightMm, paper, count) => {
    const { sheets } = sheetOf(widthMm, heightMm, paper)
    expect(sheets[0]).toHaveLength(count)
    expect(sheets.flat()).toHaveLength(30)
  })

  it.each([
    [180, 84],
    [180, 130],
    [90, 60],
    [190, 250],
    [101.6, 63.5]
  ])('keeps labels of %d × %d mm and their crop marks apart and within what a printer prints', (widthMm, heightMm) => {
    for (const paper of ['A4', 'Letter'] as const) {
      const { sheets, widthMm: across, heightMm: down } = sheetOf(widthMm, heightMm, paper)
      for (const sheet of sheets)
        for (const [at, one] of sheet.entries()) {
          expect(Math.min(one.leftMm, one.topMm)).toBeGreaterThanOrEqual(7)
          expect(one.leftMm + widthMm).toBeLessThanOrEqual(across - 7)
          expect(one.topMm + heightMm).toBeLessThanOrEqual(down - 7)
          for (const other of sheet.slice(0, at))
            expect(
              Math.abs(one.leftMm - other.leftMm) >= widthMm + 5 || Math.abs(one.topMm - other.topMm) >= heightMm + 5
            ).toBe(true)
        }
    }
  })

  it('has its heading where no label stands', () => {
    expect(sheetOf(180, 84, 'A4').head).toBe('side')
    expect(sheetOf(190, 84, 'A4')).toMatchObject({
      head: 'top',
      sheets: [[{ topMm: 19 }, {}, {}], {}, {}, {}, {}, {}, {}, {}, {}, {}]
    })
  })

  it('of one label each is as large as the label with room for its marks', () => {
    const cut = { widthMm: 90, heightMm: 60, single: true }
    const { sheets, widthMm, heightMm, head } = labelSheets({ paper: 'A4', labels: some(3), cut })
    expect([sheets.length, widthMm, heightMm, head]).toEqual([3, 106, 76, 'none'])
    expect(labelPage({ paper: 'A4', cut })).toBe('@page{size:106mm 76mm;margin:0}')
    expect(labelPage({ paper: 'Letter' })).toBe('@page{size:letter;margin:0}')
  })

  it('without labels is none', () => {
    expect(labelSheets({ paper: 'A4', labels: [] }).sheets).toEqual([])
  })
})
