import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it, vi } from 'vitest'
import { buildFleet } from '../../src/build/pipeline.ts'
import type { PrintJob } from '../../src/render/pdf.ts'
import { date } from '../../src/units/date.ts'
import { put, temporaryFolder } from './temporary-folder.ts'

/** Documents that cannot be printed; the browser itself is well, and is not needed for the rest. */
const broken = vi.hoisted(() => new Set<string>())

vi.mock('../../src/render/browser.ts', async original => ({
  ...(await original<object>()),
  lendBrowsers: () => ({
    borrow: () => Promise.resolve({ browser: {}, path: 'none' }),
    lose: () => true,
    giveBack: () => Promise.resolve()
  })
}))
vi.mock('../../src/render/pdf.ts', async original => ({
  ...(await original<object>()),
  printPdf: (_: unknown, { path }: PrintJob) =>
    broken.has(path)
      ? Promise.reject(new Error(`${path} shows a picture that is not there.`))
      : Promise.resolve({ bytes: new TextEncoder().encode(path), pages: 1, used: [] })
}))

const SITE = '---\ntitle: Quay Street\nunits: metric\nboxes: [{ id: VB1, tag: 7KQ3F9X, where: center }]\n---\n'
const temporary = temporaryFolder()

it('the page of a site leads to the prints that were made, and not to one that failed', async () => {
  const out = temporary.path('dist')
  put(temporary.path('sites/quay/site.md'), SITE)
  broken.add('office/quay/binder.html')
  const { prints } = await buildFleet({
    sites: temporary.path('sites'),
    out,
    on: date('2026-05-01'),
    print: { binders: true, labels: true, restricted: true }
  })
  expect(prints?.failed.map(one => one.pdf)).toEqual(['print/quay-binder.pdf'])
  const page = readFileSync(join(out, 'office/quay/index.html'), 'utf8')
  expect([...page.matchAll(/print\/([\w-]+\.pdf)/gu)].map(one => one[1])).toEqual(['quay-labels.pdf'])
  expect(readdirSync(join(out, 'print'))).toEqual(['quay-labels.pdf', 'quay-restricted.pdf'])
  expect(existsSync(join(out, 'office/quay/restricted.html'))).toBe(true)
})
