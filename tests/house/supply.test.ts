import { readFileSync, readdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { buildSync } from 'esbuild'
import { describe, expect, it } from 'vitest'
import { BUNDLED_PACKAGES, bundledLicenses } from '../../src/render/bundled-packages.ts'
import { publicScripts } from '../../src/render/page-script.ts'

const PROJECT = resolve(import.meta.dirname, '../..')
const read = (path: string): string => readFileSync(join(PROJECT, path), 'utf8')
const json = <T>(path: string): T => JSON.parse(read(path)) as T

const bundledScripts = ['box.ts', 'fleet.ts', 'tag-entry.ts', 'worker.ts', 'slip-code.ts']

interface Package {
  readonly license?: string
  readonly dependencies?: Readonly<Record<string, string>>
  readonly devDependencies?: Readonly<Record<string, string>>
}

const own = json<Package>('package.json')
const wanted = [...Object.keys(own.dependencies ?? {}), ...Object.keys(own.devDependencies ?? {})].sort()

/** The rows of the table in DEVELOPERS.md: | `name` | why | licence | */
const section = read('DEVELOPERS.md').split('## Packages')[1]?.split('\n## ')[0] ?? ''
const rows = [...section.matchAll(/^\| `([^`]+)` \| (.+?) \| ([A-Za-z0-9.-]+) \|$/gmu)].map(
  ([, name = '', why = '', license = '']) => ({ name, why, license })
)

/** Licences under which the project may pass a package on, or use it beside. SPDX License List. */
const ALLOWED = [
  ...['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'BlueOak-1.0.0', 'Python-2.0', 'PSF-2.0'],
  ...['Zlib', 'CC0-1.0', 'MPL-2.0', 'OFL-1.1', 'LGPL-3.0-or-later']
]

describe('what the project rests on', () => {
  it('names each package in DEVELOPERS.md with its reason, and no other', () => {
    expect(rows.map(one => one.name).sort()).toEqual(wanted)
    expect(rows.filter(one => one.why.length < 8)).toEqual([])
  })

  it('says the licence that the package itself says', () => {
    const wrong = rows.filter(
      ({ name, license }) => json<Package>(`node_modules/${name}/package.json`).license !== license
    )
    expect(wrong).toEqual([])
  })

  it('takes in, down to the last, only packages whose licence is on the list', () => {
    const { packages } = json<{ packages: Record<string, Package> }>('package-lock.json')
    const others = Object.entries(packages)
      .filter(([path]) => path !== '')
      .filter(
        ([, { license = '' }]) =>
          !license
            .replace(/[()]/gu, '')
            .split(/ (?:AND|OR) /u)
            .every(one => ALLOWED.includes(one))
      )
    expect(others.map(([path, { license }]) => `${path}: ${license}`)).toEqual([])
  })

  it('names each package of which parts stand in the scripts of the pages, and gives their licenses along', () => {
    const scripts = readdirSync(join(PROJECT, 'src/page')).filter(name => bundledScripts.includes(name))
    const { metafile } = buildSync({
      entryPoints: scripts.map(name => join(PROJECT, 'src/page', name)),
      absWorkingDir: PROJECT,
      bundle: true,
      write: false,
      outdir: 'out',
      metafile: true
    })
    const packages = Object.keys(metafile.inputs).flatMap(
      path => /node_modules\/((?:@[^/]+\/)?[^/]+)/u.exec(path)?.[1] ?? []
    )
    expect([...new Set(packages)].sort()).toEqual([...BUNDLED_PACKAGES])
    const notice = bundledLicenses()
    for (const name of BUNDLED_PACKAGES) {
      const { license = '' } = json<Package>(`node_modules/${name}/package.json`)
      expect(section).toContain(`${name} (${license})`)
      const [, own = ''] = notice.split(`== ${name} `)
      expect(own.split('\n== ')[0]?.replace(/\s+/gu, ' '), name).toMatch(
        /^\d+\.\d+\.\d+ .*copyright .*the software is provided "as is"/iu
      )
    }
    expect(publicScripts().map(one => one.path)).toContain('public/licenses.txt')
  })

  it('names the browser that is brought along, and its license', () => {
    const { dependencies = {} } = json<Package>('setup/browser/package.json')
    for (const name of Object.keys(dependencies)) expect(section).toContain(`\`${name}\``)
  })

  it('installs without running a script of any package', () => {
    expect(read('setup/packages.mjs')).toContain("'--ignore-scripts'")
  })

  it('holds the licence of every font that it passes on', () => {
    expect(readdirSync(join(PROJECT, 'templates/fonts')).filter(name => name.endsWith('.woff2')).length).toBe(2)
    expect(read('templates/fonts/OFL.txt')).toContain('SIL OPEN FONT LICENSE Version 1.1')
    for (const name of wanted.filter(one => one.startsWith('@fontsource/')))
      expect(read(`templates/fonts/${name.replace('@fontsource/', '')}-OFL.txt`), name).toContain(
        'SIL OPEN FONT LICENSE'
      )
  })
})
