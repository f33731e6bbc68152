import { parseDate } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const visitDay: SiteCheck = {
  card: {
    code: 'file/visit-day',
    severity: 'warning',
    looksAt: 'A visit whose file is named after one day and whose keys say another.',
    why: 'Batteries, tests and tasks are counted from the day under "on:", so a digit that slipped there moves their due dates.',
    sources: ['project-rule'],
    fix: 'See the work order, and correct the one that is wrong: the name of the file or the day under "on:".',
    worked: {
      example: 'visits/2026-04-12-route.md\non: 2026-04-21',
      instead: 'visits/2026-04-21-route.md\non: 2026-04-21'
    }
  },
  run: ({ site }, report) => {
    for (const visit of site.visits) {
      const { on } = visit
      const file = visit.at.file.slice(visit.at.file.lastIndexOf('/') + 1)
      const named = dayOf(file)
      if (!named || named.day === on) continue
      const other = parseDate(named.day) ? ` If it was on ${named.day}, write "on: ${named.day}".` : ''
      report({
        subject: '',
        at: at(visit, 'on'),
        message: `The file is named after ${named.day}, and "on:" says ${on}.`,
        fix: `See the work order. If the visit was on ${on}, name the file ${on}${named.rest}.${other}`,
        values: { on, named: named.day }
      })
    }
  }
}

/** The day that a file name begins with, its digits filled up, and what follows; undefined where it begins otherwise. */
function dayOf(file: string): { readonly day: string; readonly rest: string } | undefined {
  const [, year = '', month = '', day = '', rest = ''] = /^(\d{4})-(\d{1,2})-(\d{1,2})(?!\d)(.*)$/u.exec(file) ?? []
  return year === '' ? undefined : { day: `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`, rest }
}
