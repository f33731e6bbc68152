import { parseArgs } from 'node:util'
import { keepCase, runCases } from './run-cases.ts'

// npx tsx tests/fuzz/run.ts --cases 50000 --seed 1
// --command 100: every hundredth case also goes through the command itself, every fifth of those through a build
// npx tsx tests/fuzz/run.ts --seed 1 --keep 1234 --into FOLDER   writes one case to look at

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '50000' },
    seed: { type: 'string', default: '1' },
    from: { type: 'string', default: '0' },
    kinds: { type: 'string' },
    seeds: { type: 'string' },
    command: { type: 'string', default: '100' },
    keep: { type: 'string' },
    into: { type: 'string', default: '.cache/fuzz-case' }
  }
})
const seed = Number(values.seed)
const kinds = values.kinds?.split(',')
const say = (text: string): void => void process.stdout.write(`${text}\n`)

if (values.keep !== undefined) {
  const made = keepCase(seed, Number(values.keep), values.into, kinds)
  say(
    `${made.kind} on ${made.seed.name}, --on ${made.on}: ${values.into}${made.call && made.input ? `\n${made.call(made.input.name, 'sites').join(' ')}` : ''}`
  )
} else {
  const started = Date.now()
  const report = await runCases({
    cases: Number(values.cases),
    from: Number(values.from),
    seed,
    commandEvery: Number(values.command),
    ...(kinds ? { kinds } : {}),
    ...(values.seeds ? { seeds: values.seeds.split(',') } : {}),
    onFailure: ({ number, kind, seed: name, wrong }) =>
      say(
        `case ${number} (${kind}, ${name})\n${[...new Set(wrong)]
          .slice(0, 4)
          .map(one => `  ${one.slice(0, 900)}`)
          .join('\n')}`
      ),
    onProgress: done => say(`${done} cases, ${((Date.now() - started) / 1000).toFixed(0)} s`)
  })
  const { failures, ...figures } = report
  say(JSON.stringify(figures, undefined, 2))
  say(`${report.cases} cases in ${((Date.now() - started) / 1000).toFixed(0)} s, ${failures.length} failed.`)
  process.exitCode = failures.length > 0 ? 1 : 0
}
