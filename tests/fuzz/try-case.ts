import { Refusal } from '../../src/base/refusal.ts'
import { allFindings, assessFleet } from '../../src/build/assess.ts'
import type { Assessment } from '../../src/build/assess.ts'
import { readAttachments } from '../../src/build/attachments.ts'
import { dataOutputs } from '../../src/build/data-outputs.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { planFleetPages } from '../../src/build/fleet-pages.ts'
import { digestOf } from '../../src/build/site-digest.ts'
import { planSitePages } from '../../src/build/site-pages.ts'
import { publicAddressOf } from '../../src/build/public-address.ts'
import { CHECKS } from '../../src/checks/list.ts'
import type { Finding, Place } from '../../src/diagnostics/finding.ts'
import { findingsJson } from '../../src/report/json.ts'
import { harmless } from '../../src/report/harmless.ts'
import { PLAIN } from '../../src/report/paint.ts'
import { findingsSarif } from '../../src/report/sarif.ts'
import { findingsLines, findingsText, sitesTable } from '../../src/report/text.ts'
import type { IsoDate } from '../../src/units/date.ts'
import { EN_US } from '../../src/words/words.ts'

/** More than a site may take, in seconds of the processor: the wall clock would judge the neighbors too. */
export const MOST_SECONDS = 2

export interface Tried {
  /** What must not be, in words; nothing where all is well. */
  readonly wrong: readonly string[]
  readonly seconds: number
  /** How it came out: the site was read, told of, or the whole folder refused. */
  readonly outcome: 'read' | 'told' | 'refused'
  readonly findings: number
}

/** Reads, checks and words a folder of sites as `check` does; with `deep`, plans every page and every data file as `build` does. */
export async function tryFolder(folder: string, on: IsoDate, deep: boolean): Promise<Tried> {
  const began = process.cpuUsage()
  const wrong: string[] = []
  let outcome: Tried['outcome'] = 'refused'
  let findings: Finding[] = []
  try {
    const assessment = assessFleet(folder, on)
    findings = allFindings(assessment)
    outcome = assessment.sites.some(one => one.site) ? 'read' : 'told'
    wrong.push(...badFindings(findings, folder), ...badWords(assessment, findings))
    const { user, system } = process.cpuUsage(began)
    if ((user + system) / 1e6 > MOST_SECONDS * Math.max(1, assessment.sites.length))
      wrong.push(`took ${((user + system) / 1e6).toFixed(1)} s to check`)
    if (deep && outcome === 'read') await planAll(assessment)
  } catch (error) {
    if (!(error instanceof Refusal)) wrong.push(`threw ${(error as Error).stack ?? String(error)}`)
    else if (error.lines.some(hasTrace)) wrong.push(`refused with a trace: ${error.message}`)
  }
  const { user, system } = process.cpuUsage(began)
  const seconds = (user + system) / 1e6
  if (seconds > MOST_SECONDS * 2) wrong.push(`took ${seconds.toFixed(1)} s to plan`)
  return { wrong, seconds, outcome, findings: findings.length }
}

async function planAll(assessment: Assessment): Promise<void> {
  const address = publicAddressOf(assessment)
  const contexts = await Promise.all(
    assessment.sites.flatMap(one =>
      contextOf(one, address).map(async context => ({
        ...context,
        attachments: await readAttachments(context.site, one.sources)
      }))
    )
  )
  const asked = new Set(contexts.map(one => one.site.id))
  const digests = assessment.sites.map(({ id, findings }) => {
    const context = contexts.find(one => one.site.id === id)
    return digestOf(id, findings, context, context ? planSitePages(context, assessment.fleet).tags : [])
  })
  const { on, general, fleet, sources } = assessment
  const common = { folder: sources.folder, on, register: fleet.register, general, digests, asked }
  const work = { ...common, words: EN_US, version: '0' }
  planFleetPages(work)
  dataOutputs(work, address)
}

/** A day that no person wrote: a program adds the sign and the two figures. */
const OF_AGES = /(?<!["\w])[+-]\d{6}-\d{2}-\d{2}/u

function badFindings(findings: readonly Finding[], folder: string): string[] {
  return findings.flatMap(finding => {
    const { code, place, related, message, why, fix } = finding
    const words = [message, why, fix]
    return [
      ...[place, ...related.map(one => one.place)].flatMap(one => badPlace(code, one, folder)),
      ...words.filter(one => one.trim() === '').map(() => `${code}: a sentence is empty`),
      ...words
        .filter(
          one =>
            /\bundefined\b|\[object|(?<![\w"'])NaN(?![\w"'])/u.test(one) && !/["'`“][^"]*(?:undefined|NaN)/u.test(one)
        )
        .concat(words.filter(one => OF_AGES.test(one)))
        .map(one => `${code}: says "${one.slice(0, 200)}"`)
    ]
  })
}

function badPlace(code: string, { file, line, column, length, text }: Place, folder: string): string[] {
  const says = (what: string): string[] => [`${code}: ${what} (${file}:${line}:${column})`]
  if (file === '') return says('names no file')
  if (!file.startsWith(folder) && !file.startsWith('sites/')) return says('names a file elsewhere')
  const whole =
    [line, column].every(one => Number.isInteger(one) && one >= 1) && Number.isInteger(length) && length >= 0
  if (!whole) return says('stands at no place')
  return text.includes('\n') || column - 1 + length > text.length ? says('runs past its line') : []
}

/** The same findings in every form that is printed. */
function badWords({ sites, on }: Assessment, findings: readonly Finding[]): string[] {
  const texts = [findingsText(findings, PLAIN), findingsLines(findings), sitesTable(sites)]
  const forms = [JSON.stringify(findingsJson(findings, on)), JSON.stringify(findingsSarif(findings, CHECKS, '0'))]
  for (const form of forms) JSON.parse(form)
  return [
    ...texts.filter(hasTrace).map(() => 'the text holds a trace'),
    ...texts.flatMap(text => commanding(harmless(text))).map(sign => `the text commands a terminal with ${sign}`)
  ]
}

const hasTrace = (text: string): boolean => /^\s+at .+:\d+:\d+\)?$/mu.test(text)

/** Signs that a terminal obeys, or that turn the order of reading; none of them reaches the reader as it is. */
export function commanding(text: string): string[] {
  const found = text.match(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu) ?? []
  return [
    ...new Set(
      found.filter(sign => sign !== '\n' && sign !== '\t').map(sign => `U+${sign.codePointAt(0)?.toString(16)}`)
    )
  ]
}
