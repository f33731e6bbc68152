import { canBeSet } from '../../domain/schedule/day-choices.ts'
import { writeDayRule } from '../../domain/schedule/text.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

export const daysNotOffered: SiteCheck = {
  card: {
    code: 'controller/days-not-offered',
    severity: 'error',
    looksAt: 'The watering days of a program, against the kinds of days that the product sheet says can be set.',
    why: 'The days written cannot be keyed in, so that the unit waters on others, which nobody chose.',
    sources: ['product-sheet'],
    fix: 'Write days that the unit can be set to, or fit a unit that has a setting for those days.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/weekdays-only.md, programs: [{ id: A, days: even dates, starts: ["01:00"], stations: { 1: 5 min } }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/weekdays-only.md, programs: [{ id: A, days: Mon Wed Fri, starts: ["01:00"], stations: { 1: 5 min } }] }`
    }
  },
  run: ({ site }, report) => {
    for (const { id, sheet, programs } of controllersInService(site)) {
      if (!sheet?.dayRules) continue
      const kinds = sheet.dayRules
      for (const program of programs.filter(one => !canBeSet(one.days, kinds))) {
        report({
          subject: id,
          at: at(program, 'days'),
          message: `${id}, program ${program.id}: “${writeDayRule(program.days)}” cannot be set; the sheet gives ${kinds.join(', ')}.`,
          fix: 'Read what the unit is really set to and write that, or correct the product sheet where it is mistaken.',
          related: [{ at: at(sheet, 'day-rules'), note: 'days that it can be set to' }]
        })
      }
    }
  }
}
