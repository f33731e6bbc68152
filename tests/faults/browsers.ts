import { spawn } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { browsersThere } from '../../setup/browser.mjs'
import { diceOf } from '../fuzz/dice.ts'
import { brokenOutput, browsersOf, temporaries } from './state.ts'

const PROJECT = resolve(import.meta.dirname, '../..')

/** What happens to one browser: after so many seconds from its start. */
export interface Harm {
  readonly after: number
  readonly how: 'kill' | 'stop' | 'kill helpers' | 'stop helpers'
}

export const HOWS = ['kill', 'stop', 'kill helpers', 'stop helpers'] as const

export interface HarmedPrint {
  readonly code: number | null
  readonly said: string
  readonly seconds: number
  /** How many browsers were started. */
  readonly starts: number
  /** What is wrong afterwards; nothing where all is well. */
  readonly wrong: readonly string[]
}

/** A folder with `sites/`, in which runs print with browsers that come to harm. */
export interface Workshop {
  readonly folder: string
  /** Prints; the first browser comes to the first harm, and so on; `undefined` does none. The last one holds for all that follow. */
  readonly print: (harms: readonly (Harm | undefined)[], args?: readonly string[]) => Promise<HarmedPrint>
}

/** Seconds that stand for the 30 that a short document may take. */
const PATIENCE = 8

/**
 * A program that starts the real browser in its own place and does harm to it a while later. The helpers of a browser are of its
 * group, and the one that does the harm is too, so that it goes when the browser is ended.
 */
function harmfulBrowser(folder: string, real: string): string {
  const program = join(folder, 'harmful-browser')
  const helpers = `ps -eo pgid=,pid=,args= | awk -v g=$$ '$1==g && /type=renderer/ {print $2}'`
  writeFileSync(
    program,
    [
      '#!/bin/sh',
      `echo x >> "${folder}/starts"`,
      `n=$(wc -l < "${folder}/starts")`,
      `harm=$(sed -n "$n"p "${folder}/harms"); [ -n "$harm" ] || harm=$(tail -n 1 "${folder}/harms")`,
      'set -- "$harm" "$@"',
      'after=${1%% *} how=${1#* }',
      'shift',
      'case "$how" in',
      '  kill) (sleep "$after"; kill -KILL $$) & ;;',
      '  stop) (sleep "$after"; kill -STOP $$) & ;;',
      `  "kill helpers") (sleep "$after"; for p in $(${helpers}); do kill -KILL $p; done) & ;;`,
      `  "stop helpers") (sleep "$after"; for p in $(${helpers}); do kill -STOP $p; done) & ;;`,
      'esac',
      `exec "${real}" "$@"`,
      ''
    ].join('\n')
  )
  chmodSync(program, 0o755)
  return program
}

export function workshop(folder: string): Workshop {
  const [place] = browsersThere()
  if (!place) throw new Error('No browser is there.')
  const program = harmfulBrowser(folder, place.path)
  // What runs put aside stands apart from what others put aside, and where nothing is left it is empty.
  const aside = join(folder, 't')
  mkdirSync(aside, { recursive: true })
  const print: Workshop['print'] = async (harms, args = ['--on', '2026-05-01']) => {
    rmSync(join(folder, 'starts'), { force: true })
    const lines = harms.map(harm => (harm ? `${harm.after.toFixed(2)} ${harm.how}` : '0 nothing'))
    writeFileSync(join(folder, 'harms'), `${lines.join('\n')}\n`)
    const start = performance.now()
    const env = {
      ...process.env,
      ...place.env,
      UNDERLID_BROWSER: program,
      UNDERLID_PRINT_SECONDS: String(PATIENCE),
      TMPDIR: aside
    }
    const { code, said } = await ended(['print', ...args], folder, env)
    const seconds = (performance.now() - start) / 1000
    const starts = existsSync(join(folder, 'starts')) ? readFileSync(join(folder, 'starts'), 'utf8').length / 2 : 0
    return { code, said, seconds, starts, wrong: [...(await leftBy(folder, aside)), ...wrongWords(code, said)] }
  }
  return { folder, print }
}

function ended(
  args: readonly string[],
  cwd: string,
  env: NodeJS.ProcessEnv
): Promise<{ code: number | null; said: string }> {
  return new Promise(done => {
    const child = spawn(process.execPath, [join(PROJECT, 'setup/underlid.mjs'), ...args], { cwd, env })
    let said = ''
    for (const stream of [child.stdout, child.stderr]) stream.on('data', chunk => (said += String(chunk)))
    child.once('close', code => done({ code, said }))
  })
}

async function leftBy(folder: string, aside: string): Promise<string[]> {
  for (let wait = 0; wait < 30 && browsersOf(aside).length > 0; wait += 1)
    await new Promise(resolve => setTimeout(resolve, 100))
  const dist = join(folder, 'dist')
  // The runner of TypeScript keeps what it compiled.
  const left = readdirSync(aside).filter(name => !/^(?:tsx-|node-compile-cache)/u.test(name))
  return [
    ...browsersOf(aside).map(pid => `browser ${pid} is left`),
    ...left.map(name => `${name} is left among the temporary files`),
    ...temporaries(folder).map(path => `${path} is left`),
    ...(existsSync(dist) ? brokenOutput(dist) : ['there is no output'])
  ]
}

/** A run says that it printed, or names each document that it did not print and what to do. */
function wrongWords(code: number | null, said: string): string[] {
  const trace = /^\s+at .+:\d+:\d+\)?$/mu.test(said) ? ['a trace is shown'] : []
  if (code === 0)
    return [...trace, ...(said.includes('Not printed') ? ['something is not printed, and the code is 0'] : [])]
  const told = /Not printed: print\/\S+\.pdf: .*UNDERLID_BROWSER/u.test(said) || said.includes('it did not start')
  return [
    ...trace,
    ...(code === 2 ? [] : [`ended with ${code}`]),
    ...(told ? [] : [`does not say what to do: ${said.slice(-400)}`])
  ]
}

export interface BrowserReport {
  readonly rounds: number
  readonly byHow: Readonly<Record<string, number>>
  readonly codes: Readonly<Record<string, number>>
  readonly starts: number
  readonly slowest: number
  readonly failures: readonly string[]
}

/** Prints again and again, each time with browsers that come to harm at moments drawn by the seed; every third time more than one does. */
export async function harmBrowsers(
  place: Workshop,
  wish: { rounds: number; seed: number; onRound?: (report: BrowserReport) => void }
): Promise<BrowserReport> {
  const dice = diceOf(wish.seed)
  const failures: string[] = []
  const byHow: Record<string, number> = {}
  const codes: Record<string, number> = {}
  let [starts, slowest] = [0, 0]
  const whole = await place.print([undefined])
  if (whole.code !== 0 || whole.wrong.length > 0) failures.push(`without harm: ${whole.code} ${whole.wrong.join('; ')}`)
  for (let round = 0; round < wish.rounds; round += 1) {
    const harm = (): Harm => ({ after: 0.05 + dice.share() * 3, how: dice.pick(HOWS) })
    const harms = dice.chance(0.33) ? [harm(), harm(), harm()] : [harm(), undefined]
    const day = `2026-06-${String(1 + (round % 28)).padStart(2, '0')}`
    const result = await place.print(harms, ['--on', day])
    for (const one of harms) if (one) byHow[one.how] = (byHow[one.how] ?? 0) + 1
    codes[String(result.code)] = (codes[String(result.code)] ?? 0) + 1
    starts += result.starts
    slowest = Math.max(slowest, result.seconds)
    const tell = (what: string): void => void failures.push(`round ${round}, ${JSON.stringify(harms)}: ${what}`)
    for (const one of result.wrong) tell(one)
    if (harms.length === 2 && result.code !== 0) tell(`one browser came to harm, and the run ended with ${result.code}`)
    wish.onRound?.({ rounds: round + 1, byHow, codes, starts, slowest, failures })
    if (result.code === 0) continue
    const next = await place.print([undefined], ['--on', day])
    if (next.code !== 0 || next.wrong.length > 0) tell(`the next run ended with ${next.code}: ${next.wrong.join('; ')}`)
  }
  return { rounds: wish.rounds, byHow, codes, starts, slowest, failures }
}
