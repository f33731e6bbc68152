import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { Refusal } from '../base/refusal.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { RegisteredTag } from '../model/fleet.ts'
import { renderPages } from '../render/eleventy.ts'
import { publicScripts } from '../render/page-script.ts'
import type { IsoDate } from '../units/date.ts'
import { EN_US } from '../words/words.ts'
import { dataOutputs } from './data-outputs.ts'
import { planFleetPages } from './fleet-pages.ts'
import { filesBelow } from './output-files.ts'
import type { OutputFile, Stage } from './output-stage.ts'
import type { PrintWish } from './print-wish.ts'
import type { Leak, PrivateWordOf } from './privacy-gate.ts'
import type { SiteDigest } from './site-digest.ts'
import { toolVersion } from './tool-version.ts'
import { FILES_A_TASK, tasksOf } from './work-order.ts'
import { workThrough } from './work-pool.ts'

/** What holds for a whole fleet, whichever of its sites are made. */
export interface FleetFrame {
  /** Folder of the sites, as messages print it. */
  readonly folder: string
  readonly on: IsoDate
  readonly mark: string
  readonly publicAddress: string
  /** Time on sites that a week holds, as the company file has it. */
  readonly weekS?: number
  /** Every site there is, in order. */
  readonly ids: readonly string[]
  readonly register: readonly RegisteredTag[]
  /** Findings of no site. */
  readonly general: readonly Finding[]
}

export interface FleetWriting {
  readonly frame: FleetFrame
  readonly digests: readonly SiteDigest[]
  readonly asked: ReadonlySet<string>
  /** Prints that are made this time; those of others are carried over. */
  readonly print?: PrintWish
  /** Public files that stand as they were looked through, and the words they were looked through for. */
  readonly known: ReadonlySet<string>
  readonly lookedFor: ReadonlySet<string>
}

/** Everything of a build that no single site owns, and the look through what is public. Gives the private words that were looked for. */
export async function writeFleet(stage: Stage, writing: FleetWriting): Promise<readonly PrivateWordOf[]> {
  const { frame, digests, asked, known, lookedFor } = writing
  const work = { ...frame, digests, asked, words: EN_US, version: toolVersion() }
  const planned = planFleetPages(work)
  const pages = await renderPages([...planned.pages, ...planned.fallbacks], { stamp: frame.mark })
  const fallbacks = new Set(planned.fallbacks.map(one => one.path))
  for (const { path, html } of pages) if (!fallbacks.has(path)) stage.write({ path, content: html })
  for (const file of publicScripts()) stage.write(file)
  stage.write(searchIndex(digests))
  for (const file of dataOutputs(work, frame.publicAddress)) stage.write(file)
  stage.keep(keptPatterns(writing))
  for (const { path, html } of pages)
    if (fallbacks.has(path) && !existsSync(join(stage.folder, path))) stage.write({ path, content: html })
  const words = digests.flatMap(privateWordsOf)
  await refuseLeaks(stage.folder, words, known, lookedFor)
  return words
}

/** As a script, since a page opened from a folder may load no other kind of file. */
function searchIndex(digests: readonly SiteDigest[]): OutputFile {
  const words = Object.fromEntries(digests.flatMap(({ id, built }) => (built ? [[id, built.summary.search]] : [])))
  return { path: 'office/search.js', content: `underlidSearch=${JSON.stringify(words)}\n` }
}

function privateWordsOf({ id, built }: SiteDigest): PrivateWordOf[] {
  return (built?.privateWords ?? []).map(word => ({ site: id, ...word }))
}

const PRINTS = ['binder', 'labels', 'charts', 'restricted'] as const

/**
 * Last good outputs of sites that were left out, and of those not asked for. Prints of sites that were only built stay too: the
 * foot of each page says of which day they are.
 */
export function keptPatterns({
  frame: { ids, register },
  digests,
  asked,
  print
}: Pick<FleetWriting, 'frame' | 'digests' | 'asked' | 'print'>): string[] {
  const built = new Set(digests.filter(one => one.built && asked.has(one.id)).map(one => one.id))
  const carried = new Set(ids.filter(id => !built.has(id)))
  return [
    ...[...carried].flatMap(id => [`office/${id}/*`, ...PRINTS.map(name => `print/${id}-${name}.pdf`)]),
    ...register.filter(entry => carried.has(entry.site)).map(entry => `public/B/${entry.tag}/*`),
    ...ids.flatMap(id => [
      ...(print?.binders ? [] : [`print/${id}-binder.pdf`]),
      ...(print?.labels ? [] : [`print/${id}-labels.pdf`]),
      ...(print?.charts ? [] : [`print/${id}-charts.pdf`])
    ])
  ]
}

/** Files that stand as they were looked through are looked through for new words only. */
async function refuseLeaks(
  folder: string,
  words: readonly PrivateWordOf[],
  known: ReadonlySet<string>,
  before: ReadonlySet<string>
): Promise<void> {
  const paths = filesBelow(join(folder, 'public')).map(path => `public/${path}`)
  const come = words.filter(one => !before.has(one.text))
  const leaks = [
    ...(await leaksIn(
      folder,
      paths.filter(path => !known.has(path)),
      words
    )),
    ...(await leaksIn(
      folder,
      paths.filter(path => known.has(path)),
      come
    ))
  ]
  if (leaks.length === 0) return
  throw new Refusal(
    'Nothing was written: a private word would stand on a page that anybody can open.',
    ...leaks.slice(0, 8).map(one => `  ${one.path} holds the private "${one.label}" of ${one.site}.`),
    'Run "underlid check": privacy/private-word-public names the line to change.'
  )
}

async function leaksIn(folder: string, paths: readonly string[], words: readonly PrivateWordOf[]): Promise<Leak[]> {
  if (words.length === 0 || paths.length === 0) return []
  const leaks: Leak[] = []
  const tasks = tasksOf(paths, FILES_A_TASK).map(look => ({ look }))
  await workThrough({ folders: { last: '', next: folder }, words }, tasks, answer =>
    leaks.push(...(answer.leaks ?? []))
  )
  return leaks.sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0))
}
