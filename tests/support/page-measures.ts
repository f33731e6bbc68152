import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { PNG } from 'pngjs'
import type { Page } from 'puppeteer'

/* What a person at the box has before the eyes and under the thumb, measured on the page as the browser draws it. */

/** A word: where it stands on the page, in CSS pixels. */
interface Stretch {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly text: string
}

/** Words as they are laid out, and what fields show; run in the page. */
const STRETCHES = `(() => {
  const found = []
  const add = (box, text) => {
    const [x, y] = [box.left + scrollX, box.top + scrollY]
    if (box.width >= 2 && box.height >= 2 && x >= 0) found.push({ x, y, width: box.width, height: box.height, text: text.trim().slice(0, 40) })
  }
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement
    if (!node.data.trim() || !parent || !parent.checkVisibility() || /^(?:SCRIPT|STYLE|OPTION)$/.test(parent.tagName)) continue
    const range = document.createRange()
    for (const word of node.data.matchAll(/\\S+/g)) {
      range.setStart(node, word.index)
      range.setEnd(node, word.index + word[0].length)
      for (const box of range.getClientRects()) add(box, word[0])
    }
  }
  for (const field of document.querySelectorAll('input:not([type=checkbox]), textarea, select'))
    if (field.checkVisibility() && field.value) {
      const box = field.getBoundingClientRect()
      add({ left: box.left + 6, top: box.top + 6, width: Math.min(box.width - 40, 90), height: box.height - 12 }, field.value)
    }
  return found
})()`

/** Taller pictures than this are more than a browser draws at once. */
const SLICE_PX = 4000
const DOTS = 2

/**
 * Text whose strokes and ground, as drawn, are nearer to each other than `least` : 1. The ground is the color most of its place has, the
 * strokes are what is farthest from it in lightness. WCAG 2.2, definitions, contrast ratio.
 */
export async function faintTexts(page: Page, least = 7): Promise<{ readonly faint: string[]; readonly seen: number }> {
  const stretches = (await page.evaluate(STRETCHES)) as Stretch[]
  const width = page.viewport()?.width ?? 360
  await page.setViewport({ ...page.viewport(), width, height: page.viewport()?.height ?? 640, deviceScaleFactor: DOTS })
  const tall = (await page.evaluate('document.documentElement.scrollHeight')) as number
  const faint: string[] = []
  let seen = 0
  for (let top = 0; top < tall; top += SLICE_PX) {
    const height = Math.min(SLICE_PX, tall - top)
    const shot = await page.screenshot({ clip: { x: 0, y: top, width, height }, captureBeyondViewport: true })
    const picture = PNG.sync.read(Buffer.from(shot))
    for (const stretch of stretches.filter(one => one.y >= top && one.y + one.height <= top + height)) {
      seen += 1
      const ratio = contrastIn(picture, { ...stretch, y: stretch.y - top })
      if (ratio < least) faint.push(`${stretch.text}: ${ratio.toFixed(2)}`)
    }
  }
  return { faint, seen }
}

function contrastIn(picture: PNG, { x, y, width, height }: Stretch): number {
  const counts = new Map<number, number>()
  for (let row = Math.floor(y * DOTS); row < Math.min((y + height) * DOTS, picture.height); row += 1)
    for (let column = Math.floor(x * DOTS); column < Math.min((x + width) * DOTS, picture.width); column += 1) {
      const color = picture.data.readUInt32BE((row * picture.width + column) * 4) >>> 8
      counts.set(color, (counts.get(color) ?? 0) + 1)
    }
  const [ground = 0] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? []
  const behind = luminance(ground)
  return Math.max(1, ...[...counts.keys()].map(color => ratioOf(luminance(color), behind)))
}

/** Relative luminance of 0xRRGGBB. WCAG 2.2, definitions, relative luminance. */
function luminance(color: number): number {
  const [red = 0, green = 0, blue = 0] = [16, 8, 0].map(shift => {
    const channel = ((color >>> shift) & 255) / 255
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

function ratioOf(a: number, b: number): number {
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)
}

/** What can be touched and is smaller than 44 px either way; a tick is touched by its label. WCAG 2.2, 2.5.5. */
export async function smallTargets(page: Page): Promise<string[]> {
  return (await page.evaluate(`
    [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
      .filter(one => one.checkVisibility())
      .map(one => [one, (one.closest('label.tick') ?? one).getBoundingClientRect()])
      .filter(([, box]) => box.height < 43.99 || box.width < 43.99)
      .map(([one, box]) => one.outerHTML.slice(0, 80) + ' ' + box.width + ' x ' + box.height)
  `)) as string[]
}

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** Violations that an automated engine finds, those of the highest level and of good practice among them. */
export async function accessFaults(page: Page): Promise<string[]> {
  await page.evaluate(AXE)
  return (await page.evaluate(
    "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag21aaa', 'wcag22aa', 'best-practice'] }).then(result => result.violations.map(one => one.id + ': ' + one.nodes.map(node => node.html.slice(0, 120)).join(' | ')))"
  )) as string[]
}
