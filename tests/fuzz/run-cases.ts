import { chownSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { date } from '../../src/units/date.ts'
import type { IsoDate } from '../../src/units/date.ts'
import { diceOf } from './dice.ts'
import type { Dice } from './dice.ts'
import { DiskFolder, pathsBelow } from './folder.ts'
import type { Image } from './folder.ts'
import { KINDS, harmed } from './mutations.ts'
import { seeds } from './seeds.ts'
import type { Seed } from './seeds.ts'
import { INPUTS, INPUT_KINDS } from './inputs.ts'
import type { Input } from './inputs.ts'
import { tryFolder } from './try-case.ts'
import type { Tried } from './try-case.ts'
import { tryCommand } from './try-command.ts'
import { callOf, tryVerb } from './try-verb.ts'

export interface CaseReport {
  readonly number: number
  readonly kind: string
  readonly seed: string
  readonly wrong: readonly string[]
}

export interface RunReport {
  readonly cases: number
  readonly byKind: Readonly<Record<string, number>>
  readonly outcomes: Readonly<Record<string, number>>
  readonly findings: number
  /** Exit codes of the command itself, by verb. */
  readonly commands: Readonly<Record<string, number>>
  readonly slowest: { readonly seconds: number; readonly case: number }
  readonly failures: readonly CaseReport[]
}

export interface RunWish {
  readonly from?: number
  readonly cases: number
  readonly seed: number
  /** Only these kinds of harm. */
  readonly kinds?: readonly string[]
  /** Only seeds of this name. */
  readonly seeds?: readonly string[]
  /** Every so many cases the pages are planned as well. */
  readonly deepEvery?: number
  /** Every so many cases the command itself is run as well, in a process of its own; every fifth of those builds. */
  readonly commandEvery?: number
  /** Numbers that are passed over. */
  readonly without?: ReadonlySet<number>
  /** Told before each case. */
  readonly onCase?: (number: number) => void
  readonly onFailure?: (failure: CaseReport) => void
  /** Every thousand cases: how many, and what came of them so far. */
  readonly onProgress?: (done: number, report: RunReport) => void
}

export interface Case {
  readonly kind: string
  readonly seed: Seed
  readonly image: Image
  readonly on: IsoDate
  /** A file that is handed to a verb, with the throw that says how; the folder is then as it should be. */
  readonly input?: Input
  readonly call?: (file: string, sites: string) => string[]
}

/** Kinds of harm to a folder, and kinds of files that are handed in. */
export const ALL_KINDS: readonly string[] = [...KINDS, ...INPUT_KINDS]
const INPUT_SITE = 'kestrel-cross'

const DAYS = ['2026-05-01', '2026-05-01', '2024-02-29', '2026-12-31', '2030-01-01', '1999-12-31'].map(date)

/** The case of a number: the same for the same seed on every machine, whatever ran before it. */
export function makeCase(
  seed: number,
  number: number,
  from: readonly Seed[],
  kinds: readonly string[] = ALL_KINDS
): Case {
  const dice = diceOf(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b))
  const kind = kinds[number % kinds.length] ?? 'letters'
  const makeInput = INPUTS[kind]
  if (makeInput) return inputCase(kind, makeInput, dice)
  const start = weighted(from, dice)
  return { kind, seed: start, image: harmed(start, kind, dice), on: dice.pick(DAYS) }
}

/** Whatever seeds are asked for: such a file needs the site that it speaks of. */
function inputCase(kind: string, makeInput: (dice: Dice) => Input, dice: Dice): Case {
  known ??= seeds().find(one => one.name === INPUT_SITE)
  if (!known) throw new Error(`No seed ${INPUT_SITE}.`)
  const input = makeInput(dice)
  const throws = dice.below(2 ** 31)
  const call = (file: string, sites: string): string[] => callOf(kind, file, sites, diceOf(throws))
  return { kind, seed: known, image: known.image, on: date('2026-05-04'), input, call }
}

let known: Seed | undefined

function weighted(from: readonly Seed[], dice: Dice): Seed {
  let left = dice.share() * from.reduce((total, one) => total + one.weight, 0)
  const found = from.find(one => (left -= one.weight) < 0) ?? from[0]
  if (!found) throw new Error('No seeds.')
  return found
}

export async function runCases(wish: RunWish): Promise<RunReport> {
  const { cases, seed, from = 0, deepEvery = 25, commandEvery, without, onCase, onFailure, onProgress } = wish
  const work = mkdtempSync(join(tmpdir(), 'underlid-fuzz-'))
  const disks = new Map<string, DiskFolder>()
  const all = seeds().filter(one => !wish.seeds || wish.seeds.includes(one.name))
  const byKind: Record<string, number> = {}
  const outcomes: Record<string, number> = {}
  const commands: Record<string, number> = {}
  const failures: CaseReport[] = []
  let findings = 0
  let slowest = { seconds: 0, case: 0 }
  let tries = 0
  const report = (): RunReport => ({ cases: tries, byKind, outcomes, findings, commands, slowest, failures })
  try {
    for (let number = from; number < from + cases; number += 1) {
      if (without?.has(number)) continue
      onCase?.(number)
      const made = makeCase(seed, number, all, wish.kinds)
      const { kind, seed: start, image } = made
      const command = commandEvery !== undefined && number % commandEvery === commandEvery - 1
      const builds = command && number % (5 * commandEvery) === 5 * commandEvery - 1
      const deep = number % deepEvery === 0
      const tried = made.input
        ? await tryInput(work, made, command)
        : await tryImage(work, disks, made, { deep, command, builds })
      const wrong = tried.wrong.filter(one => !isEcho(one, image))
      for (const said of tried.commands) commands[said] = (commands[said] ?? 0) + 1
      tries += 1
      byKind[kind] = (byKind[kind] ?? 0) + 1
      outcomes[tried.outcome] = (outcomes[tried.outcome] ?? 0) + 1
      findings += tried.findings
      if (tried.seconds > slowest.seconds) slowest = { seconds: tried.seconds, case: number }
      if (wrong.length > 0) {
        const failure = { number, kind, seed: start.name, wrong }
        failures.push(failure)
        onFailure?.(failure)
      }
      if (number % 1000 === 999) onProgress?.(number + 1 - from, report())
    }
  } finally {
    rmSync(work, { recursive: true, force: true })
  }
  return report()
}

interface TriedToo extends Tried {
  /** "check 1": what the command itself ended with. */
  readonly commands: readonly string[]
}

interface HowFar {
  readonly deep: boolean
  readonly command: boolean
  readonly builds: boolean
}

async function tryImage(
  work: string,
  disks: Map<string, DiskFolder>,
  { seed, image, on }: Case,
  { deep, command, builds }: HowFar
): Promise<TriedToo> {
  const disk = disks.get(seed.name) ?? new DiskFolder(join(work, seed.name))
  disks.set(seed.name, disk)
  disk.become(image)
  const before = pathsBelow(disk.folder)
  const locked = [...image.values()].some(one => one.kind === 'locked')
  const tried = await (locked ? asNobody : asWeAre)(work, () => tryFolder(disk.folder, on, deep))
  const calls = command && !locked ? ['check', ...(builds ? ['build'] : [])] : []
  const place = join(work, 'command')
  if (calls.length > 0) mkdirSync(place, { recursive: true })
  const said = calls.map(verb => ({ verb, ...tryCommand([verb, '--sites', disk.folder, '--on', on], place) }))
  if (builds) rmSync(place, { recursive: true, force: true })
  const wrote = pathsBelow(disk.folder).join('\n') !== before.join('\n')
  return {
    ...tried,
    wrong: [...tried.wrong, ...said.flatMap(one => one.wrong), ...(wrote ? ['wrote into the folder of sites'] : [])],
    commands: said.map(one => `${one.verb} ${one.code}`)
  }
}

async function tryInput(work: string, { image, input, call }: Case, command: boolean): Promise<TriedToo> {
  if (!input || !call) throw new Error('No file to hand in.')
  const place = join(work, 'verbs')
  const args = call(join(place, input.name), join(place, 'sites'))
  const writes = !args.includes('--dry-run') && (args[0] !== 'import' || args.includes('--write'))
  if (!existsSync(join(place, 'sites'))) new DiskFolder(join(place, 'sites')).become(image)
  const tried = await tryVerb(input, place, args)
  if (writes) rmSync(place, { recursive: true, force: true })
  if (!command || writes) return { ...tried, commands: [] }
  const said = tryCommand(args, place)
  return { ...tried, wrong: [...tried.wrong, ...said.wrong], commands: [`${args[0]} ${said.code}`] }
}

/** A word that the case itself wrote into a file is rightly said back. */
function isEcho(wrong: string, image: Image): boolean {
  const word = /: says ".*(NaN|undefined|\[object|[+-]\d{6}-\d{2}-\d{2})/su.exec(wrong)?.[1]
  return word !== undefined && [...image.values()].some(one => 'bytes' in one && one.bytes.includes(word))
}

/** Writes the folder of one case to look at it. */
export function keepCase(seed: number, number: number, folder: string, kinds?: readonly string[]): Case {
  const made = makeCase(seed, number, seeds(), kinds)
  if (existsSync(folder)) rmSync(folder, { recursive: true })
  mkdirSync(folder, { recursive: true })
  new DiskFolder(made.input ? join(folder, 'sites') : folder).become(made.image)
  if (made.input) writeFileSync(join(folder, made.input.name), made.input.bytes)
  return made
}

async function asWeAre<T>(_folder: string, work: () => Promise<T>): Promise<T> {
  return work()
}

const NOBODY = 65_534

/** The machine's administrator may read everything; so that a locked file is locked, such cases run as nobody. */
async function asNobody<T>(folder: string, work: () => Promise<T>): Promise<T> {
  if (process.getuid?.() !== 0) return work()
  chownSync(folder, NOBODY, NOBODY)
  process.seteuid?.(NOBODY)
  try {
    return await work()
  } finally {
    process.seteuid?.(0)
  }
}
