import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { byJsqr, byZxing, photocopy, picturesOf } from '../support/read-codes.ts'
import { ON, underlid, workFolder } from './support.ts'

const KESTREL = ['7KQ3F9X', 'MHQ8SXJ', 'CCMEC2X'].map(tag => `HTTPS://EXAMPLE.ORG/B/${tag}/`)

/** One blank of each form. */
const FORMS = [
  ['Start of the season, before 04-01, step 1', 'checkbox'],
  ['Start of the season, before 04-01, step 9, Found', 'text'],
  ['Each station, run by hand or by the controller, K1/2, Opened', 'checkbox'],
  ['Each station, run by hand or by the controller, K1/2, Pressure', 'text'],
  ['End of the season, before 10-15, step 5', 'checkbox'],
  ['Checklists by season, line 2, Signature', 'text'],
  ['Battery log, line 6, Volts under load', 'text'],
  ['Visits to come, line 6, Left open', 'text'],
  ['Readings over the visits, line 1, Loop', 'text'],
  ['Wire and coil readings, to be filled in, line 5, At the valve', 'text'],
  ['Pressure test, to be filled in, line 1, Pressure at end', 'text'],
  ['Inspection log, to be filled in, line 1, Result', 'text'],
  ['Training, to be filled in, line 8, Signature', 'text'],
  ['Receipt of parts, tools and keys, to be filled in, line 1, Received by', 'text'],
  ['Sign-offs, Owner or representative, Signature', 'text'],
  ['Sign-offs, Owner or representative, Refused on (day and time), and why', 'text']
] as const

describe('underlid print', () => {
  const folder = workFolder(['kestrel-cross', 'tansy-yard'])
  const ran = underlid(['print', 'kestrel-cross', '--on', ON], folder)
  const file = (name: string) => join(folder, `dist/print/kestrel-cross-${name}.pdf`)
  let pictures: ReturnType<typeof picturesOf> | undefined
  const labels = () => (pictures ??= picturesOf(file('labels')))

  it('writes the binder and the lid labels and ends with 0', () => {
    expect(ran.err + ran.out).toContain('2 PDFs printed')
    expect(ran.code).toBe(0)
  })

  it('prints every code twice on its label and twice more, smaller, and two independent readers read each', async () => {
    const pages = await labels()
    expect(pages.length).toBe(1)
    const zxing = (await Promise.all(pages.map(byZxing))).flat()
    for (const url of KESTREL) expect(zxing.filter(text => text === url).length, url).toBe(4)
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
    const four = KESTREL.flatMap(url => [url, url, url, url])
    expect((await Promise.all(pages.map(byZxing))).flat().sort()).toEqual(four.sort())
    expect(new Set((await Promise.all(pages.map(byJsqr))).flat())).toEqual(new Set(KESTREL))
    const tiny = underlid([...small, '--label-size', '40x30mm'], folder)
    expect(tiny.code).toBe(2)
    expect(tiny.err).toMatch(/This would do: --label-size \d+x\d+mm/u)
    expect(underlid([...small, '--label-size', '90x60'], folder).err).toContain('with their unit')
  })

  it('prints the zone plan as a code of plain text where it is asked for, in the language of the site, read alike by both', async () => {
    const wish = ['--labels', '--plan-code', '--on', ON, '--out', 'plan']
    const site = join(folder, 'sites/tansy-yard/site.md')
    writeFileSync(site, readFileSync(site, 'utf8').replace('[en-US, es]', '[es, en-US]'))
    const { code, out } = underlid(['print', 'kestrel-cross', 'tansy-yard', ...wish], folder)
    expect([code, out]).toEqual([
      0,
      expect.stringContaining('180 × 130 mm: codes of 0.5 mm squares, read from up to 36 cm or 14 in')
    ])
    for (const [id, stop, boxes] of [
      ['kestrel-cross', 'Stop the water: meter pit', 3],
      ['tansy-yard', 'Cortar el agua: pump house', 3]
    ] as const) {
      const pages = await picturesOf(join(folder, `plan/print/${id}-labels.pdf`))
      const zxing = (await Promise.all(pages.map(byZxing))).flat()
      const plans = zxing.filter(text => text.includes(stop)).sort()
      expect(plans).toHaveLength(boxes)
      const jsqr = (await Promise.all(pages.map(byJsqr))).flat()
      expect(jsqr.filter(text => text.includes(stop)).sort()).toEqual(plans)
      expect(plans.join()).not.toContain('7719')
      expect(zxing.filter(text => text.startsWith('HTTPS'))).toHaveLength(4 * boxes)
    }
  })

  it('refuses a distance from which no code of the label is read, and says which label would do', () => {
    const far = underlid(
      ['print', 'kestrel-cross', '--labels', '--on', ON, '--out', 'far', '--read-from', '45cm'],
      folder
    )
    expect(far.code).toBe(2)
    expect(far.err).toMatch(/would not be read from 45 cm: it has to be 45 mm wide[^]*--label-size \d+x\d+mm/u)
  })

  it('prints no sheet where no label of a site fits, says what to do once and ends with 2', () => {
    const site = join(folder, 'sites/tansy-yard/site.md')
    writeFileSync(
      site,
      readFileSync(site, 'utf8').replace('pump house: switch', `${'down the long path, '.repeat(80)}switch`)
    )
    const { code, err } = underlid(['print', 'tansy-yard', '--labels', '--on', ON, '--out', 'crowded'], folder)
    expect(code).toBe(2)
    expect(err.match(/Not printed: .*/gu)).toEqual([
      'Not printed: the lid labels of tansy-yard: the words of none of the 3 fit. Shorten the shut-off or the title in the site file, or ask for a larger one with --label-size.'
    ])
    const crowded = join(folder, 'crowded')
    for (const path of ['print/tansy-yard-labels.pdf', 'office/tansy-yard/labels.html'])
      expect(existsSync(join(crowded, path)), path).toBe(false)
    expect(readFileSync(join(crowded, 'office/tansy-yard/index.html'), 'utf8')).not.toContain('labels')
  })

  it('labels are still read by both from a poor grey photocopy', async () => {
    const pages = (await labels()).map(photocopy)
    expect(new Set((await Promise.all(pages.map(byZxing))).flat())).toEqual(new Set(KESTREL))
    expect(new Set((await Promise.all(pages.map(byJsqr))).flat())).toEqual(new Set(KESTREL))
  })

  it('the codes of the binder are read by both', async () => {
    // A phone at arm's length sees no more; every page is looked at.
    const pages = await picturesOf(file('binder'), 150)
    expect(pages.length).toBeGreaterThan(15)
    const read = await Promise.all(pages.map(byZxing))
    expect(new Set(read.flat())).toEqual(new Set(KESTREL))
    const withCodes = pages.filter((_, index) => (read[index]?.length ?? 0) > 0)
    expect(new Set((await Promise.all(withCodes.map(byJsqr))).flat())).toEqual(new Set(KESTREL))
  })

  it('the forms of the binder can be filled in on a screen, each blank named by its sheet, line and column', async () => {
    const task = getDocument({ data: new Uint8Array(readFileSync(file('binder'))), verbosity: 0 })
    const fields = (await (await task.promise).getFieldObjects()) as Record<string, { readonly type: string }[]>
    await task.destroy()
    for (const [name, type] of FORMS)
      expect(
        fields[name]?.map(one => one.type),
        name
      ).toEqual([type])
    for (const name of Object.keys(fields)) expect(name).toMatch(/^\p{Lu}[^,]+, /u)
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
