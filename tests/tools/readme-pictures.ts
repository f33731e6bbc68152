import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { PNG } from 'pngjs'
import { buildFleet } from '../../src/build/pipeline.ts'
import { isNoBrowser, withBrowser } from '../../src/render/browser.ts'
import { date } from '../../src/units/date.ts'

// Makes the pictures of the README anew from the demo sites: npx tsx tests/tools/readme-pictures.ts
const project = join(import.meta.dirname, '../..')
const images = join(project, 'docs/images')
const out = mkdtempSync(join(tmpdir(), 'underlid-pictures-'))
const site = 'harbour-steps'

process.chdir(project)
mkdirSync(images, { recursive: true })
await buildFleet({
  sites: 'sites',
  out,
  on: date('2026-05-01'),
  only: [site],
  print: { binders: true, labels: true, restricted: false }
})

const shot = await withBrowser(async ({ browser }) => {
  const page = await browser.newPage()
  const take = async (path: string, name: string, width: number, height: number): Promise<void> => {
    await page.setViewport({ width, height, deviceScaleFactor: 1.5 })
    await page.goto(pathToFileURL(join(out, path)).href)
    await page.screenshot({ path: join(images, name) as `${string}.png` })
  }
  await take('public/B/ACJ5E6M/index.html', 'box-page.png', 360, 720)
  await take('office/index.html', 'fleet.png', 900, 560)
})
if (isNoBrowser(shot)) throw new Error(shot.told.join('\n'))

const binder = await pagesOf(`print/${site}-binder.pdf`)
save(binder[0], 'binder-cover.png')
save(binder[await pageWith('Wire schedule')], 'binder-wires.png')
const [labels] = await pagesOf(`print/${site}-labels.pdf`)
save(labels, 'label.png')
rmSync(out, { recursive: true })

interface Picture {
  readonly data: Uint8Array
  readonly width: number
  readonly height: number
}

async function pagesOf(path: string): Promise<Picture[]> {
  const library = await PDFiumLibrary.init()
  const document = await library.loadDocument(readFileSync(join(out, path)))
  const pictures: Picture[] = []
  for (const page of document.pages()) pictures.push(await page.render({ scale: 1, render: 'bitmap' }))
  document.destroy()
  library.destroy()
  return pictures
}

/** Index of the page that starts a section, by its bookmark in the contents: the printed number less one. */
async function pageWith(title: string): Promise<number> {
  const html = readFileSync(join(out, `office/${site}/binder.html`), 'utf8')
  if (!html.includes(title)) throw new Error(`no section ${title}`)
  const library = await PDFiumLibrary.init()
  const document = await library.loadDocument(readFileSync(join(out, `print/${site}-binder.pdf`)))
  const texts = [...document.pages()].map(page => page.getText())
  document.destroy()
  library.destroy()
  const index = texts.findIndex((text, page) => page > 2 && text.includes(title) && text.includes('Longest run'))
  if (index < 0) throw new Error(`no page for ${title}`)
  return index
}

function save(picture: Picture | undefined, name: string): void {
  if (!picture) throw new Error(`nothing to save as ${name}`)
  const { data, width, height } = picture
  const png = new PNG({ width, height })
  png.data.set(data)
  writeFileSync(join(images, name), PNG.sync.write(png))
}
