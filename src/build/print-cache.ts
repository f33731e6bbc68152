import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { browserMark } from '../render/browser.ts'
import type { PrintRecord } from './output-marker.ts'
import { toolVersion } from './tool-version.ts'
import type { Stage } from './output-stage.ts'
import type { DocumentToPrint } from './print-documents.ts'

/** All that shapes a print but the files it shows: the document's own bytes, what it is printed as, this program, the browser. */
export function printKey(stage: Stage, document: DocumentToPrint, base: string): string {
  const html = readFileSync(join(stage.folder, document.html))
  const { paper, on, title } = document
  return hash(JSON.stringify([hash(html), paper, on, title ?? '', base, toolVersion(), browserMark() ?? '']))
}

/** Hashes of what a document showed, as it stands in the new output. */
export function hashesOf(stage: Stage, paths: readonly string[]): Record<string, string> {
  return Object.fromEntries(paths.map(path => [path, hashOfFile(join(stage.folder, path)) ?? 'not there']))
}

/** Carries the last print over where the same document would come out; false where it has to be printed. */
export function reuse(stage: Stage, pdf: string, key: string): boolean {
  const record = stage.last.prints[pdf]
  if (!record || record.key !== key) return false
  if (hashOfFile(stage.lastPath(pdf)) !== record.pdf) return false
  const now = hashesOf(stage, Object.keys(record.uses))
  if (Object.entries(record.uses).some(([path, was]) => now[path] !== was)) return false
  return stage.carry(pdf)
}

export function printRecord(stage: Stage, key: string, bytes: Uint8Array, used: readonly string[]): PrintRecord {
  return { key, uses: hashesOf(stage, used), pdf: hash(bytes) }
}

function hashOfFile(path: string): string | undefined {
  try {
    return hash(readFileSync(path))
  } catch {
    return undefined
  }
}

function hash(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex')
}
