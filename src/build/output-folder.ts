import { existsSync, readdirSync, realpathSync, renameSync, rmSync, statSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import { Refusal } from '../base/refusal.ts'
import { MARKER } from './output-marker.ts'

/**
 * The folder as it is on disk: absolute, links followed. Refused where it holds what is not ours, so that `--out` never replaces
 * somebody's files.
 */
export function ownedFolder(out: string): string {
  const folder = existsSync(out) ? realpathSync(out) : resolve(out)
  recoverOutput(folder)
  if (!existsSync(folder)) return folder
  if (!statSync(folder).isDirectory()) throw new Refusal(`${out} is a file. Name a folder with --out.`)
  const held = readdirSync(folder)
  if (held.length === 0 || held.includes(MARKER)) return folder
  const some = held.sort().slice(0, 3).join(', ')
  throw new Refusal(
    `${out} holds files that Underlid did not make (${some}${held.length > 3 ? ', …' : ''}), so nothing was written.`,
    'Name another folder with --out, or empty this one.'
  )
}

/** Where the new output is put together, and where the old one waits while the new one takes its place. */
export const nextFolder = (folder: string, pid = process.pid): string => `${folder}.next-${pid}`
export const oldFolder = (folder: string, pid = process.pid): string => `${folder}.old-${pid}`

/**
 * Puts right what a killed run left. Between moving the old output aside and moving the new one in, neither stands in its place: a
 * new one that was whole is moved in, else the old one goes back. What else was left is removed.
 */
export function recoverOutput(folder: string): void {
  const left = leftovers(folder)
  const running = left.find(({ pid }) => pid !== process.pid && isRunning(pid))
  if (running)
    throw new Refusal(
      `Another run (process ${running.pid}) is writing ${folder}.`,
      `Wait until it has ended. If none is running, remove ${running.path}.`
    )
  if (!existsSync(folder)) {
    const whole = left.find(({ path, kind }) => kind === 'next' && existsSync(join(path, MARKER)))
    const last = whole ?? left.find(({ kind }) => kind === 'old')
    if (last) renameSync(last.path, folder)
  }
  for (const { path } of leftovers(folder)) rmSync(path, { recursive: true, force: true })
}

interface Leftover {
  readonly path: string
  readonly kind: 'next' | 'old'
  readonly pid: number
}

function leftovers(folder: string): Leftover[] {
  const [parent, name] = [dirname(folder), basename(folder)]
  if (!existsSync(parent)) return []
  return readdirSync(parent).flatMap(entry => {
    const match = entry.startsWith(`${name}.`) ? /^(next|old)-(\d+)$/u.exec(entry.slice(name.length + 1)) : null
    return match ? [{ path: join(parent, entry), kind: match[1] as 'next' | 'old', pid: Number(match[2]) }] : []
  })
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}
