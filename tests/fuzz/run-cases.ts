import { chownSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
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
import { tryFolder } from './try-case.ts'

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
  readonly onFailure?: (failure: CaseReport) => void
  readonly onProgress?: (done: number) => void
}

export interface Case {
  readonly kind: string
  readonly seed: Seed
  readonly image: Image
  readonly on: IsoDate
}

const DAYS = ['2026-05-01', '2026-05-01', '2024-02-29', '2026-12-31', '2030-01-01', '1999-12-31'].map(date)

/** The case of a number: the same for the same seed on every machine, whatever ran before it. */
export function makeCase(seed: number, number: number, from: readonly Seed[], kinds: readonly string[] = KINDS): Case {
  const dice = diceOf(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number + 1, 0x85ebca6b))
  const start = weighted(from, dice)
  const kind = kinds[number % kinds.length] ?? 'letters'
  return { kind, seed: start, image: harmed(start, kind, dice), on: dice.pick(DAYS) }
}

function weighted(from: readonly Seed[], dice: Dice): Seed {
  let left = dice.share() * from.reduce((total, one) => total + one.weight, 0)
  const found = from.find(one => (left -= one.weight) < 0) ?? from[0]
  if (!found) throw new Error('No seeds.')
  return found
}

export async function runCases(wish: RunWish): Promise<RunReport> {
  const { cases, seed, from = 0, deepEvery = 25, onFailure, onProgress } = wish
  const work = mkdtempSync(join(tmpdir(), 'underlid-fuzz-'))
  const disks = new Map<string, DiskFolder>()
  const all = seeds().filter(one => !wish.seeds || wish.seeds.includes(one.name))
  const byKind: Record<string, number> = {}
  const outcomes: Record<string, number> = {}
  const failures: CaseReport[] = []
  let findings = 0
  let slowest = { seconds: 0, case: 0 }
  try {
    for (let number = from; number < from + cases; number += 1) {
      const { kind, seed: start, image, on } = makeCase(seed, number, all, wish.kinds)
      const disk = disks.get(start.name) ?? new DiskFolder(join(work, start.name))
      disks.set(start.name, disk)
      disk.become(image)
      const before = pathsBelow(disk.folder)
      const locked = [...image.values()].some(one => one.kind === 'locked')
      const tried = await (locked ? asNobody : asWeAre)(work, () =>
        tryFolder(disk.folder, on, number % deepEvery === 0)
      )
      const wrong = tried.wrong.filter(one => !isEcho(one, image))
      if (pathsBelow(disk.folder).join('\n') !== before.join('\n')) wrong.push('wrote into the folder of sites')
      byKind[kind] = (byKind[kind] ?? 0) + 1
      outcomes[tried.outcome] = (outcomes[tried.outcome] ?? 0) + 1
      findings += tried.findings
      if (tried.seconds > slowest.seconds) slowest = { seconds: tried.seconds, case: number }
      if (wrong.length > 0) {
        const failure = { number, kind, seed: start.name, wrong }
        failures.push(failure)
        onFailure?.(failure)
      }
      if (number % 1000 === 999) onProgress?.(number + 1 - from)
    }
  } finally {
    rmSync(work, { recursive: true, force: true })
  }
  return { cases, byKind, outcomes, findings, slowest, failures }
}

/** A word that the case itself wrote into a file is rightly said back. */
function isEcho(wrong: string, image: Image): boolean {
  const word = /: says ".*(NaN|undefined|\[object)/su.exec(wrong)?.[1]
  return word !== undefined && [...image.values()].some(one => 'bytes' in one && one.bytes.includes(word))
}

/** Writes the folder of one case to look at it. */
export function keepCase(seed: number, number: number, folder: string, kinds?: readonly string[]): Case {
  const made = makeCase(seed, number, seeds(), kinds)
  if (existsSync(folder)) rmSync(folder, { recursive: true })
  mkdirSync(folder, { recursive: true })
  new DiskFolder(folder).become(made.image)
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
