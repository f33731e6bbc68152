import type { PlainTable, RoutePage } from '../binder/make-route-page.ts'

/** The route sheet for a terminal. */
export function routeText(page: RoutePage): string {
  if (page.areas.length === 0) return page.empty
  const areas = page.areas.flatMap(({ heading, stops }) => [
    '',
    heading,
    ...stops.flatMap(stop => [
      `  ${stop.number}. ${stop.title} (${stop.facts.join(', ')})`,
      ...stop.tasks.map(
        ({ box, what, due, minutes, parts }) =>
          `     ${box.padEnd(8)} ${due.text.padEnd(18)} ${minutes.padStart(3)} min  ${what}${parts.length > 1 ? `; take ${parts}` : ''}`
      ),
      ...stop.notes.map(note => `     ${note.label}: ${note.text}`)
    ])
  ])
  return [page.title, page.asOf, page.lead, ...areas, ...tableText(page.shopping), ...tableText(page.weeks)].join('\n')
}

function tableText({ title, columns, rows, note, wordsIn = -1 }: PlainTable): string[] {
  const all = [columns, ...rows]
  const widths = columns.map((_, index) => Math.max(...all.map(row => (row[index] ?? '').length)))
  const line = (row: readonly string[]) =>
    `  ${row.map((cell, index) => (index === 0 || index === wordsIn ? cell.padEnd(widths[index] ?? 0) : cell.padStart(widths[index] ?? 0))).join('  ')}`.trimEnd()
  return ['', title, ...all.map(line), `  ${note}`]
}
