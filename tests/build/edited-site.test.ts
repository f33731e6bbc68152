import { appendFileSync, cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { editedSite } from '../../src/build/edited-site.ts'
import { buildFleet } from '../../src/build/pipeline.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from './temporary-folder.ts'

const ON = date('2026-05-01')
const temporary = temporaryFolder()
let sites = ''
let out = ''

beforeEach(() => {
  sites = join(temporary.path(), 'sites')
  out = join(temporary.path(), 'dist')
  mkdirSync(sites, { recursive: true })
  for (const name of ['kestrel-cross', 'marram-steps', '_shared'])
    cpSync(join('sites', name), join(sites, name), { recursive: true })
})

const edited = () => editedSite({ sites, out, on: () => ON })
const inSites = (...parts: string[]): string => join(sites, ...parts)

describe('the pages of the one site that was edited', () => {
  it('are, byte for byte, those that the build after it writes', async () => {
    const site = edited()
    await site.ready()
    appendFileSync(inSites('kestrel-cross', 'site.md'), '\nThe gate of the depot is green.\n')
    const pages = await site.pages([inSites('kestrel-cross', 'site.md')])
    await buildFleet({ sites, out, on: ON })
    expect(pages.map(({ path }) => path)).toContain('office/kestrel-cross/binder.html')
    for (const { path, content } of pages)
      expect(Buffer.from(content).equals(readFileSync(join(out, path))), path).toBe(true)
    expect(pages.some(({ content }) => String(content).includes('The gate of the depot is green.'))).toBe(true)
  })

  it('are none where several sites changed, or what sites share, and then are of what is shared now', async () => {
    const site = edited()
    const two = [inSites('kestrel-cross', 'site.md'), inSites('marram-steps', 'site.md')]
    expect(await site.pages(two)).toEqual([])
    appendFileSync(inSites('_shared', 'company.md'), '\n')
    expect(await site.pages([inSites('_shared', 'company.md')])).toEqual([])
    expect(await site.pages(['templates/pages/site.njk'])).toEqual([])
    expect((await site.pages([inSites('marram-steps', 'visits')])).length).toBeGreaterThan(0)
  })

  it('cannot be had of a folder that is not there', () => {
    expect(() => editedSite({ sites: inSites('nowhere'), out, on: () => ON })).toThrow('There is no folder')
  })

  it('are none of a site that is not there, or that cannot be understood', async () => {
    const site = edited()
    expect(await site.pages([inSites('nowhere', 'site.md')])).toEqual([])
    writeFileSync(inSites('kestrel-cross', 'site.md'), '---\ntitle: [\n---\n')
    expect(await site.pages([inSites('kestrel-cross', 'site.md')])).toEqual([])
  })
})
