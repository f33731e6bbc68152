import { existsSync, readFileSync } from 'node:fs'
import type { Command } from 'commander'
import { Refusal } from '../../base/refusal.ts'
import { assessFleet } from '../../build/assess.ts'
import type { AssessedSite, Assessment } from '../../build/assess.ts'
import { writeSiteFile } from '../../build/write-site-file.ts'
import { CHECKS } from '../../checks/list.ts'
import { wordFault } from '../../checks/run.ts'
import { rowsOfFile } from '../../load/import-rows.ts'
import { importRows } from '../../load/import-site.ts'
import type { ImportTrouble } from '../../load/import-rows.ts'
import type { Imported } from '../../load/import-site.ts'
import { loadSite } from '../../load/site.ts'
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
  const assessment = assessFleet(options.sites, dayOf(options), [options.site])
  const [assessed] = assessment.sites
  const siteFile = assessed?.sources.site
  if (!assessed?.site || !siteFile)
    throw new Refusal(
      `The files of ${options.site} cannot be read yet.`,
      'Run "underlid check" first and mend what it names.'
    )
  if (!existsSync(file)) throw new Refusal(`There is no file ${file}.`)
  const read = rowsOfFile({ file, text: readFileSync(file, 'utf8') })
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
  if (options.format === 'json')
    say(
      JSON.stringify(
        { schema: 1, file: siteFile.file, written: write, changes, left_out: leftOut, troubles: sorted },
        undefined,
        2
      )
    )
  else
    (sorted.length > 0 ? complain : say)(
      importText({ from: file, to: siteFile.file, changes, leftOut, troubles: sorted, written: write })
    )
  process.exitCode = sorted.length > 0 ? EXIT.refused : EXIT.done
}

function worded({ faults }: Imported, site: string): ImportTrouble[] {
  return faults.map(({ line, fault }) => {
    const { message, fix } = wordFault(site, fault, CHECKS)
    return { line, message, fix }
  })
}

/** What the whole site would have wrong that it has not now: a box that no row and no line describes. */
function newFaults({ text, changes }: Imported, { sources, loaded }: AssessedSite, fleet: Assessment): ImportTrouble[] {
  const { site } = sources
  if (!site) return []
  const after = loadSite({
    id: sources.id,
    files: [{ ...site, text }, ...sources.visits],
    shared: fleet.sources.shared
  })
  const known = new Set(loaded.faults.map(one => `${one.code} ${one.subject} ${JSON.stringify(one.details)}`))
  return after.faults
    .filter(one => !known.has(`${one.code} ${one.subject} ${JSON.stringify(one.details)}`))
    .map(fault => {
      const { message, fix } = wordFault(sources.id, fault, CHECKS)
      const row = changes.find(one => message.includes(one.id) || fault.place.text.includes(one.id))
      return { line: row?.line ?? 1, message, fix }
    })
}
