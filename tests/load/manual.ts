import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { z } from 'zod'
import { keyRows } from '../../src/load/key-list.ts'
import type { KeyRow } from '../../src/load/key-list.ts'
import { climateFile } from '../../src/load/schema/climate.ts'
import { company } from '../../src/load/schema/company.ts'
import { productSheet } from '../../src/load/schema/product-sheet.ts'
import { site } from '../../src/load/schema/site.ts'
import { visit } from '../../src/load/schema/visit.ts'
import { wateringRuleFile } from '../../src/load/schema/watering-rule.ts'

export const MANUAL = join(dirname(fileURLToPath(import.meta.url)), '../../docs/site-file.md')

/** Each list of keys in the manual stands between two marks with its name. */
export const LISTS: Readonly<Record<string, z.ZodType>> = {
  site,
  visit,
  'product-sheet': productSheet,
  climate: climateFile,
  'watering-rule': wateringRuleFile,
  company
}

const HEAD = '| key | example | what it is |\n| --- | --- | --- |\n'

/** The table of keys as the manual must have it. A key that must be there is set in bold. */
export function keyTable(schema: z.ZodType): string {
  return HEAD + keyRows(schema).filter(isListed).map(line).join('')
}

function isListed({ path }: KeyRow): boolean {
  return (
    !/\.(?:Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)$/u.test(path) && !path.startsWith('controllers[].master-valve.')
  )
}

function line({ path, example, does, required }: KeyRow): string {
  const key = `\`${path.replace(/\.Jan$/u, '.Jan … Dec')}\``
  return `| ${required ? `**${key}**` : key} | \`${example}\` | ${does} |\n`
}

/** The manual with its tables made anew. */
export function manualMadeAnew(text: string): string {
  return Object.entries(LISTS).reduce(
    (whole, [name, schema]) =>
      whole.replace(
        new RegExp(`(<!-- keys: ${name} -->\\n)[\\s\\S]*?(<!-- end -->)`, 'u'),
        (_, start: string, end: string) => `${start}\n${keyTable(schema)}\n${end}`
      ),
    text
  )
}

/** The blocks of the manual that are whole files, in order. */
export function manualFiles(): readonly string[] {
  const text = readFileSync(MANUAL, 'utf8')
  return [...text.matchAll(/^```markdown\n([\s\S]*?)^```$/gmu)].map(match => match[1] ?? '')
}
