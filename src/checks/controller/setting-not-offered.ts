import type { Program, ProductSheet } from '../../model/site.ts'
import type { At } from '../../diagnostics/finding.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

export const settingNotOffered: SiteCheck = {
  card: {
    code: 'controller/setting-not-offered',
    severity: 'error',
    looksAt:
      'Cycles with a soak and percents by month in a program, on a controller whose product sheet says that it has no such setting.',
    why: 'What cannot be keyed in does not happen: the whole time runs in one piece, or at full length in every month.',
    sources: ['product-sheet'],
    fix: 'Use a start time for each cycle, or key in the minutes of each month.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/no-cycles.md, programs: [{ id: A, days: every day, starts: ["01:00"], stations: { 1: 2 x 5 min soak 30 min } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/no-cycles.md, programs: [{ id: A, days: every day, starts: ["01:00", "01:35"], stations: { 1: 5 min } }] }`
    }
  },
  run: ({ site }, report) => {
    for (const { id, sheet, programs } of controllersInService(site)) {
      if (!sheet) continue
      for (const program of programs)
        for (const { what, fix, key, where } of missing(program, sheet))
          report({
            subject: id,
            at: where,
            message: `${id}, program ${program.id}: ${what}.`,
            fix,
            related: [{ at: at(sheet, key), note: 'what the sheet states' }]
          })
    }
  }
}

interface Missing {
  readonly what: string
  readonly fix: string
  readonly key: string
  readonly where: At
}

function missing(program: Program, { cycleSoak, monthlyPercent }: ProductSheet): Missing[] {
  const split = program.stations.find(one => one.runTime.cycles > 1)
  const percents = program.monthlyPercent?.some(one => one !== 1) === true
  return [
    ...(split && cycleSoak === false
      ? [
          {
            what: `station ${split.number} has ${split.runTime.cycles} cycles, and its sheet says that it cannot split a run`,
            fix: `Give the program ${split.runTime.cycles} start times, a cycle and its soak apart, or correct the product sheet where it is mistaken.`,
            key: 'cycle-soak',
            where: at(split)
          }
        ]
      : []),
    ...(percents && monthlyPercent === false
      ? [
          {
            what: 'it has percents by month, and its sheet says that there is no such setting',
            fix: 'Write the minutes as they are keyed in, for the months for which they are, or correct the product sheet where it is mistaken.',
            key: 'monthly-percent',
            where: at(program, 'monthly-percent')
          }
        ]
      : [])
  ]
}
