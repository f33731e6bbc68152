import { cpSync, existsSync, mkdirSync, readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { buildFleet } from '../../src/build/pipeline.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from './temporary-folder.ts'

const temporary = temporaryFolder()
const on = date('2026-05-01')
const print = { binders: true, labels: true, restricted: false }
const setting = process.env.UNDERLID_BROWSER
afterEach(() => {
  if (setting === undefined) delete process.env.UNDERLID_BROWSER
  else process.env.UNDERLID_BROWSER = setting
})

function folders(): { sites: string; out: string } {
  const sites = temporary.path('sites')
  mkdirSync(sites)
  for (const name of ['_shared', 'kestrel-cross']) cpSync(join('sites', name), join(sites, name), { recursive: true })
  return { sites, out: temporary.path('dist') }
}

/** Links of the site's page to prints. */
const linksTo = (out: string): string[] =>
  [
    ...readFileSync(join(out, 'office/kestrel-cross/index.html'), 'utf8').matchAll(/href="?[./]*print\/([\w-]+\.pdf)/gu)
  ].map(([, pdf = '']) => pdf)

describe('a print that could not be had', () => {
  it('is not linked to where there is no browser; what was printed before stays linked', async () => {
    const { sites, out } = folders()
    await buildFleet({ sites, out, on, print: { ...print, binders: false } })
    expect(linksTo(out)).toEqual(['kestrel-cross-labels.pdf'])
    process.env.UNDERLID_BROWSER = 'none'
    const { prints } = await buildFleet({ sites, out, on, print })
    expect(prints?.noBrowser).toHaveLength(1)
    expect(linksTo(out)).toEqual(['kestrel-cross-labels.pdf'])
    expect(readdirSync(join(out, 'print'))).toEqual(['kestrel-cross-labels.pdf'])
    const anew = temporary.path('anew')
    await buildFleet({ sites, out: anew, on, print })
    expect(linksTo(anew)).toEqual([])
    expect(existsSync(join(anew, 'office/kestrel-cross/labels.html'))).toBe(true)
  })
})
