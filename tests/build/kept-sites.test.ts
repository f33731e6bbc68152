import { appendFileSync, cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { readWordsLookedFor } from '../../src/build/kept-words.ts'
import { buildFleet } from '../../src/build/pipeline.ts'
import type { BuildResult, BuildWish } from '../../src/build/pipeline.ts'
import { cacheFolder } from '../../src/build/site-cache.ts'
import { toolMark } from '../../src/build/tool-mark.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from './temporary-folder.ts'

const SITES = ['harbour-steps', 'kestrel-cross', 'tansy-yard']
const ON = date('2026-05-01')

const temporary = temporaryFolder()
let folder = ''
let sites = ''

beforeEach(() => {
  folder = temporary.path()
  sites = join(folder, 'sites')
  mkdirSync(sites, { recursive: true })
  for (const name of [...SITES, '_shared']) cpSync(join('sites', name), join(sites, name), { recursive: true })
  cpSync('sites/tags.csv', join(sites, 'tags.csv'))
})

const build = (wish: Partial<BuildWish> = {}): Promise<BuildResult> =>
  buildFleet({ sites, out: join(folder, 'dist'), on: ON, mark: 'one', ...wish })

function edit(file: string, from: string | RegExp, to: string): void {
  const path = join(sites, file)
  const before = readFileSync(path, 'utf8')
  const after = before.replace(from, to)
  if (after === before) throw new Error(`nothing to change in ${file}`)
  writeFileSync(path, after)
}

/** Every file of an output with its bytes; the marker is no output. */
function bytesOf(out: string): Record<string, string> {
  const root = join(folder, out)
  return Object.fromEntries(
    readdirSync(root, { recursive: true, withFileTypes: true })
      .filter(entry => entry.isFile() && entry.name !== '.underlid')
      .map(entry => join(entry.parentPath, entry.name))
      .sort()
      .map(path => [path.slice(root.length + 1), readFileSync(path).toString('base64')])
  )
}

/** Builds from nothing elsewhere and holds it against what was kept. */
async function expectSameAsFromNothing(wish: Partial<BuildWish> = {}): Promise<void> {
  await build({ out: join(folder, 'fresh'), ...wish })
  expect(bytesOf('dist')).toEqual(bytesOf('fresh'))
  for (const path of [join(folder, 'fresh'), cacheFolder(join(folder, 'fresh'))])
    rmSync(path, { recursive: true, force: true })
}

describe('a build after a build', () => {
  it('makes no site again where nothing changed, and changes no file', async () => {
    expect((await build()).made).toEqual(SITES)
    // Else the next build would look through every public file once more.
    expect(readWordsLookedFor(cacheFolder(join(folder, 'dist')), 'one').size).toBeGreaterThan(0)
    const again = await build()
    expect(again).toMatchObject({ made: [], same: SITES, report: { changed: [] } })
    await expectSameAsFromNothing()
  })

  it('makes the site that was edited, and only that one', async () => {
    await build()
    appendFileSync(join(sites, 'kestrel-cross/site.md'), '\nThe key hangs behind the door.\n')
    expect((await build()).made).toEqual(['kestrel-cross'])
    await expectSameAsFromNothing()
  })

  it('makes the sites that use a shared sheet that was edited, and no other', async () => {
    await build()
    edit('_shared/sheets/four-station-in-box.md', /(---\n[\s\S]*?---\n)/u, '$1\nOne more line of the sheet.\n')
    const users = SITES.filter(id =>
      readFileSync(join(sites, id, 'site.md'), 'utf8').includes('four-station-in-box.md')
    )
    expect(users.length).toBeGreaterThan(0)
    expect(users.length).toBeLessThan(SITES.length)
    expect((await build()).made).toEqual(users)
    await expectSameAsFromNothing()
  })

  it('makes every site on another day, and by another program or template', async () => {
    await build()
    expect((await build({ on: date('2026-05-02') })).made).toEqual(SITES)
    expect((await build({ on: date('2026-05-02'), mark: 'two' })).made).toEqual(SITES)
    await expectSameAsFromNothing({ on: date('2026-05-02'), mark: 'two' })
  })

  it('makes both sites where one takes the tag of the other, and the third stays', async () => {
    await build()
    edit('tansy-yard/site.md', /tag: [2-9A-Z]{7}/u, 'tag: 7KQ3F9X')
    const result = await build()
    expect(result.made).toEqual(['kestrel-cross', 'tansy-yard'])
    expect(result.findings.map(one => `${one.site} ${one.code}`)).toContain('tansy-yard tag/duplicate')
    await expectSameAsFromNothing()
  })

  it('makes the site of which the register says something else, and no other though lines move', async () => {
    await build()
    edit('tags.csv', /^(.*,kestrel-cross,VB2,)live/mu, '22222AB,elsewhere,X1,retired,2020-01-01,\n$1retired')
    expect((await build()).made).toEqual(['kestrel-cross'])
    await expectSameAsFromNothing()
  })

  it('makes a site again whose picture is another one', async () => {
    await build()
    cpSync(join(sites, 'kestrel-cross/photos/vb2-open.jpg'), join(sites, 'kestrel-cross/photos/vb1-open.jpg'))
    expect((await build()).made).toEqual(['kestrel-cross'])
    await expectSameAsFromNothing()
  })

  it('makes a site again whose drawing file says something else, and shows nothing of it to the public', async () => {
    await build()
    edit('kestrel-cross/plan.geojson', '"hedge"', '"beech hedge"')
    expect((await build()).made).toEqual(['kestrel-cross'])
    const holding = (word: string) =>
      Object.entries(bytesOf('dist'))
        .filter(([, bytes]) => Buffer.from(bytes, 'base64').includes(word))
        .map(([path]) => path)
    expect(holding('beech hedge')).toEqual(['office/kestrel-cross/binder.html'])
    for (const name of ['bus shelter', 'retaining wall', 'manhole cover'])
      expect(holding(name).filter(path => path.startsWith('public/'))).toEqual([])
  })

  it('makes a site again whose page was touched or taken away', async () => {
    await build()
    appendFileSync(join(folder, 'dist/office/tansy-yard/binder.html'), 'x')
    rmSync(join(folder, 'dist/office/kestrel-cross/index.html'))
    expect((await build()).made).toEqual(['kestrel-cross', 'tansy-yard'])
    await expectSameAsFromNothing()
  })

  it('makes everything where what was kept cannot be read', async () => {
    await build()
    for (const id of SITES) writeFileSync(join(cacheFolder(join(folder, 'dist')), `${id}.json`), '{"key":"')
    expect((await build()).made).toEqual(SITES)
  })

  it('refuses a private word of one site on the unchanged page of another', async () => {
    await build()
    const [title = ''] = /(?<=^title: ).*$/mu.exec(readFileSync(join(sites, 'harbour-steps/site.md'), 'utf8')) ?? []
    edit('kestrel-cross/site.md', /^private:/mu, `private:\n  hint: ${title}`)
    await expect(build()).rejects.toThrow('private word')
  })

  it('forgets a site that is gone, and its pages', async () => {
    await build()
    rmSync(join(sites, 'tansy-yard'), { recursive: true })
    await build()
    expect(readdirSync(cacheFolder(join(folder, 'dist'))).sort()).toEqual([
      '_words.json',
      'harbour-steps.json',
      'kestrel-cross.json'
    ])
    expect(readdirSync(join(folder, 'dist/office'))).not.toContain('tansy-yard')
    await expectSameAsFromNothing()
  })
})

describe('the mark of the program', () => {
  it('is another one as soon as a template or a source is', () => {
    const project = join(folder, 'project')
    for (const part of ['src', 'templates/pages']) mkdirSync(join(project, part), { recursive: true })
    writeFileSync(join(project, 'package.json'), '{}')
    writeFileSync(join(project, 'src/a.ts'), '1')
    writeFileSync(join(project, 'templates/pages/a.njk'), 'a')
    const first = toolMark(project)
    expect(toolMark(project)).toBe(first)
    writeFileSync(join(project, 'templates/pages/a.njk'), 'b')
    const second = toolMark(project)
    writeFileSync(join(project, 'src/a.ts'), '2')
    expect(new Set([first, second, toolMark(project)]).size).toBe(3)
  })
})
