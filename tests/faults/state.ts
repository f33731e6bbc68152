import { createHash } from 'node:crypto'
import { existsSync, readFileSync, readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { assessFleet } from '../../src/build/assess.ts'
import { date } from '../../src/units/date.ts'

/** Path and hash of every file below a folder. */
export function hashesBelow(folder: string): Map<string, string> {
  const files = (readdirSync(folder, { recursive: true }) as string[]).filter(path =>
    statSync(join(folder, path)).isFile()
  )
  return new Map(
    files.sort().map(path => [
      path,
      createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex')
    ])
  )
}

export const treeHash = (folder: string): string =>
  createHash('sha256')
    .update(JSON.stringify([...hashesBelow(folder)]))
    .digest('hex')

/** What is wrong with an output folder: files that its own list names and that are not there, or that are empty. */
export function brokenOutput(folder: string): string[] {
  const marker = join(folder, '.underlid')
  if (!existsSync(marker)) return ['the output has no list of its files']
  const { files } = JSON.parse(readFileSync(marker, 'utf8')) as { files: string[] }
  return files.flatMap(path => {
    const place = join(folder, path)
    if (!existsSync(place)) return [`${path} is not there`]
    const bytes = readFileSync(place)
    if (path.endsWith('.html') && !bytes.includes('</html>')) return [`${path} is cut off`]
    // One that a site handed in is carried over as it is.
    if (path.startsWith('print/') && !bytes.subarray(-8).toString('latin1').includes('%%EOF'))
      return [`${path} is cut off`]
    return bytes.length === 0 ? [`${path} is empty`] : []
  })
}

/** What is wrong with a folder of sites after a kill: a file that cannot be understood any more. */
export function brokenSites(folder: string): string[] {
  const { sites, general } = assessFleet(folder, date('2026-05-01'))
  return [
    ...sites.filter(one => !one.site).map(one => `${one.id} cannot be read: ${one.findings[0]?.message ?? ''}`),
    ...general.map(one => one.message)
  ]
}

/** Names that only a run under way may have: halves of outputs and of site files. */
export function temporaries(folder: string): string[] {
  return (readdirSync(folder, { recursive: true }) as string[]).filter(path =>
    /(?:^|\/)(?:dist\.(?:next|old)-\d+$|\.[^/]+\.new-\d+$)/u.test(path)
  )
}

/** Ids of the browsers that were started with a temporary folder below `scratch`. */
export function browsersOf(scratch: string): number[] {
  return readdirSync('/proc')
    .filter(name => /^\d+$/u.test(name))
    .filter(name => {
      try {
        return readFileSync(`/proc/${name}/cmdline`, 'utf8').includes(scratch)
      } catch {
        return false
      }
    })
    .map(Number)
    .filter(pid => pid !== process.pid)
}
