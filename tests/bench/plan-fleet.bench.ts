import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { assessFleet } from '../../src/build/assess.ts'
import { CHECKS } from '../../src/checks/list.ts'
import { runChecks } from '../../src/checks/run.ts'
import { makeTag, TAG_ALPHABET, TAG_LENGTH } from '../../src/domain/tags/tag.ts'
import type { LoadedSite } from '../../src/load/loaded.ts'
import type { Fleet } from '../../src/model/fleet.ts'
import type { Box, Site } from '../../src/model/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { date } from '../../src/units/date.ts'

/**
 * Run by `npx tsx tests/bench/plan-fleet.bench.ts [sites]`. As many sites, 2,000 where no number is given, are made from the demo sites as they
 * are once read, planned and checked by two processes, and set against a bare loop that makes one object for each opening of a valve in the
 * year. Times are processor time of the
 * slower process; only the ratio says something of another machine.
 */
const ON = date('2026-05-01')
const PROCESSES = 2
const SITES = 2000

interface Share {
  readonly first: number
  readonly sites: number
  readonly work: 'plan' | 'bare'
}

interface Done {
  readonly milliseconds: number
  readonly findings: number
  readonly openings: number
}

interface MadeSite {
  readonly loaded: LoadedSite
  readonly site: Site
}

/** The n-th site of the fleet: a demo site with a name and tags of its own. */
function madeSite(demos: readonly LoadedSite[], n: number): MadeSite[] {
  const loaded = demos[n % demos.length]
  const site = loaded?.site
  if (!loaded || !site) return []
  const id = `site-${String(n).padStart(5, '0')}`
  const boxes = site.boxes.map((box, index): Box => (box.tag === undefined ? box : { ...box, tag: tagOf(n, index) }))
  const own = { ...site, id, boxes }
  return [{ site: own, loaded: { ...loaded, id, site: own } }]
}

function tagOf(n: number, index: number): string {
  let rest = n * 100 + index
  const values = Array.from({ length: TAG_LENGTH - 1 }, () => {
    const value = rest % TAG_ALPHABET.length
    rest = Math.floor(rest / TAG_ALPHABET.length)
    return value
  })
  return makeTag(values)
}

function fleetOf(made: readonly MadeSite[]): Fleet {
  const register = made.flatMap(({ site }) =>
    site.boxes.flatMap(({ tag, id, at }) =>
      tag === undefined ? [] : [{ at, tag, site: site.id, box: id, state: 'live' as const }]
    )
  )
  return { sites: made.map(({ site }) => site), register }
}

function openingsIn({ schedules }: Plan): number {
  let openings = 0
  for (const { days } of schedules.values()) for (const { pattern } of days) openings += pattern.length
  return openings
}

/** What the bare loop makes: every opening of the year with its date, and nothing else. */
function bareRuns({ schedules }: Plan): number {
  let made = 0
  for (const { days } of schedules.values()) {
    const runs: object[] = []
    for (const { day, pattern } of days)
      for (const { program, programStartS, station, cycle, startS, durationS } of pattern)
        runs.push({ day, program, programStartS, station, cycle, startS, durationS })
    made += runs.length
  }
  return made
}

function work({ first, sites, work: kind }: Share): Done {
  const { sites: assessed } = assessFleet('sites', ON)
  const demos = assessed.map(one => one.loaded).filter(one => one.site)
  const made = Array.from({ length: sites }, (_, n) => madeSite(demos, n)).flat()
  const fleet = fleetOf(made)
  const own = made.filter((_, n) => n % PROCESSES === first)
  const plans = kind === 'bare' ? demos.flatMap(({ site }) => (site ? [makePlan(site, ON)] : [])) : []
  const began = process.cpuUsage()
  let [findings, openings] = [0, 0]
  for (const [index, { site, loaded }] of own.entries()) {
    const known = plans[(index * PROCESSES + first) % demos.length]
    if (known) {
      openings += bareRuns(known)
      continue
    }
    const plan = makePlan(site, ON)
    findings += runChecks({ loaded, plan, fleet }, CHECKS).length
    openings += openingsIn(plan)
  }
  const { user, system } = process.cpuUsage(began)
  return { milliseconds: (user + system) / 1000, findings, openings }
}

function inProcess(share: Share): Promise<Done> {
  return new Promise((resolve, reject) => {
    const child = fork(fileURLToPath(import.meta.url), [JSON.stringify(share)], { execArgv: process.execArgv })
    child.once('message', done => resolve(done as Done))
    child.once('error', reject)
  })
}

async function measured(sites: number, kind: Share['work']): Promise<Done> {
  const shares = Array.from({ length: PROCESSES }, (_, first) => ({ first, sites, work: kind }))
  const done = await Promise.all(shares.map(inProcess))
  const total = (of: (one: Done) => number) => done.map(of).reduce((a, b) => a + b, 0)
  return {
    milliseconds: Math.max(...done.map(one => one.milliseconds)),
    findings: total(one => one.findings),
    openings: total(one => one.openings)
  }
}

async function compared(sites: number): Promise<string> {
  const bare = await measured(sites, 'bare')
  const planned = await measured(sites, 'plan')
  const seconds = ({ milliseconds }: Done) => `${(milliseconds / 1000).toFixed(1)} s`
  const ratio = (planned.milliseconds / bare.milliseconds).toFixed(0)
  const each = ((planned.milliseconds * PROCESSES) / sites).toFixed(1)
  return [
    `${sites} sites, ${planned.openings} openings in the year, ${planned.findings} findings`,
    `planned and checked in ${seconds(planned)} by ${PROCESSES} processes, ${each} ms a site`,
    `${ratio} times a bare loop over the same openings (${seconds(bare)})`
  ].join('\n')
}

const [given] = process.argv.slice(2)
if (given?.startsWith('{')) process.send?.(work(JSON.parse(given) as Share))
else process.stdout.write(`${await compared(Number(given ?? SITES))}\n`)
