import { copyFileSync, cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { makeTag, TAG_ALPHABET, TAG_LENGTH } from '../../src/domain/tags/tag.ts'

/**
 * Run by `npx tsx tests/bench/make-fleet.ts FOLDER SITES [--photos]`. Makes a folder of sites from the demo sites: each with an id, a title,
 * a place on the map, private codes and tags of its own, its visits, and every tag in the register. The demo site with 22 boxes is left
 * out, so that a site has four boxes on average. The same number gives the same files.
 */
export interface FleetWish {
  readonly folder: string
  readonly sites: number
  /** Demo sites: the folder they are made from. */
  readonly from?: string
  /** Pictures are copied too; without, the keys that name them are taken out. */
  readonly photos?: boolean
}

const TOO_LARGE = ['mercer-row']
const DEMOS = 'sites'
/** Sites stand in rows of this many, one step apart on the map. */
const ROW = 40
const STEP_DEGREES = 0.013

export function makeFleet({ folder, sites, from = DEMOS, photos = false }: FleetWish): void {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  cpSync(join(from, '_shared'), join(folder, '_shared'), { recursive: true })
  const demos = readdirSync(from).filter(
    name => !name.startsWith('_') && !name.includes('.') && !TOO_LARGE.includes(name)
  )
  const register = ['tag,site,box,state,issued,now']
  for (let n = 0; n < sites; n += 1) {
    const demo = demos[n % demos.length] ?? ''
    const id = siteId(demo, n)
    const text = ownText(readFileSync(join(from, demo, 'site.md'), 'utf8'), n, photos)
    mkdirSync(join(folder, id, 'visits'), { recursive: true })
    writeFileSync(join(folder, id, 'site.md'), text)
    copyAll(join(from, demo, 'visits'), join(folder, id, 'visits'), file => !photos || file.endsWith('.md'), photos)
    if (photos) cpSync(join(from, demo, 'photos'), join(folder, id, 'photos'), { recursive: true })
    register.push(...boxesOf(text).map(({ tag, box }) => `${tag},${id},${box},live,2025-03-03,`))
  }
  writeFileSync(join(folder, 'tags.csv'), `${register.join('\n')}\n`)
}

export const siteId = (demo: string, n: number): string => `${demo}-${String(n).padStart(4, '0')}`

/** The text of a demo site as that of the n-th of a fleet. */
function ownText(demo: string, n: number, photos: boolean): string {
  let boxes = 0
  const text = demo
    .replace(/^title: (.*)$/mu, (_, title: string) => `title: ${unquoted(title)} ${n}`)
    .replace(/(\btag: )[2-9A-Z]{7}\b/gu, (_, key: string) => key + tagOf(n * 32 + boxes++))
    .replace(/latitude: (-?[\d.]+)/u, (_, degrees: string) => `latitude: ${shifted(degrees, Math.floor(n / ROW))}`)
    .replace(/longitude: (-?[\d.]+)/u, (_, degrees: string) => `longitude: ${shifted(degrees, n % ROW)}`)
  const own = privateVaried(text, n)
  return photos ? own : withoutPictures(own)
}

const unquoted = (text: string): string => text.trim().replace(/^"(.*)"$/u, '$1')
const shifted = (degrees: string, steps: number): string => (Number(degrees) + steps * STEP_DEGREES).toFixed(5)

/** Codes below `private:` at the end of the keys differ from site to site, as they do. */
function privateVaried(text: string, n: number): string {
  const start = text.search(/^private:/mu)
  if (start < 0) return text
  const end = text.indexOf('\n---', start)
  const codes = text
    .slice(start, end)
    .replace(/\b\d{4}\b/gu, code => String(10_000 + ((Number(code) + n * 7) % 80_000)))
  return text.slice(0, start) + codes + text.slice(end)
}

function withoutPictures(text: string): string {
  return text.replace(/^ +photos: \[[^\]]*\]\n/gmu, '').replace(/, photos: \[[^\]]*\]/gu, '')
}

function boxesOf(text: string): { readonly tag: string; readonly box: string }[] {
  const found: { tag: string; box: string }[] = []
  let box = ''
  for (const [, id, tag] of text.matchAll(/\bid: ([\w-]+)|\btag: ([2-9A-Z]{7})\b/gu)) {
    if (id) box = id
    if (tag) found.push({ tag, box })
  }
  return found
}

/** Tags are drawn at random in life; here they are counted, so that the same fleet comes out again. */
function tagOf(number: number): string {
  let rest = number * 7919 + 31
  return makeTag(
    Array.from({ length: TAG_LENGTH - 1 }, () => {
      const value = rest % TAG_ALPHABET.length
      rest = Math.floor(rest / TAG_ALPHABET.length)
      return value
    })
  )
}

function copyAll(from: string, to: string, wanted: (file: string) => boolean, photos: boolean): void {
  for (const name of readdirSync(from).filter(wanted)) {
    if (photos) copyFileSync(join(from, name), join(to, name))
    else writeFileSync(join(to, name), withoutPictures(readFileSync(join(from, name), 'utf8')))
  }
}

if (process.argv[1] && pathToFileURL(process.argv[1]).href === import.meta.url) {
  const [folder = '', sites = '100'] = process.argv.slice(2)
  makeFleet({ folder, sites: Number(sites), photos: process.argv.includes('--photos') })
  process.stdout.write(`${sites} sites in ${basename(folder)}\n`)
}
