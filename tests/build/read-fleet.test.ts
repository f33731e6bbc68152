import { spawnSync } from 'node:child_process'
import { mkdirSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readFleet } from '../../src/build/read-fleet.ts'
import { put, temporaryFolder } from './temporary-folder.ts'

const folder = temporaryFolder()
const sites = (...parts: readonly string[]): string => folder.path('sites', ...parts)

describe('reading a folder of sites', () => {
  it('gives each site its texts and the names of the rest, in the order of names by code unit', () => {
    put(sites('quay-street', 'site.md'), 'q')
    put(sites('quay-street', 'visits', '2026-05-04-b.md'), 'v2')
    put(sites('quay-street', 'visits', '2025-04-14-a.md'), 'v1')
    put(sites('quay-street', 'vb1-open.jpg'), 'jpg')
    put(sites('quay-street', 'plans', 'as-built.pdf'), 'pdf')
    put(sites('Zinc', 'site.md'), 'z')
    put(sites('älv', 'site.md'), 'ä')
    put(sites('tags.csv'), 'tag,site\n')
    const fleet = readFleet(sites())
    expect(fleet.sites.map(({ id }) => id)).toEqual(['Zinc', 'quay-street', 'älv'])
    const root = fleet.folder
    expect(fleet.sites[1]).toEqual({
      id: 'quay-street',
      folder: `${root}/quay-street`,
      site: { file: `${root}/quay-street/site.md`, text: 'q' },
      tables: [],
      plans: [],
      visits: [
        { file: `${root}/quay-street/visits/2025-04-14-a.md`, text: 'v1' },
        { file: `${root}/quay-street/visits/2026-05-04-b.md`, text: 'v2' }
      ],
      others: ['plans/as-built.pdf', 'vb1-open.jpg']
    })
    expect(fleet.register).toEqual({ file: `${root}/tags.csv`, text: 'tag,site\n' })
  })

  it('keeps what sites share apart', () => {
    put(sites('_shared', 'company.md'), 'c')
    put(sites('_shared', 'sheets', 'four-station.md'), 's')
    put(sites('_shared', 'mark.svg'), '<svg/>')
    const { shared, sharedOthers, sites: found } = readFleet(sites())
    expect(found).toEqual([])
    expect(shared.map(({ file }) => file.split('/_shared/')[1])).toEqual(['company.md', 'sheets/four-station.md'])
    expect(sharedOthers).toEqual(['mark.svg'])
  })

  it('passes over names with a dot, loose files, and an output folder', () => {
    put(sites('.git', 'site.md'))
    put(sites('a', '.site.md.swp'))
    put(sites('a', 'site.md'), 'a')
    put(sites('README.md'), 'read me')
    put(sites('dist', '.underlid'), '{}')
    put(sites('dist', 'index.html'))
    const fleet = readFleet(sites())
    expect(fleet.sites.map(({ id }) => id)).toEqual(['a'])
    expect(fleet.sites[0]?.others).toEqual([])
  })

  it('lists a site without a site file, so that it can be told of', () => {
    mkdirSync(sites('empty'), { recursive: true })
    const [site] = readFleet(sites()).sites
    expect(site?.id).toBe('empty')
    expect(site?.site).toBeUndefined()
  })

  it('takes text as it stands: byte-order mark, line ends and all', () => {
    put(sites('a', 'site.md'), '\uFEFF---\r\ntitle: A\r\n---\r\n')
    expect(readFleet(sites()).sites[0]?.site?.text).toBe('\uFEFF---\r\ntitle: A\r\n---\r\n')
  })

  it('names a file that is not UTF-8, and reads the others', () => {
    put(sites('a', 'site.md'), new Uint8Array([0x74, 0xe9, 0x0a]))
    put(sites('b', 'site.md'), 'b')
    const fleet = readFleet(sites())
    expect(fleet.sites[0]?.site).toEqual({ file: `${fleet.folder}/a/site.md`, text: '', trouble: 'encoding' })
    expect(fleet.sites[1]?.site?.text).toBe('b')
  })

  it('follows a link to a site, and is not trapped by a ring of links', () => {
    put(folder.path('elsewhere', 'site.md'), 'linked')
    mkdirSync(sites())
    symlinkSync(folder.path('elsewhere'), sites('linked'))
    symlinkSync(sites(), folder.path('elsewhere', 'ring'))
    const fleet = readFleet(sites())
    expect(fleet.sites.map(({ site }) => site?.text)).toEqual(['linked'])
  })

  it('says so where there is no such folder', () => {
    expect(() => readFleet(sites('nowhere'))).toThrow(/There is no folder .*nowhere\.\nName the folder/u)
  })
})

describe('the paths that messages print', () => {
  const module = new URL('../../src/build/read-fleet.ts', import.meta.url).href
  const shown = (cwd: string, named: string): string => {
    const script = `import { readFleet } from '${module}'
      console.log(readFleet(process.argv[1]).sites.map(site => site.site.file).join())`
    const tsx = import.meta.resolve('tsx')
    const args = ['--import', tsx, '--input-type=module', '-e', script, named]
    return spawnSync(process.execPath, args, { cwd, encoding: 'utf8' }).stdout.trim()
  }

  it('are those from the folder we are in, so that an editor jumps to them', () => {
    put(sites('a', 'site.md'))
    expect(shown(folder.path(), 'sites')).toBe('sites/a/site.md')
    expect(shown(folder.path(), './sites/')).toBe('sites/a/site.md')
    expect(shown(folder.path(), sites())).toBe('sites/a/site.md')
    expect(shown(sites(), '.')).toBe('./a/site.md')
    expect(shown(sites('a'), '..')).toBe('../a/site.md')
    expect(shown(join(folder.path(), 'sites', 'a'), sites())).toBe(`${sites()}/a/site.md`)
  })
})
