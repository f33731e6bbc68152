import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Finding } from '../diagnostics/finding.ts'
import { sortFindings } from '../diagnostics/finding.ts'
import { Refusal } from '../base/refusal.ts'
import { readMarker } from './output-marker.ts'
import { withStage } from './output-stage.ts'
import type { OutputReport } from './output-stage.ts'
import { refuseForgottenTags } from './refuse-lost-register.ts'
import { SHARD_FILE, readShards } from './shard-file.ts'
import { writeFleet } from './write-fleet.ts'

export interface MergeResult {
  readonly parts: number
  readonly sites: number
  readonly leftOut: readonly string[]
  readonly findings: readonly Finding[]
  readonly report: OutputReport
}

/**
 * Puts the parts of a build together: their files as they are, and the pages and data of the whole fleet made from what each part tells of its
 * sites. The bytes are those of one build of the whole.
 */
export async function mergeShards(folders: readonly string[], out: string): Promise<MergeResult> {
  const parts = readShards(folders)
  const [frame] = parts.map(one => one.part.frame)
  if (!frame) throw new Refusal('There is nothing to merge.')
  const digests = parts.flatMap(one => one.part.digests)
  const asked = new Set(digests.map(one => one.id))
  if (frame.register.length === 0)
    refuseForgottenTags(out, new Set(digests.flatMap(one => one.built?.tags ?? [])), frame.folder)
  const { report } = await withStage(out, async stage => {
    for (const { folder } of parts) {
      const marker = readMarker(folder)
      if (!marker) throw new Refusal(`${folder} was not made by Underlid.`)
      for (const path of marker.files.filter(one => one !== SHARD_FILE))
        stage.write({ path, content: readFileSync(join(folder, path)) })
      for (const [pdf, record] of Object.entries(marker.prints)) stage.recordPrint(pdf, record)
    }
    await writeFleet(stage, { frame, digests, asked, known: new Set(), lookedFor: new Set() })
  })
  return {
    parts: parts.length,
    sites: digests.filter(one => one.built).length,
    leftOut: digests.filter(one => !one.built).map(one => one.id),
    findings: sortFindings([...frame.general, ...digests.flatMap(one => one.findings)]),
    report
  }
}
