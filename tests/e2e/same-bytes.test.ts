import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { hashesBelow } from '../faults/state.ts'
import { otherObjects } from '../support/other-objects.ts'
import { ON, PROJECT, workFolder } from './support.ts'

// All demo sites: UNDERLID_ALL_SITES=1 npx vitest run tests/e2e/same-bytes.test.ts

const all = process.env['UNDERLID_ALL_SITES'] === '1'
const SITES = all
  ? readdirSync(join(PROJECT, 'sites'), { withFileTypes: true }).flatMap(one =>
      one.isDirectory() && one.name !== '_shared' ? [one.name] : []
    )
  : ['tinder-street-roof']
const folder = workFolder(SITES)

interface Setting {
  readonly name: string
  readonly env: Readonly<Record<string, string>>
  /** The files of the sites are made in another order, so that the disk lists them in another. */
  readonly reversed?: boolean
  /** Processors that the run may use. */
  readonly processors?: string
}

/** A clock that runs three years ahead: the day of a build is the one that is named. */
const AHEAD = `--import=data:text/javascript,${encodeURIComponent(
  'const R=Date,by=94_608_000_000;globalThis.Date=class extends R{constructor(...a){a.length?super(...a):super(R.now()+by)}static now(){return R.now()+by}}'
)}`

const SETTINGS: readonly Setting[] = [
  { name: 'utc', env: { TZ: 'UTC', LANG: 'C', LC_ALL: 'C' } },
  {
    name: 'auckland',
    env: { TZ: 'Pacific/Auckland', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8', NODE_OPTIONS: AHEAD },
    reversed: true
  },
  {
    name: 'st-johns',
    env: { TZ: 'America/St_Johns', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8', UV_THREADPOOL_SIZE: '1' },
    processors: '0'
  }
]

function copyOf({ name, reversed }: Setting): string {
  const place = join(folder, name)
  const names = ['_shared', 'tags.csv', ...SITES]
  mkdirSync(join(place, 'sites'), { recursive: true })
  for (const one of reversed ? names.toReversed() : names)
    cpSync(join(folder, 'sites', one), join(place, 'sites', one), { recursive: true })
  return place
}

it('two builds of the same sources give the same bytes across time zone, language, clock, order of files and processors: pages, prints, tables, calendar', async () => {
  const trees = SETTINGS.map(setting => {
    const cwd = copyOf(setting)
    const args = [process.execPath, join(PROJECT, 'setup/underlid.mjs'), 'print', '--on', ON]
    const pinned =
      setting.processors !== undefined && process.platform === 'linux'
        ? ['taskset', '-c', setting.processors, ...args]
        : args
    const [program = '', ...rest] = pinned
    const { status, stderr } = spawnSync(program, rest, {
      cwd,
      encoding: 'utf8',
      env: { ...process.env, ...setting.env }
    })
    expect(status, stderr).toBe(0)
    return Object.fromEntries(hashesBelow(join(cwd, 'dist')))
  })
  const [first = {}, ...others] = trees
  const told: string[] = []
  for (const [index, other] of others.entries())
    for (const path of Object.keys(first).filter(one => one.endsWith('.pdf') && first[one] !== other[one])) {
      const [one, two] = [0, index + 1].map(at => readFileSync(join(folder, SETTINGS[at]?.name ?? '', 'dist', path)))
      told.push(`${path}: ${one && two ? await otherObjects(one, two) : ''}`)
    }
  expect(told).toEqual([])
  expect(Object.keys(first).filter(path => path.endsWith('.pdf')).length).toBeGreaterThanOrEqual(2 * SITES.length)
  for (const ending of ['.html', '.ics', '.csv', '.geojson', '.json'])
    expect(
      Object.keys(first).some(path => path.endsWith(ending)),
      ending
    ).toBe(true)
  for (const other of others) expect(other).toEqual(first)
}, 600_000)
