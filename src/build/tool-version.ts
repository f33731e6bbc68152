import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { PROJECT } from '../../setup/browser.mjs'

let version: string | undefined

/** Version of this program, as its package states it. */
export function toolVersion(): string {
  version ??= (JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8')) as { version: string }).version
  return version
}
