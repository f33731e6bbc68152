import { execFileSync, spawn } from 'node:child_process'
import { appendFileSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { makeFleet } from './make-fleet.ts'

/**
 * Run by `npx tsx tests/bench/fleet.bench.ts [sites …]`; 10, 100 and 1000 where no number is given. Makes a fleet of each size and measures, each
 * in processes of their own: check, a build from nothing, a build after one edit, and, beside them in the same run, (a) Eleventy writing the same
 * finished pages with no work of ours and (b) a bare loop writing the same bytes. Only the ratios say something of another machine. Files are
 * made below UNDERLID_BENCH_FOLDER, a RAM disk at best.
 */
const ON = '2026-05-01'
const PROJECT = fileURLToPath(new URL('../../', import.meta.url))
const COMMAND = join(PROJECT, 'setup/underlid.mjs')

interface Taken {
  readonly seconds: number
  /** Processor time of the process and of those it started. */
  readonly cpuSeconds: number
  /** Of the largest of its processes, and of all together. */
  readonly peakMb: number
}

/** Runs a process to its end, and looks at the memory of it and its children as it goes. */
async function run(args: readonly string[]): Promise<Taken> {
  const cpuBefore = childCpu()
  const began = performance.now()
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'ignore', 'inherit'], cwd: PROJECT })
  let peakMb = 0
  const look = setInterval(() => (peakMb = Math.max(peakMb, memoryMb(child.pid ?? 0))), 50)
  const code = await new Promise<number | null>(resolve => child.once('exit', resolve))
  clearInterval(look)
  if (code === null || code > 2) throw new Error(`${args.join(' ')} ended with ${code}`)
  return { seconds: (performance.now() - began) / 1000, cpuSeconds: childCpu() - cpuBefore, peakMb }
}

/** Clock ticks of ended children, from the kernel's own record of this process; a hundred are a second. */
function childCpu(): number {
  const fields = readFileSync('/proc/self/stat', 'utf8')
    .replace(/^.*\) /su, '')
    .split(' ')
  return (Number(fields[13]) + Number(fields[14])) / 100
}

/** Memory that is in use by a process and by all below it. */
function memoryMb(pid: number): number {
  try {
    const own = /VmRSS:\s*(\d+) kB/u.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? '0'
    const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim().split(' ').filter(Boolean)
    return Number(own) / 1024 + children.reduce((total, one) => total + memoryMb(Number(one)), 0)
  } catch {
    return 0
  }
}

function pagesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && entry.name !== '.underlid')
    .map(entry => join(entry.parentPath, entry.name).slice(folder.length + 1))
}

/** (a): every finished file as a template of Eleventy that gives back its text, in a process that does nothing else. */
const ELEVENTY = `
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import Eleventy from '@11ty/eleventy'
const [from, to] = process.argv.slice(2)
const paths = readdirSync(from, { recursive: true, withFileTypes: true }).filter(e => e.isFile() && e.name !== '.underlid').map(e => join(e.parentPath, e.name).slice(from.length + 1))
const eleventy = new Eleventy('.', to, { quietMode: true, config: config => {
  config.setUseGitIgnore(false)
  config.setTemplateFormats(['11ty.js'])
  config.addGlobalData('plan', paths)
  config.addTemplate('pages.11ty.js', ({ planned }) => readFileSync(join(from, planned), 'utf8'), { pagination: { data: 'plan', size: 1, alias: 'planned' }, permalink: ({ planned }) => planned })
} })
await eleventy.write()
`

/** (b): the same bytes by a bare loop. */
const LOOP = `
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
const [from, to] = process.argv.slice(2)
for (const e of readdirSync(from, { recursive: true, withFileTypes: true })) {
  if (!e.isFile() || e.name === '.underlid') continue
  const path = join(e.parentPath, e.name)
  const target = join(to, path.slice(from.length + 1))
  mkdirSync(dirname(target), { recursive: true })
  writeFileSync(target, readFileSync(path, 'utf8'))
}
`

async function measured(sites: number, folder: string): Promise<Readonly<Record<string, Taken>>> {
  const [fleet, out] = [join(folder, 'sites'), join(folder, 'dist')]
  makeFleet({ folder: fleet, sites })
  const own = (verb: string) => [COMMAND, verb, '--sites', fleet, '--out', out, '--on', ON, '--quiet']
  const check = await run(own('check'))
  const build = await run(own('build'))
  const [first = ''] = readdirSync(fleet).filter(name => name.startsWith('kestrel'))
  appendFileSync(join(fleet, first, 'site.md'), '\nThe gate of the depot is painted green.\n')
  const edit = await run(own('build'))
  const checkEdit = await run(own('check'))
  const again = await run(own('build'))
  const due = await run(own('due'))
  const script = (name: string, text: string) => {
    const path = join(PROJECT, 'node_modules/.cache', `${name}-${process.pid}.mjs`)
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, text)
    return path
  }
  const [a, b] = [script('bench-eleventy', ELEVENTY), script('bench-loop', LOOP)]
  const eleventy = await run(['--max-old-space-size=12000', a, out, join(folder, 'eleventy')])
  const written = pagesBelow(join(folder, 'eleventy')).length
  if (written !== pagesBelow(out).length) throw new Error(`Eleventy wrote ${written} files`)
  rmSync(join(folder, 'eleventy'), { recursive: true, force: true })
  const loop = await run([b, out, join(folder, 'loop')])
  for (const path of [a, b]) rmSync(path, { force: true })
  return { check, build, edit, again, 'check again': checkEdit, due, eleventy, loop }
}

function table(sites: number, taken: Readonly<Record<string, Taken>>): string {
  const { eleventy, loop, build } = taken
  const rows = Object.entries(taken).map(([name, { seconds, cpuSeconds, peakMb }]) =>
    [
      String(sites),
      name,
      seconds.toFixed(2),
      cpuSeconds.toFixed(2),
      peakMb.toFixed(0),
      (seconds / (eleventy?.seconds ?? NaN)).toFixed(2),
      (seconds / (loop?.seconds ?? NaN)).toFixed(2),
      (seconds / (build?.seconds ?? NaN)).toFixed(3)
    ].join(' | ')
  )
  return rows.map(row => `| ${row} |`).join('\n')
}

const sizes = process.argv.slice(2).map(Number)
const say = (text: string): void => void process.stdout.write(`${text}\n`)
say(`Node ${process.version}, ${execFileSync('nproc').toString().trim()} cores`)
say('| sites | what | s | processor s | peak MB | of (a) | of (b) | of a build |')
say('| --- | --- | --- | --- | --- | --- | --- | --- |')
const builds: { readonly sites: number; readonly cpuSeconds: number }[] = []
for (const sites of sizes.length > 0 ? sizes : [10, 100, 1000]) {
  const folder = mkdtempSync(join(process.env['UNDERLID_BENCH_FOLDER'] ?? tmpdir(), 'fleet-bench-'))
  try {
    const taken = await measured(sites, folder)
    say(table(sites, taken))
    builds.push({ sites, cpuSeconds: taken['build']?.cpuSeconds ?? NaN })
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
for (const [index, { sites, cpuSeconds }] of builds.entries()) {
  const before = builds[index - 1]
  if (!before) continue
  const exponent = Math.log(cpuSeconds / before.cpuSeconds) / Math.log(sites / before.sites)
  say(`A build grows with the ${exponent.toFixed(2)}th power of the sites from ${before.sites} to ${sites}.`)
}
