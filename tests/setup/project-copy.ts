import { cpSync, mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { createHash } from 'node:crypto'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const PROJECT = fileURLToPath(new URL('../../', import.meta.url))

/** A project that holds only the setup, packages that count as installed, and whatever files are given. */
export function projectCopy(files: Readonly<Record<string, string>> = {}): string {
  const copy = mkdtempSync(join(tmpdir(), 'underlid-copy-'))
  const isOurs = (path: string): boolean => !path.includes(join('setup', 'browser', 'node_modules'))
  cpSync(join(PROJECT, 'setup'), join(copy, 'setup'), { recursive: true, filter: isOurs })
  const lock = '{ "packages": {} }'
  const stamp = createHash('sha256').update(lock).digest('hex')
  const whole = {
    'package.json': '{ "type": "module" }',
    'package-lock.json': lock,
    'node_modules/.underlid-lock': stamp,
    ...files
  }
  for (const [path, text] of Object.entries(whole)) {
    mkdirSync(dirname(join(copy, path)), { recursive: true })
    writeFileSync(join(copy, path), text)
  }
  return copy
}
