import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Refusal } from '../base/refusal.ts'
import type { OutputFile } from './output-stage.ts'
import type { Shard } from './shard.ts'
import type { SiteDigest } from './site-digest.ts'
import type { FleetFrame } from './write-fleet.ts'

/** What a part of a build tells those who merge it. It holds private words: a part is not for hosting. */
export interface ShardFile {
  readonly shard: Shard
  readonly frame: FleetFrame
  readonly digests: readonly SiteDigest[]
}

export const SHARD_FILE = 'shard.json'

export function shardFile(content: ShardFile): OutputFile {
  return { path: SHARD_FILE, content: `${JSON.stringify(content)}\n` }
}

/** The parts of one build, in order. Refused where one is missing or twice, or where they are not of one build. */
export function readShards(folders: readonly string[]): { readonly folder: string; readonly part: ShardFile }[] {
  const read = folders.map(folder => ({ folder, part: readShard(folder) }))
  const parts = read.sort((a, b) => a.part.shard.index - b.part.shard.index)
  const [first] = parts
  if (!first) throw new Refusal('Name the folders of all parts.', 'underlid merge dist-1 dist-2 --out dist')
  const other = parts.find(one => sameBuild(one.part) !== sameBuild(first.part))
  if (other)
    throw new Refusal(
      `${first.folder} and ${other.folder} are not parts of one build: the day, the sites, the program or the number of parts differ.`,
      'Build all parts from the same files with the same --on and the same number of parts.'
    )
  const { of } = first.part.shard
  const there = parts.map(one => one.part.shard.index)
  const missing = Array.from({ length: of }, (_, n) => n + 1).filter(n => !there.includes(n))
  if (missing.length > 0)
    throw new Refusal(`Of ${of} parts, ${missing.join(', ')} ${missing.length === 1 ? 'is' : 'are'} missing.`)
  const twice = there.find((n, index) => there.indexOf(n) !== index)
  if (twice !== undefined) throw new Refusal(`Part ${twice} was named twice.`)
  return parts
}

function readShard(folder: string): ShardFile {
  try {
    return JSON.parse(readFileSync(join(folder, SHARD_FILE), 'utf8')) as ShardFile
  } catch {
    throw new Refusal(`${folder} is no part of a build.`, 'Make one: underlid build --shard 1/2 --out dist-1')
  }
}

const sameBuild = ({ shard, frame }: ShardFile): string => JSON.stringify([shard.of, frame])
