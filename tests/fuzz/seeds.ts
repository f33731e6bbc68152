import { resolve } from 'node:path'
import { BASE_TAGS, baseRegister, baseSite } from '../support/base-site.ts'
import { newSiteText } from '../../src/load/new-site.ts'
import { fileOf, readImage } from './folder.ts'
import type { Entry, Image } from './folder.ts'

/** A valid folder of sites that cases start from. */
export interface Seed {
  readonly name: string
  readonly image: Image
  /** Its one site. */
  readonly site: string
  /** How often it is taken, beside the others. */
  readonly weight: number
}

const SITES = resolve(import.meta.dirname, '../../sites')
const DEMO: Readonly<Record<string, number>> = {
  'kestrel-cross': 10,
  'tinder-street-roof': 10,
  'osmund-vale-nursery': 5,
  'tansy-yard': 4,
  'harbour-steps': 3,
  'brindle-common': 3,
  'larkmoor-median': 2,
  'marram-steps': 2,
  'mercer-row': 1
}

/** One site a folder; what its files share stands beside it. Large files of photographs are cut to what a check looks at: that they are there. */
export function seeds(): Seed[] {
  const shared = [...readImage(SITES, '_shared')]
  const register = [...readImage(SITES)].filter(([path]) => path === 'tags.csv')
  const demo = Object.entries(DEMO).map(([site, weight]) => {
    const files = [...readImage(SITES, site)].map(([path, entry]): [string, Entry] => [path, small(path, entry)])
    return { name: site, site, weight, image: new Map([...shared, ...files, ...register]) }
  })
  return [base(), started(), minimal(), ...demo]
}

function base(): Seed {
  const visits = [
    [
      '2026-04-10-route.md',
      'on: 2026-04-10\nby: A. Hand\nreason: route\nreadings: [{ station: K1/1, loop: 6.3 ohm }]\nopen: [Lid cracked]\n'
    ]
  ] as const
  const { files, shared } = baseSite('private: { gate: 0391, keys: shed hook 4 }\n', { visits })
  const texts = [...files, ...shared, baseRegister].map(
    ({ file, text }) => [file.replace(/^sites\//u, ''), fileOf(text)] as const
  )
  const photos = ['vb1-open.jpg', 'vb2-open.jpg'].map(name => [`base/photos/${name}`, fileOf('')] as const)
  return { name: 'base', site: 'base', weight: 70, image: new Map([...texts, ...photos]) }
}

function started(): Seed {
  const text = newSiteText({ title: 'Quay Street', units: 'us', tag: BASE_TAGS.VB1 })
  return { name: 'started', site: 'quay-street', weight: 12, image: new Map([['quay-street/site.md', fileOf(text)]]) }
}

function minimal(): Seed {
  const text = '---\ntitle: A\nunits: metric\n---\n'
  return { name: 'minimal', site: 'a', weight: 8, image: new Map([['a/site.md', fileOf(text)]]) }
}

const small = (path: string, entry: Entry): Entry => (/\.(?:jpe?g|png)$/iu.test(path) ? fileOf('a picture') : entry)
