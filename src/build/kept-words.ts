import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { PrivateWordOf } from './privacy-gate.ts'

/** The private words that every public file of the last output was looked through for, as one text each; empty where that is not known. */
export function readWordsLookedFor(cache: string, mark: string): ReadonlySet<string> {
  try {
    const kept = JSON.parse(readFileSync(join(cache, FILE), 'utf8')) as { mark: string; words: string[] }
    return new Set(kept.mark === mark ? kept.words : [])
  } catch {
    return new Set()
  }
}

/** Kept beside the digests, which hold the same words: never below the folder that is hosted. */
export function writeWordsLookedFor(cache: string, mark: string, words: readonly PrivateWordOf[]): void {
  const path = join(cache, FILE)
  try {
    mkdirSync(cache, { recursive: true })
    writeFileSync(`${path}.new`, JSON.stringify({ mark, words: [...new Set(words.map(one => one.text))] }))
    renameSync(`${path}.new`, path)
  } catch {
    rmSync(path, { force: true })
  }
}

const FILE = '_words.json'
