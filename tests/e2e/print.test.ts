import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { byJsqr, byZxing, photocopy, picturesOf } from '../support/read-codes.ts'
import { ON, underlid, workFolder } from './support.ts'

const KESTREL = ['7KQ3F9X', 'MHQ8SXJ', 'CCMEC2X'].map(tag => `HTTPS://EXAMPLE.ORG/B/${tag}/`)

describe('underlid print', () => {
  const folder = workFolder(['kestrel-cross'])
  const ran = underlid(['print', 'kestrel-cross', '--on', ON], folder)
  const file = (name: string) => join(folder, `dist/print/kestrel-cross-${name}.pdf`)

  it('writes the binder and the lid labels and ends with 0', () => {
    expect(ran.err + ran.out).toContain('2 PDFs printed')
    expect(ran.code).toBe(0)
  })

  it('prints every code twice on its label and a third, smaller time, and two independent readers read each', async () => {
    const pages = await picturesOf(file('labels'))
    const zxing = (await Promise.all(pages.map(byZxing))).flat()
    for (const url of KESTREL) expect(zxing.filter(text => text === url).length, url).toBe(3)
    expect(new Set((await Promise.all(pages.map(byJsqr))).flat())).toEqual(new Set(KESTREL))
  })

  it('prints labels of another size, each on a sheet of its own, and refuses one whose code could not be read', async () => {
    const small = ['print', 'kestrel-cross', '--labels', '--on', ON, '--out', 'small', '--label-sheet', 'single']
    expect(underlid([...small, '--label-size', '90x60mm'], folder).code).toBe(0)
    const pages = await picturesOf(join(folder, 'small/print/kestrel-cross-labels.pdf'))
    expect(pages.length).toBe(KESTREL.length)
    for (const { width, height } of pages) {
      expect(width / 300).toBeCloseTo((90 + 16) / 25.4, 1)
      expect(height / 300).toBeCloseTo((60 + 16) / 25.4, 1)
    }
    expect((await Promise.all(pages.map(byZxing))).flat().sort()).toEqual([...KESTREL, ...KESTREL].sort())
    expect(new Set((await Promise.all(pages.map(byJsqr))).flat())).toEqual(new Set(KESTREL))
    const tiny = underlid([...small, '--label-size', '40x30mm'], folder)
    expect(tiny.code).toBe(2)
    expect(tiny.err).toMatch(/This would do: --label-size \d+x\d+mm/u)
    expect(underlid([...small, '--label-size', '90x60'], folder).err).toContain('with their unit')
  })

  it('labels are still read by both from a poor grey photocopy', async () => {
    const pages = (await picturesOf(file('labels'))).map(photocopy)
    expect(new Set((await Promise.all(pages.map(byZxing))).flat())).toEqual(new Set(KESTREL))
    expect(new Set((await Promise.all(pages.map(byJsqr))).flat())).toEqual(new Set(KESTREL))
  })

  it('the codes of the binder are read by both', async () => {
    const pages = await picturesOf(file('binder'))
    expect(pages.length).toBeGreaterThan(15)
    const read = await Promise.all(pages.map(byZxing))
    expect(new Set(read.flat())).toEqual(new Set(KESTREL))
    const withCodes = pages.filter((_, index) => (read[index]?.length ?? 0) > 0)
    expect(new Set((await Promise.all(withCodes.map(byJsqr))).flat())).toEqual(new Set(KESTREL))
  })

  it('prints nothing again when nothing changed, and the same bytes when printed anew', () => {
    const before = readFileSync(file('binder'))
    const again = underlid(['print', 'kestrel-cross', '--on', ON], folder)
    expect(again.out).toContain('0 PDFs printed, 2 unchanged')
    const elsewhere = underlid(['print', 'kestrel-cross', '--on', ON, '--out', 'dist-two'], folder)
    expect(elsewhere.code).toBe(0)
    expect(readFileSync(join(folder, 'dist-two/print/kestrel-cross-binder.pdf')).equals(before)).toBe(true)
  })

  it('prints the restricted sheet only when asked, and leaves its words out of the binder', () => {
    const { code } = underlid(['print', 'kestrel-cross', '--restricted', '--on', ON], folder)
    expect(code).toBe(0)
    expect(readFileSync(file('restricted')).length).toBeGreaterThan(1000)
    expect(readFileSync(join(folder, 'dist/office/kestrel-cross/binder.html'), 'utf8')).not.toContain('7719')
  })
})
