import { mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { aPhoneBrowser } from '../support/phone-browser.ts'
import { hostFolder } from '../e2e/serve-folder.ts'
import { barePage, firstViews, THIN_LINES } from '../e2e/thin-line.ts'

/*
 * Box pages over a thin line beside a page of the same bytes that is nothing but words, uncompressed. Of a built folder:
 * npx tsx tests/bench/thin-line.bench.ts dist/public
 */

const folder = process.argv[2] ?? 'dist/public'
const REPEATS = 3
const sizeOf = (tag: string): number => statSync(join(folder, 'B', tag, 'index.html')).size
const bySize = readdirSync(join(folder, 'B')).sort((a, b) => sizeOf(a) - sizeOf(b))
const isPage = (tag: string): boolean => sizeOf(tag) > 30_000
const pages = bySize.filter(isPage)
const chosen = [pages[0], pages[Math.floor(pages.length / 2)], pages.at(-1)].flatMap(tag => tag ?? [])

const browser = await aPhoneBrowser()
const host = await hostFolder(folder)
const bare = join(folder, 'bare')
mkdirSync(bare, { recursive: true })
try {
  for (const line of THIN_LINES)
    for (const tag of chosen) {
      writeFileSync(join(bare, 'index.html'), barePage(sizeOf(tag)))
      const times = {
        bare: [] as Awaited<ReturnType<typeof firstViews>>[],
        box: [] as Awaited<ReturnType<typeof firstViews>>[]
      }
      for (let round = 0; round < REPEATS; round += 1) {
        times.bare.push(await firstViews(browser, `${host.address}/bare/`, line))
        times.box.push(await firstViews(browser, `${host.address}/B/${tag}/`, line))
      }
      const middle = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
      const [seen, whole] = (['seen', 'whole'] as const).map(
        name => [middle(times.box.map(one => one[name])), middle(times.bare.map(one => one[name]))] as const
      )
      const ratio = ([box, other]: readonly [number, number]): string =>
        `${(box / other).toFixed(2)} (${Math.round(box)} : ${Math.round(other)} ms)`
      process.stdout.write(
        `${line.name}, ${tag}, ${sizeOf(tag)} bytes: seen ${seen ? ratio(seen) : ''}, whole ${whole ? ratio(whole) : ''}\n`
      )
    }
} finally {
  rmSync(bare, { recursive: true })
  await browser.close()
  await host.stop()
}
