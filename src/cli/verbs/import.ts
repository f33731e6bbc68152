import { existsSync, readFileSync } from 'node:fs'
import type { Command } from 'commander'
import { Refusal } from '../../base/refusal.ts'
import { assessOne } from '../../build/assess.ts'
import { loadOne } from '../../build/load-one.ts'
import { assessSite } from '../../build/assess-site.ts'
import type { AssessedSite, Assessment } from '../../build/assess.ts'
import { writeSiteFile } from '../../build/write-site-file.ts'
import { CHECKS } from '../../checks/list.ts'
import { wordFault } from '../../checks/run.ts'
import { rowsOfFile } from '../../load/import-rows.ts'
import { importRows } from '../../load/import-site.ts'
import type { ImportTrouble } from '../../load/import-rows.ts'
import type { Imported } from '../../load/import-site.ts'
import type { Finding } from '../../diagnostics/finding.ts'
import { importText } from '../../report/import.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { EXIT, makeOutput } from '../output.ts'

interface ImportOptions extends CommonOptions {
  readonly site: string
  readonly write?: boolean
}

export function addImport(program: Command): void {
  withCommonOptions(
    program
      .command('import')
      .description('bring boxes, valves and zones from CSV or GeoJSON into a site file; shows the change first')
      .argument('<file>')
  )
    .requiredOption('--site <site>', 'the site they belong to')
    .option('--write', 'write what was shown')
    .action((file: string, options: ImportOptions) => bringIn(file, options))
}

function bringIn(file: string, options: ImportOptions): void {
  const { say, complain } = makeOutput(options)
  const assessment = assessSite(options.sites, dayOf(options), options.site)
  const [assessed] = assessment.sites
  const siteFile = assessed?.sources.site
  if (!assessed?.site || !siteFile)
    throw new Refusal(
      `The files of ${options.site} cannot be read yet.`,
      'Run "underlid check" first and mend what it names.'
    )
  if (!existsSync(file)) throw new Refusal(`There is no file ${file}.`)
  const read = rowsOfFile({ file, text: textOf(file) })
  if (!read.ok) throw new Refusal(`${file}: ${read.message}`, read.fix)
  const { latitude, longitude } = assessed.site.location ?? {}
  const place = latitude === undefined || longitude === undefined ? undefined : { latitude, longitude }
  const imported = importRows(read.rows, siteFile, place)
  const troubles = [...read.troubles, ...imported.troubles, ...worded(imported, options.site)]
  const all = troubles.length > 0 ? troubles : newFaults(imported, assessed, assessment)
  const write = options.write === true && all.length === 0 && imported.text !== siteFile.text
  if (write) writeSiteFile(siteFile.file, imported.text, { was: siteFile.text })
  const sorted = [...all].sort((a, b) => a.line - b.line)
  const { changes, leftOut } = imported
  const { passedOver } = read
  if (options.format === 'json')
    say(
      JSON.stringify(
        {
          schema: 1,
          file: siteFile.file,
          written: write,
          changes,
          left_out: [...leftOut, ...passedOver],
          troubles: sorted
        },
        undefined,
        2
      )
    )
  else
    (sorted.length > 0 ? complain : say)(
      importText({ from: file, to: siteFile.file, changes, leftOut, passedOver, troubles: sorted, written: write })
    )
  process.exitCode = sorted.length > 0 ? EXIT.refused : EXIT.done
}

/** As UTF-8; a file in another encoding would bring wrong letters in. */
function textOf(file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file))
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ERR_ENCODING_INVALID_ENCODED_DATA')
      throw new Refusal(`${file} is not text in UTF-8.`, 'Save it as "CSV UTF-8" or export it as UTF-8.')
    throw new Refusal(`${file} cannot be read.`, 'Name a file that is there and may be read.')
  }
}

function worded({ faults }: Imported, site: string): ImportTrouble[] {
  return faults.map(({ line, fault }) => {
    const { message, fix } = wordFault(site, fault, CHECKS)
    return { line, message, fix }
  })
}

/** What the whole site would have wrong that it has not now: a box that no row and no line describes, a private word on a public page. */
function newFaults(
  imported: Imported,
  { sources, loaded, findings }: AssessedSite,
  fleet: Assessment
): ImportTrouble[] {
  const { site } = sources
  if (!site) return []
  const now = { ...sources, site: { ...site, text: imported.text } }
  const after = loadOne(now, fleet.sources)
  const known = new Set(loaded.faults.map(one => `${one.code} ${one.subject} ${JSON.stringify(one.details)}`))
  const faults = after.faults
    .filter(one => !known.has(`${one.code} ${one.subject} ${JSON.stringify(one.details)}`))
    .map(fault => ({ ...wordFault(sources.id, fault, CHECKS), text: fault.place.text }))
  if (faults.length > 0)
    return faults.map(({ message, fix, text }) => ({ line: lineOf(imported, `${message} ${text}`), message, fix }))
  const before = new Set(findings.filter(isLeak).map(({ place }) => lineAt(site.text, place.line)))
  const leaks = assessOne(now, after, fleet.fleet, fleet.on)
    .findings.filter(isLeak)
    .map(({ message, place }) => ({ message, text: lineAt(imported.text, place.line) }))
  return leaks
    .filter(one => !before.has(one.text))
    .map(({ message, text }) => ({
      line: lineOf(imported, text),
      message,
      fix: 'Say it without the private word: where a box is and what a valve waters is shown to anybody who scans.'
    }))
}

const isLeak = ({ code }: Finding): boolean => code === 'privacy/private-word-public'
const lineAt = (text: string, line: number): string => text.split(/\r\n|\r|\n/u)[line - 1] ?? ''

/** Line of the row that a text of the site file, or about it, is of. */
function lineOf({ changes }: Imported, about: string): number {
  return (
    (
      changes.find(one => about.includes(one.id)) ??
      changes.find(one => one.changes.some(({ to }) => about.includes(to)))
    )?.line ?? 1
  )
}
