import { spawn, spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { diceOf } from '../fuzz/dice.ts'
import { brokenOutput, brokenSites, browsersOf, temporaries, treeHash } from './state.ts'

const PROJECT = resolve(import.meta.dirname, '../..')
const SITE = 'kestrel-cross'
const ON = ['--on', '2026-05-01']
const ROWS = [
  'kind,id,where,lat,lon,ties,station,box,area',
  'box,VB4,"west splitter, by the sign",54.97013,-1.61035,1.2 m from sign; 3.4 m from curb,,,',
  'valve,,,,,,K1/2,VB4,141 m²',
  ''
].join('\r\n')

export const VERBS = ['build', 'print', 'record', 'import', 'tag'] as const
export type Verb = (typeof VERBS)[number]

const ARGUMENTS: Readonly<Record<Verb, readonly string[]>> = {
  build: ['build', ...ON],
  print: ['print', ...ON],
  record: ['record', SITE, '--by', 'A. Hand', '--found', 'lid cracked', ...ON],
  import: ['import', 'rows.csv', '--site', SITE, '--write', ...ON],
  tag: ['tag', '--replace', '7KQ3F9X', ...ON]
}

export interface KillReport {
  /** Runs that were killed while they ran. */
  readonly kills: number
  readonly byVerb: Readonly<Record<string, number>>
  /** Runs that had ended before they were to be killed; they count as none, and their length is that of the next one. */
  readonly tooLate: number
  /** How often the output was found moved aside, to be put back by the next run. */
  readonly between: number
  readonly recoveries: number
  readonly failures: readonly string[]
}

/** Of a run's length: what comes earlier is Node itself, what comes later may come too late. */
const EARLIEST = 0.1
const LATEST = 0.97
/** Runs of a verb may get faster while others are measured, but not for ever. */
const MOST_TRIES = 3

/**
 * Starts runs and kills each at a moment of its length that the seed draws, until so many were hit; looks at what is left each time, and now and
 * then a whole run follows.
 */
export async function killRuns(wish: {
  readonly kills: number
  readonly seed: number
  readonly recoverEvery?: number
  /** Told after each hit, with what was wrong so far. */
  readonly onKill?: (report: KillReport) => void
}): Promise<KillReport> {
  const { kills, seed, recoverEvery = 5, onKill } = wish
  const dice = diceOf(seed)
  const work = mkdtempSync(join(tmpdir(), 'underlid-kills-'))
  const folder = join(work, 'work')
  const failures: string[] = []
  const byVerb: Record<string, number> = {}
  let [tooLate, between, recoveries] = [0, 0, 0]
  const env = { ...process.env }
  const run = (args: readonly string[]): { status: number | null; said: string } => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(PROJECT, 'setup/underlid.mjs'), ...args], {
      cwd: folder,
      encoding: 'utf8',
      env
    })
    return { status, said: `${stdout}${stderr}` }
  }
  const restoreSites = (revision: number): void => {
    rmSync(join(folder, 'sites'), { recursive: true, force: true })
    for (const name of ['_shared', SITE])
      cpSync(join(PROJECT, 'sites', name), join(folder, 'sites', name), { recursive: true })
    // Tags of sites that are not there would be told of as gone.
    const [head = '', ...tags] = readFileSync(join(PROJECT, 'sites/tags.csv'), 'utf8').split('\n')
    const own = tags.filter(line => line.split(',')[1] === SITE)
    writeFileSync(join(folder, 'sites/tags.csv'), `${[head, ...own].join('\n')}\n`)
    const file = join(folder, 'sites', SITE, 'site.md')
    writeFileSync(file, readFileSync(file, 'utf8').replace(/^revision: .*$/mu, `revision: "${revision}"`))
  }
  try {
    mkdirSync(folder)
    writeFileSync(join(folder, 'rows.csv'), ROWS)
    restoreSites(0)
    const lasts: Record<string, number> = {}
    // A short run takes the time of one small verb for that of the others. The first run of all puts the program together.
    for (const verb of kills > 50 ? (['build', ...VERBS] as const) : (['print', 'record'] as const)) {
      restoreSites(0)
      const start = performance.now()
      const { status, said } = run(ARGUMENTS[verb])
      lasts[verb] = performance.now() - start
      if (status !== 0) failures.push(`${verb} without a kill ended with ${status}: ${said.slice(0, 300)}`)
    }
    let kill = 0
    for (let start = 0; kill < kills && start < kills * MOST_TRIES; start += 1) {
      const verb = VERBS[kill % VERBS.length] ?? 'build'
      restoreSites(start + 1)
      const before = existsSync(join(folder, 'dist')) ? treeHash(join(folder, 'dist')) : undefined
      const sites = treeHash(join(folder, 'sites'))
      const length = lasts[verb] ?? lasts[verb === 'build' ? 'print' : 'record'] ?? 1000
      const delay = length * (EARLIEST + (LATEST - EARLIEST) * dice.share())
      const signal = dice.pick(['SIGKILL', 'SIGKILL', 'SIGKILL', 'SIGTERM', 'SIGINT'] as const)
      const endedAfter = await killed(ARGUMENTS[verb], { folder, env, delay, signal })
      if (endedAfter === undefined) byVerb[verb] = (byVerb[verb] ?? 0) + 1
      else {
        tooLate += 1
        lasts[verb] = endedAfter
      }
      const tell = (what: string): void =>
        void failures.push(`kill ${kill} of ${verb} by ${signal} after ${delay.toFixed(0)} ms: ${what}`)
      const dist = join(folder, 'dist')
      if (!existsSync(dist)) {
        if (before === undefined || temporaries(folder).length > 0) between += 1
        else tell('the output is gone')
      } else for (const broken of brokenOutput(dist)) tell(broken)
      if ((verb === 'record' || verb === 'import' || verb === 'tag') && existsSync(dist) && before !== treeHash(dist))
        tell('the output changed')
      if ((verb === 'build' || verb === 'print') && sites !== treeHash(join(folder, 'sites'))) tell('the sites changed')
      for (const broken of brokenSites(join(folder, 'sites'))) tell(broken)
      await gone(pid => `browser ${pid} is left`, tell)
      if (endedAfter !== undefined) continue
      kill += 1
      onKill?.({ kills: kill, byVerb, tooLate, between, recoveries, failures })
      if (kill % recoverEvery !== 0 && kill !== kills) continue
      recoveries += 1
      const next = run([dice.pick(['build', 'print']), ...ON])
      if (next.status !== 0) tell(`the next run ended with ${next.status}: ${next.said.slice(0, 400)}`)
      for (const broken of brokenOutput(dist)) tell(`after the next run ${broken}`)
      const left = temporaries(folder)
      if (left.length > 0) tell(`after the next run these are left: ${left.join(', ')}`)
    }
    const profiles = readdirSync(tmpdir()).filter(name => pids.some(pid => name.startsWith(`underlid-browser-${pid}-`)))
    if (
      profiles.length > 0 &&
      spawnSync(process.execPath, [join(PROJECT, 'setup/underlid.mjs'), 'print', ...ON, '--out', 'fresh'], {
        cwd: folder,
        env
      }).status === 0
    ) {
      const still = profiles.filter(name => existsSync(join(tmpdir(), name)))
      if (still.length > 0) failures.push(`temporary folders of browsers are left: ${still.join(', ')}`)
    }
    if (kill < kills) failures.push(`only ${kill} of ${kills} kills came in time`)
    return { kills: kill, byVerb, tooLate, between, recoveries, failures }
  } finally {
    rmSync(work, { recursive: true, force: true })
  }
}

/** Ids of the runs that were started, so that what they leave can be told from what others leave. */
const pids: number[] = []

interface Kill {
  readonly folder: string
  readonly env: NodeJS.ProcessEnv
  readonly delay: number
  readonly signal: NodeJS.Signals
}

/** Undefined where the run was killed; its length in ms where it had ended before. */
function killed(args: readonly string[], { folder, env, delay, signal }: Kill): Promise<number | undefined> {
  return new Promise(done => {
    const start = performance.now()
    const child = spawn(process.execPath, [join(PROJECT, 'setup/underlid.mjs'), ...args], {
      cwd: folder,
      env,
      stdio: 'ignore'
    })
    if (child.pid) pids.push(child.pid)
    const timer = setTimeout(() => child.kill(signal), delay)
    child.once('exit', (_code, by) => {
      clearTimeout(timer)
      done(by === null && !child.killed ? performance.now() - start : undefined)
    })
  })
}

/** Browsers end by themselves when the run that started them does; they are given a few seconds. */
async function gone(words: (pid: number) => string, tell: (what: string) => void): Promise<void> {
  const ours = (): number[] => pids.flatMap(pid => browsersOf(`underlid-browser-${pid}-`))
  for (let wait = 0; wait < 50 && ours().length > 0; wait += 1) await new Promise(resolve => setTimeout(resolve, 100))
  for (const pid of ours()) tell(words(pid))
}
