import { request } from 'node:http'
import { mkdirSync, symlinkSync } from 'node:fs'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { OutputFile } from '../../src/build/output-stage.ts'
import { serve } from '../../src/build/serve.ts'
import type { Serving } from '../../src/build/serve.ts'
import { underPolicy } from '../../src/render/page-policy.ts'
import { publicPage } from '../../src/render/public-page.ts'
import { aPhoneBrowser } from '../support/phone-browser.ts'
import { put, temporaryFolder } from './temporary-folder.ts'

const folder = temporaryFolder()
let serving: Serving
let builds = 0
let build: () => Promise<boolean> = () => Promise.resolve(true)
let ahead: (changed: readonly string[]) => readonly OutputFile[] = () => []

beforeEach(async () => {
  builds = 0
  build = () => Promise.resolve(true)
  ahead = () => []
  put(folder.path('dist', 'office', 'index.html'), '<title>Office</title>')
  put(folder.path('dist', 'public', 'B', '7KQ3F9X', 'index.html'), '<title>Box</title>')
  put(folder.path('dist', 'data', 'due.ics'), 'BEGIN:VCALENDAR')
  put(folder.path('dist', '.underlid'), '{}')
  put(folder.path('secret.txt'), 'secret')
  mkdirSync(folder.path('sites'))
  serving = await serve({
    root: folder.path('dist'),
    home: '/office/',
    watch: [folder.path('sites')],
    ahead: changed => Promise.resolve(ahead(changed)),
    rebuild: () => {
      builds += 1
      return build()
    }
  })
})
afterEach(() => serving.close())

interface Answer {
  readonly status: number
  readonly headers: Record<string, string | string[] | undefined>
  readonly body: string
}

/** Sends the path as it is, without the tidying that browsers and fetch do. */
function get(path: string, { method = 'GET', host = '' } = {}): Promise<Answer> {
  const { port } = new URL(serving.url)
  return new Promise((resolve, reject) => {
    const headers = host === '' ? {} : { host }
    request({ host: '127.0.0.1', port, path, method, headers }, response => {
      let body = ''
      response.on('data', chunk => (body += String(chunk)))
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body }))
    })
      .on('error', reject)
      .end()
  })
}

describe('the preview', () => {
  it('leads from "/" to its home, from a folder to its page, and shows it', async () => {
    expect((await get('/')).headers.location).toBe('/office/')
    expect((await get('/public/B/7KQ3F9X')).headers.location).toBe('/public/B/7KQ3F9X/')
    const page = await get('/public/B/7KQ3F9X/?from=scan')
    expect(page.status).toBe(200)
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8')
    expect(page.body).toContain('<title>Box</title>')
  })

  it('keeps the case of addresses, and gives each file its type, unchanged', async () => {
    expect((await get('/public/b/7kq3f9x/')).status).toBe(404)
    const calendar = await get('/data/due.ics')
    expect(calendar.headers['content-type']).toBe('text/calendar; charset=utf-8')
    expect(calendar.body).toBe('BEGIN:VCALENDAR')
  })

  it('is for reading: HEAD has no body, anything that would change is refused', async () => {
    expect(await get('/office/', { method: 'HEAD' })).toMatchObject({ status: 200, body: '' })
    expect((await get('/office/', { method: 'POST' })).status).toBe(405)
    expect((await get('/office/', { method: 'DELETE' })).status).toBe(405)
  })

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/office/../../secret.txt',
    '/office/..%5c..%5csecret.txt',
    '//secret.txt/../../secret.txt',
    '/.underlid',
    '/link.txt',
    '/linked/secret.txt',
    '/%00',
    '/%',
    '/office/index.html/',
    '/nowhere'
  ])('shows nothing at %s', async path => {
    symlinkSync(folder.path('secret.txt'), folder.path('dist', 'link.txt'))
    symlinkSync(folder.path(), folder.path('dist', 'linked'))
    const { status, body } = await get(path)
    expect(status).toBe(404)
    expect(body).not.toContain('secret')
  })

  it('answers only to names of this machine', async () => {
    expect((await get('/office/', { host: 'example.org' })).status).toBe(403)
    expect((await get('/office/', { host: 'localhost:80' })).status).toBe(200)
  })

  it('tells of a port that is taken', async () => {
    const { port } = new URL(serving.url)
    const options = { root: '.', home: '/', watch: [], rebuild: () => Promise.resolve(true), port: Number(port) }
    await expect(serve(options)).rejects.toThrow(`Port ${port} is not free. Name another with --port.`)
  })
})

/** Listens as an open page does; the promise is fulfilled by the first message. */
function openPage(address = ''): Promise<{ readonly reloaded: Promise<void> }> {
  return new Promise(resolve => {
    request(new URL(`/.underlid/changes?${encodeURIComponent(address)}`, serving.url), response => {
      let text = ''
      const reloaded = new Promise<void>(done => {
        response.on('data', chunk => {
          text += String(chunk)
          if (text.includes('data: changed')) done()
        })
      })
      resolve({ reloaded })
    }).end()
  })
}

const still = (ms: number): Promise<void> => new Promise(resolve => setTimeout(resolve, ms))

describe('an edit', () => {
  it('builds anew, once for a burst of changes, and has open pages load again', async () => {
    const page = await openPage()
    for (const name of ['a.md', 'b.md', 'c.md']) put(folder.path('sites', 'quay', name))
    await page.reloaded
    await still(300)
    expect(builds).toBe(1)
  })

  it.each([
    ['an office page', underPolicy(`<!doctype html><head><meta charset="utf-8"></head><title>Office</title>`)],
    [
      'a public page',
      publicPage(`<!doctype html><head><meta charset="utf-8"><style>p{margin:0}</style></head><p>Box</p>`)
    ]
  ])('has %s in a real browser load again, though its policy lets nothing else in', async (_, html) => {
    const page = (words: string): void => put(folder.path('dist', 'office', 'index.html'), html + words)
    page('before')
    build = () => {
      page('after')
      return Promise.resolve(true)
    }
    const browser = await aPhoneBrowser()
    try {
      const shown = await browser.newPage()
      await shown.goto(serving.url, { waitUntil: 'load' })
      // The page listens a moment after it is loaded.
      await still(500)
      const again = shown.waitForNavigation({ waitUntil: 'load' })
      put(folder.path('sites', 'quay', 'a.md'))
      await again
      expect(await shown.evaluate('document.body.textContent')).toContain('after')
    } finally {
      await browser.close()
    }
  })

  it('in a folder that was made meanwhile is noticed too', async () => {
    const first = await openPage()
    mkdirSync(folder.path('sites', 'new', 'visits'), { recursive: true })
    await first.reloaded
    const second = await openPage()
    put(folder.path('sites', 'new', 'visits', '2026-05-04-a.md'), 'visit')
    await second.reloaded
    expect(builds).toBeGreaterThanOrEqual(2)
  })

  it('during a build leads to one more build, not to two at once', async () => {
    let running = 0
    let most = 0
    const finish: (() => void)[] = []
    build = async () => {
      running += 1
      most = Math.max(most, running)
      await new Promise<void>(resolve => finish.push(resolve))
      running -= 1
      return true
    }
    for (const text of ['1', '2', '3']) {
      put(folder.path('sites', 'a.md'), text)
      await still(300)
    }
    expect(builds).toBe(1)
    finish[0]?.()
    await still(100)
    finish[1]?.()
    await still(300)
    expect(most).toBe(1)
    expect(builds).toBe(2)
  })

  it("of an editor's own hidden files is passed over", async () => {
    put(folder.path('sites', '.site.md.swp'))
    await still(400)
    expect(builds).toBe(0)
  })

  it('that does not build leaves the pages as they are, and the next one is noticed', async () => {
    build = () => Promise.resolve(false)
    const page = await openPage()
    let loads = 0
    void page.reloaded.then(() => (loads += 1))
    put(folder.path('sites', 'a.md'), 'broken')
    await still(500)
    expect([builds, loads]).toEqual([1, 0])
    build = () => Promise.resolve(true)
    put(folder.path('sites', 'a.md'), 'mended')
    await page.reloaded
    expect(builds).toBe(2)
  })

  it('of one site is shown before all is built, and then as the build wrote it', async () => {
    let finish = (): void => undefined
    let heard: readonly string[] = []
    build = () => new Promise(resolve => (finish = () => resolve(true)))
    ahead = changed => {
      heard = changed
      return [{ path: 'public/B/7KQ3F9X/index.html', content: '<title>Box, edited</title>' }]
    }
    await get('/public/B/7KQ3F9X/')
    const page = await openPage('/public/B/7KQ3F9X/')
    put(folder.path('sites', 'quay', 'site.md'), 'edited')
    await page.reloaded
    expect((await get('/public/B/7KQ3F9X/')).body).toContain('Box, edited')
    expect(heard).toEqual([folder.path('sites', 'quay'), folder.path('sites', 'quay', 'site.md')].slice(-heard.length))

    put(folder.path('dist', 'public', 'B', '7KQ3F9X', 'index.html'), '<title>Box, built</title>')
    const again = await openPage('/public/B/7KQ3F9X/')
    finish()
    await again.reloaded
    expect((await get('/public/B/7KQ3F9X/')).body).toContain('Box, built')
  })

  it('made during a build stays in sight until a build that knows of it is through', async () => {
    const finish: (() => void)[] = []
    build = () => new Promise(resolve => finish.push(() => resolve(true)))
    const shownAs = async (title: string): Promise<void> => {
      ahead = () => [{ path: 'office/index.html', content: `<title>${title}</title>` }]
      const page = await openPage()
      put(folder.path('sites', 'quay', 'site.md'), title)
      await page.reloaded
    }
    await shownAs('first')
    await shownAs('second')
    finish[0]?.()
    await still(100)
    expect((await get('/office/')).body).toContain('second')
    finish[1]?.()
    await still(100)
    expect((await get('/office/')).body).toContain('Office')
  })

  it('leaves alone open pages that look as before', async () => {
    await get('/public/B/7KQ3F9X/')
    await get('/office/')
    const [box, office] = [await openPage('/public/B/7KQ3F9X/'), await openPage('/office/')]
    let loads = 0
    void box.reloaded.then(() => (loads += 1))
    build = () => {
      put(folder.path('dist', 'office', 'index.html'), '<title>Office, anew</title>')
      return Promise.resolve(true)
    }
    put(folder.path('sites', 'a.md'), '1')
    await office.reloaded
    await still(100)
    expect(loads).toBe(0)
  })

  it('shows no file of its own or above the folder, whatever is made ahead', async () => {
    ahead = () => [{ path: 'office/index.html', content: 'ahead' }]
    const page = await openPage()
    put(folder.path('sites', 'a.md'), '1')
    await page.reloaded
    expect((await get('/public/../office/')).status).toBe(404)
    expect((await get('/%2e%2e/office/')).status).toBe(404)
  })
})
