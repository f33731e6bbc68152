import { groupBy } from '../base/collections.ts'
import type { Block, Section, Value } from './blocks.ts'

/** A value of a section that was not supplied: the row, where it has a name, and the column or the label. */
interface Gap {
  readonly what: string
  readonly of?: string
}

/**
 * What a section prints as "not supplied", each thing once, with the rows it is missing in: "Ties (VB2, VB3)". More than `NAMED` rows
 * are counted. Empty where nothing is missing.
 */
export function gapsOf(section: Section, rowsOf: (count: number) => string): string[] {
  const gaps = section.blocks.flatMap(gapsIn)
  return [...groupBy(gaps, gap => gap.what)].map(([what, all]) => {
    const rows = all.flatMap(({ of }) => (of === undefined ? [] : [of]))
    if (rows.length === 0) return what
    return `${what} (${rows.length > NAMED ? rowsOf(rows.length) : rows.join(', ')})`
  })
}

const NAMED = 4

function gapsIn(block: Block): Gap[] {
  if (block.kind === 'facts')
    return block.rows.filter(({ value }) => isGap(value)).map(({ label }) => ({ what: label }))
  if (block.kind === 'not-supplied') return [{ what: block.text.split(':')[0] ?? block.text }]
  if (block.kind !== 'table') return []
  return block.rows.flatMap(row =>
    row.flatMap((value, column) =>
      isGap(value) ? [{ what: block.columns[column]?.label ?? '', ...rowName(row) }] : []
    )
  )
}

const isGap = (value: Value): boolean => value.standing === 'not-supplied'

function rowName([first]: readonly Value[]): Pick<Gap, 'of'> {
  return first && !isGap(first) ? { of: first.text } : {}
}
