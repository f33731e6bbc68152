import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, it } from 'vitest'
import { isNoBrowser, withBrowser } from '../../src/render/browser.ts'
import { ON, PROJECT, underlid, workFolder } from './support.ts'

const ids = readdirSync(join(PROJECT, 'sites'), { withFileTypes: true })
  .filter(one => one.isDirectory() && one.name !== '_shared')
  .map(one => one.name)
const folder = workFolder(ids)

// WCAG 2.1, success criterion 1.4.10 Reflow: 320 CSS pixels wide without scrolling sideways.
it('every box page of the demo sites is read at 320 pixels without scrolling sideways', async () => {
  expect(underlid(['build', '--on', ON], folder).code).toBe(0)
  const pages = join(folder, 'dist/public/B')
  const tags = readdirSync(pages)
  expect(tags.length).toBeGreaterThan(40)
  const widths = await withBrowser(async ({ browser }) => {
    const page = await browser.newPage()
    await page.setViewport({ width: 320, height: 640 })
    const found: Record<string, number> = {}
    for (const tag of tags) {
      await page.goto(pathToFileURL(join(pages, tag, 'index.html')).href)
      found[tag] = (await page.evaluate('document.documentElement.scrollWidth')) as number
    }
    return found
  })
  if (isNoBrowser(widths)) throw new Error(widths.told.join('\n'))
  expect(Object.entries(widths).filter(([, width]) => width > 320)).toEqual([])
})
