import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { Command, CommanderError } from 'commander'
import { Refusal } from '../../src/base/refusal.ts'
import { allFindings, assessFleet } from '../../src/build/assess.ts'
import { addImport } from '../../src/cli/verbs/import.ts'
import { addRecord } from '../../src/cli/verbs/record.ts'
import { harmless } from '../../src/report/harmless.ts'
import { date } from '../../src/units/date.ts'
import type { Dice } from './dice.ts'
import { treeHash } from '../faults/state.ts'
import type { Input } from './inputs.ts'
import { MOST_SECONDS, commanding } from './try-case.ts'
import type { Tried } from './try-case.ts'

const SITE = 'kestrel-cross'
const ON = '2026-05-04'

/** How a verb takes such a file; `sites` is the folder of the sites. */
export function callOf(kind: string, file: string, sites: string, dice: Dice): string[] {
  const common = ['--sites', sites, '--on', ON, ...(dice.chance(0.2) ? ['--format', 'json'] : [])]
  if (kind === 'slips') return ['record', SITE, '--slip', file, ...common, ...(dice.chance(0.7) ? ['--dry-run'] : [])]
  return ['import', file, '--site', SITE, ...common, ...(dice.chance(0.3) ? ['--write'] : [])]
}

export interface Said {
  readonly code: number
  readonly text: string
  /** Where a fault of ours was thrown. */
  readonly threw?: string
}

/** Hands the file to the verb in this process, and judges what it says and does. `work` holds `sites/`, whose files may change. */
export async function tryVerb(input: Input, work: string, args: readonly string[]): Promise<Tried> {
  const sites = join(work, 'sites')
  writeFileSync(join(work, input.name), input.bytes)
  const before = treeHash(sites)
  const began = process.cpuUsage()
  const said = await inProcess(args)
  const { user, system } = process.cpuUsage(began)
  const seconds = (user + system) / 1e6
  const changed = treeHash(sites) !== before
  const wrong = [
    ...wrongSaid(said, input.name),
    ...(seconds > MOST_SECONDS ? [`took ${seconds.toFixed(1)} s`] : []),
    ...(changed && said.code !== 0 ? ['refused, and the sites changed'] : []),
    ...(changed && (args.includes('--dry-run') || (args[0] === 'import' && !args.includes('--write')))
      ? ['only to be shown, and the sites changed']
      : []),
    ...(changed ? brokenBy(sites) : [])
  ]
  return { wrong, seconds, outcome: said.code === 0 ? 'read' : 'refused', findings: 0 }
}

/** What is wrong with the answer of a verb to a file of that name. */
export function wrongSaid({ code, text, threw }: Said, name: string): string[] {
  const lines = text.trimEnd().split('\n')
  const isJson = text.startsWith('{')
  const named = isJson || lines.some(line => line.includes(`${name}:`)) || lines.length <= 40
  return [
    ...(threw === undefined ? [] : [`threw ${threw}`]),
    ...(code === 0 || code === 2 ? [] : [`ended with ${code}: ${text.slice(0, 300)}`]),
    ...(/^\s+at .+:\d+:\d+\)?$/mu.test(text) ? ['shows a trace'] : []),
    ...commanding(text).map(sign => `commands a terminal with ${sign}`),
    ...(text.trim() === '' ? ['says nothing'] : []),
    ...(code === 2 && !named ? [`names no place: ${text.slice(0, 300)}`] : []),
    ...(/\[object|\bundefined\b/u.test(text) && !/"[^"\n]*(?:\[object|undefined)/u.test(text)
      ? [`says what means nothing: ${/.*(?:\[object|\bundefined\b).*/u.exec(text)?.[0].slice(0, 200)}`]
      : [])
  ]
}

/** What was written has to be read again. */
function brokenBy(sites: string): string[] {
  const assessment = assessFleet(sites, date(ON))
  if (assessment.sites.every(one => one.site)) return []
  return [`wrote what cannot be read: ${allFindings(assessment)[0]?.message ?? ''}`]
}

/** The verb without a process of its own. */
export async function inProcess(args: readonly string[]): Promise<Said> {
  const program = new Command('underlid')
  addRecord(program)
  addImport(program)
  for (const one of [program, ...program.commands]) one.exitOverride().configureOutput({ outputError: () => undefined })
  const held = [process.stdout.write, process.stderr.write, process.exitCode] as const
  let text = ''
  process.stdout.write = process.stderr.write = ((chunk: unknown) => ((text += String(chunk)), true)) as never
  process.exitCode = undefined
  try {
    await program.parseAsync([...args], { from: 'user' })
    return { code: Number(process.exitCode ?? 0), text }
  } catch (error) {
    if (error instanceof Refusal) return { code: 2, text: text + harmless(error.lines.join('\n')) }
    if (error instanceof CommanderError) return { code: 2, text: text + error.message }
    return { code: 3, text, threw: (error as Error).stack ?? String(error) }
  } finally {
    ;[process.stdout.write, process.stderr.write] = [held[0], held[1]]
    process.exitCode = held[2]
  }
}
