import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { PROJECT } from '../../setup/browser.mjs'
import { filesBelow } from './output-files.ts'

/** What shapes the outputs beside the sites: the program, its templates, the versions of what it rests on. */
const PARTS = ['src', 'templates']

/**
 * One text that is another as soon as a byte of the program or of its templates is, so that nothing made by another program or template is
 * taken for current.
 */
export function toolMark(project = PROJECT): string {
  const hash = createHash('sha256').update(process.version)
  hash.update(readFileSync(join(project, 'package.json')))
  for (const part of PARTS)
    for (const path of filesBelow(join(project, part)).sort()) {
      hash.update(`\0${part}/${path}\0`)
      hash.update(readFileSync(join(project, part, path)))
    }
  return hash.digest('hex')
}
