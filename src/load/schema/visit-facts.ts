import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { VisitPart, VisitProgram, VisitTest } from '../../model/visit-facts.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { count } from './numbers.ts'
import { record } from './record.ts'
import { id, text, yesNo } from './texts.ts'

export const visitProgram = record(
  'a controller as found',
  {
    does: 'Clock and program of a controller, as found and as left.',
    example: '{ controller: K1, clock: 4 min fast, found: A at 60 %, left: A at 100 % }'
  },
  {
    controller: id('Which controller.', 'K1'),
    clock: optional(text('What its clock showed against the right time.', '4 min fast')),
    found: optional(text('The program as found.', 'A at 60 %')),
    left: optional(text('The program as left.', 'A at 100 %, as posted for May'))
  }
)

export const visitTest = record(
  'a backflow test',
  { does: 'A test of the backflow assembly on that day.', example: '{ supply: S1, passed: yes, tester: J. Sample }' },
  {
    supply: id('At which supply.', 'S1'),
    passed: yesNo('yes: it passed; only then is the next test counted from this day.', 'yes'),
    tester: optional(text('Who tested it.', '"J. Sample, certificate 4711"'))
  }
)

export const visitPart = record(
  'a part',
  { does: 'A part that was used.', example: '{ item: gel-filled connector, count: 2 }' },
  {
    item: text('What it is.', 'gel-filled connector'),
    count: optional(count('How many; 1 where nothing is written.', '2'))
  }
)

export function makeVisitProgram(raw: z.output<typeof visitProgram>, at: At): VisitProgram {
  return made<VisitProgram>({
    at,
    controller: raw.controller,
    clock: given(raw.clock),
    found: given(raw.found),
    left: given(raw.left)
  })
}

export function makeVisitTest(raw: z.output<typeof visitTest>, at: At): VisitTest {
  return made<VisitTest>({ at, supply: raw.supply, passed: raw.passed, tester: given(raw.tester) })
}

export function makeVisitPart(raw: z.output<typeof visitPart>, at: At): VisitPart {
  return { at, item: raw.item, count: raw.count ?? 1 }
}
