import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { keepCase, makeCase, runCases } from './run-cases.ts'
import type { CaseReport, RunReport, RunWish } from './run-cases.ts'
import { joined } from './reports.ts'
import { seeds } from './seeds.ts'

// npx tsx tests/fuzz/run.ts --cases 50000 --seed 1
// --command 101: every 101st case also goes through the command itself, every fifth of those through a build; a number that the kinds do not divide
// npx tsx tests/fuzz/run.ts --seed 1 --keep 1234 --into FOLDER   writes one case to look at

/** A case that comes to no end cannot be stopped from within, so the cases run in a process of their own. */
const END_SECONDS = 60

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '50000' },
    seed: { type: 'string', default: '1' },
    from: { type: 'string', default: '0' },
    kinds: { type: 'string' },
    seeds: { type: 'string' },
    command: { type: 'string', default: '101' },
    keep: { type: 'string' },
    into: { type: 'string', default: '.cache/fuzz-case' }
  }
})
const seed = Number(values.seed)
const kinds = values.kinds?.split(',')
const say = (text: string): void => void process.stdout.write(`${text}\n`)

type Message =
  | { readonly at: number }
  | { readonly failure: CaseReport }
  | { readonly done: number; readonly report: RunReport; readonly isLast: boolean }
type Order = Pick<RunWish, 'from' | 'cases'> & { readonly without: readonly number[] }

if (process.send) process.once('message', (order: Order) => void serve(order))
else if (values.keep !== undefined) keep(Number(values.keep))
else await runAll(Number(values.from), Number(values.cases))

function keep(number: number): void {
  const made = keepCase(seed, number, values.into, kinds)
  say(
    `${made.kind} on ${made.seed.name}, --on ${made.on}: ${values.into}${made.call && made.input ? `\n${made.call(made.input.name, 'sites').join(' ')}` : ''}`
  )
}

/** Runs cases in this process, which was started for it, and tells the other one of each. */
async function serve({ from, cases, without }: Order): Promise<void> {
  const tell = (message: Message): void => void process.send?.(message)
  const report = await runCases({
    cases,
    ...(from === undefined ? {} : { from }),
    seed,
    commandEvery: Number(values.command),
    without: new Set(without),
    ...(kinds ? { kinds } : {}),
    ...(values.seeds ? { seeds: values.seeds.split(',') } : {}),
    onCase: at => tell({ at }),
    onFailure: failure => tell({ failure }),
    onProgress: (done, soFar) => tell({ done, report: soFar, isLast: false })
  })
  tell({ done: cases, report, isLast: true })
  process.disconnect()
}

async function runAll(from: number, cases: number): Promise<void> {
  const started = Date.now()
  const seconds = (): string => ((Date.now() - started) / 1000).toFixed(0)
  const endless: CaseReport[] = []
  const parts: RunReport[] = []
  const told = new Set<number>()
  const onFailure = (failure: CaseReport): void => {
    if (!told.has(failure.number)) say(wordsOf(failure))
    told.add(failure.number)
  }
  let next = from
  while (next < from + cases) {
    const order = { from: next, cases: from + cases - next, without: endless.map(one => one.number) }
    const onProgress = (done: number): void => say(`${next - from + done} cases, ${seconds()} s`)
    const { done, report, stuck, how } = await inProcess(order, onFailure, onProgress)
    if (report) parts.push(report)
    next += done
    if (stuck === undefined) break
    const { kind, seed: start } = makeCase(seed, stuck, seeds(), kinds)
    endless.push({ number: stuck, kind, seed: start.name, wrong: [how ?? 'ended'] })
    endless.slice(-1).forEach(onFailure)
  }
  const { failures, ...figures } = joined(parts, endless)
  say(JSON.stringify(figures, undefined, 2))
  say(`${figures.cases} cases in ${seconds()} s, ${failures.length} failed.`)
  process.exitCode = failures.length > 0 ? 1 : 0
}

interface Ended {
  /** Cases that the report is about, from the first. */
  readonly done: number
  readonly report?: RunReport
  /** The case that came to no end, or that ended the process, and in words which of the two. */
  readonly stuck?: number
  readonly how?: string
}

function inProcess(
  order: Order,
  onFailure: (failure: CaseReport) => void,
  onProgress: (done: number) => void
): Promise<Ended> {
  const child = fork(fileURLToPath(import.meta.url), process.argv.slice(2), { serialization: 'advanced' })
  return new Promise(resolve => {
    let [at, since] = [order.from ?? 0, Date.now()]
    let last: { done: number; report?: RunReport } = { done: 0 }
    let isOver = false
    const watch = setInterval(() => {
      if (Date.now() - since > END_SECONDS * 1000) child.kill('SIGKILL')
    }, 1000)
    child.on('message', (message: Message) => {
      since = Date.now()
      if ('at' in message) at = message.at
      else if ('failure' in message) onFailure(message.failure)
      else {
        last = message
        isOver = message.isLast
        if (!isOver) onProgress(message.done)
      }
    })
    child.once('exit', (code, signal) => {
      clearInterval(watch)
      const how =
        signal === 'SIGKILL' ? `came to no end within ${END_SECONDS} s` : `ended the process with ${code ?? signal}`
      resolve(isOver ? last : { ...last, stuck: at, how })
    })
    child.send(order)
  })
}

function wordsOf({ number, kind, seed: name, wrong }: CaseReport): string {
  const lines = [...new Set(wrong)].slice(0, 4).map(one => `  ${one.slice(0, 900)}`)
  return `case ${number} (${kind}, ${name})\n${lines.join('\n')}`
}
