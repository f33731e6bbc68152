import type * as Processes from 'node:child_process'
import { cpSync, readFileSync, readdirSync } from 'node:fs'
import type * as Os from 'node:os'
import { join } from 'node:path'
import { expect, it, vi } from 'vitest'
import type * as Order from '../../src/build/work-order.ts'
import { buildFleet } from '../../src/build/pipeline.ts'
import { date } from '../../src/units/date.ts'
import { makeFleet } from '../bench/make-fleet.ts'
import { temporaryFolder } from './temporary-folder.ts'

/** What the machine and the size of a fleet decide otherwise. */
const work = vi.hoisted(() => ({ processors: 1, sitesATask: 16, started: 0 }))

vi.mock('node:os', async load => ({
  ...(await load<typeof Os>()),
  availableParallelism: () => work.processors
}))
vi.mock('node:child_process', async load => {
  const real = await load<typeof Processes>()
  const fork = (program: string, options: Processes.ForkOptions): Processes.ChildProcess => {
    work.started += 1
    return real.fork(program, options)
  }
  return { ...real, fork }
})
vi.mock('../../src/build/work-order.ts', async load => {
  const real = await load<typeof Order>()
  return {
    ...real,
    get SITES_A_TASK() {
      return work.sitesATask
    }
  }
})

const temporary = temporaryFolder()

/** Every file of an output with its bytes. */
function bytesOf(folder: string): Map<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(entry => entry.isFile())
  const paths = files.map(entry => join(entry.parentPath, entry.name)).sort()
  return new Map(paths.map(path => [path.slice(folder.length), readFileSync(path).toString('base64')]))
}

it('several processes give the bytes of one: pages, tables, calendar, search, whatever share of the sites each makes', async () => {
  const sites = temporary.path('sites')
  const from = temporary.path('from')
  for (const name of ['_shared', 'harbour-steps', 'tansy-yard'])
    cpSync(join('sites', name), join(from, name), { recursive: true })
  makeFleet({ folder: sites, sites: 6, from })
  const built = async (name: string, processors: number, sitesATask: number) => {
    Object.assign(work, { processors, sitesATask, started: 0 })
    const out = temporary.path(name)
    const { made } = await buildFleet({ sites, out, on: date('2026-05-01'), mark: 'one' })
    expect(made.length).toBe(6)
    return bytesOf(out)
  }
  const one = await built('one', 1, 16)
  expect(work.started).toBe(0)
  const many = await built('many', 2, 1)
  expect(work.started).toBe(2)
  expect([...many.keys()]).toEqual([...one.keys()])
  expect([...many.keys()].filter(path => many.get(path) !== one.get(path))).toEqual([])
  expect(one.size).toBeGreaterThan(40)
})
