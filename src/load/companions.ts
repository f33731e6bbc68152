import type { z } from 'zod'
import type { Fault, SourceText } from './loaded.ts'
import type { At } from '../diagnostics/finding.ts'
import { sharedReferences } from './cross/paths.ts'
import type { SharedReference } from './cross/paths.ts'
import type { FrontMatter } from './front-matter.ts'
import type { Companions } from './make-site.ts'
import { readAs } from './read-as.ts'
import { climateFile, makeClimateFile } from './schema/climate.ts'
import { company, makeCompany } from './schema/company.ts'
import { makeProductSheet, productSheet } from './schema/product-sheet.ts'
import { makeWateringRule, wateringRuleFile } from './schema/watering-rule.ts'
import { findShared, sharedFrontMatter } from './shared.ts'

export interface SharedCompanions extends Omit<Companions, 'visits' | 'weather' | 'planFile'> {
  /** The climate files among them: they may name a daily record. */
  readonly climateFronts: readonly FrontMatter[]
  readonly faults: readonly Fault[]
}

const COMPANY_FILE = '_shared/company.md'

/** The shared files that a site leads to. A file with faults is reported with every site that needs it. */
export function companionsOf(front: FrontMatter, shared: readonly SourceText[]): SharedCompanions {
  const references = sharedReferences(front)
  const of = (kind: SharedReference['kind']) => [
    ...new Set(references.filter(one => one.kind === kind).map(one => one.written))
  ]
  const sheets = readAll(of('product sheet'), shared, productSheet, (raw, at, path, prose) =>
    makeProductSheet(raw, at, path, prose)
  )
  const climates = readAll(of('climate'), shared, climateFile, makeClimateFile)
  const rules = readAll(of('watering rule'), shared, wateringRuleFile, makeWateringRule)
  const companies = readAll([COMPANY_FILE], shared, company, makeCompany)
  const all = [sheets, climates, rules, companies]
  return {
    sheets: sheets.made,
    climates: climates.made,
    rules: rules.made,
    company: companies.made.get(COMPANY_FILE),
    climateFronts: climates.fronts,
    fronts: all.flatMap(one => one.fronts),
    faults: all.flatMap(one => one.faults)
  }
}

/** What the shared files say of the company, as every site of the fleet carries it. */
export function readCompany(shared: readonly SourceText[]): Companions['company'] {
  return readAll([COMPANY_FILE], shared, company, makeCompany).made.get(COMPANY_FILE)
}

interface ReadAll<T> {
  readonly made: ReadonlyMap<string, T>
  readonly fronts: readonly FrontMatter[]
  readonly faults: readonly Fault[]
}

/** The files behind the paths, by path; one that is not there is left to those who look for references. */
function readAll<S extends z.ZodType, T>(
  paths: readonly string[],
  shared: readonly SourceText[],
  schema: S,
  make: (raw: z.output<S>, at: At, path: string, prose: string) => T
): ReadAll<T> {
  const made = new Map<string, T>()
  const fronts: FrontMatter[] = []
  const faults: Fault[] = []
  for (const path of paths) {
    const source = findShared(shared, path)
    if (!source) continue
    const front = sharedFrontMatter(source)
    const { value, faults: found } = readAs(schema, front)
    fronts.push(front)
    faults.push(...found)
    if (value !== undefined) made.set(path, make(value, { file: source.file, path: [] }, path, front.body.trim()))
  }
  return { made, fronts, faults }
}
