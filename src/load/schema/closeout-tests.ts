import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import { TEST_KINDS } from '../../model/closeout.ts'
import type { TestReport } from '../../model/closeout.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { attachment, choice, text, yesNo } from './texts.ts'
import { date } from './times.ts'

export const testReport = record(
  'a test report',
  {
    does: 'A test, with its result.',
    example: '{ kind: pressure, on: 2025-04-10, pressure: 6.9 bar, duration: 30 min }'
  },
  {
    kind: choice('What was tested.', TEST_KINDS, 'pressure'),
    on: optional(date('Day of the test.', '2025-04-10')),
    by: optional(text('Who tested.', 'T. Sample')),
    company: optional(text('For whom.', 'Sample Testing')),
    witness: optional(text('Who saw it.', 'M. Example, Harrow Mere Council')),
    independent: optional(yesNo('yes: by somebody who neither designed nor installed it.', 'yes')),
    meter: optional(text('The instrument.', 'multimeter, checked 2025-01')),
    of: optional(text('What part was tested: a supply, a zone, a line.', 'S1')),
    pressure: optional(quantity('Test pressure.', 'pressure', '6.9 bar')),
    duration: optional(quantity('How long it was held, or run.', 'duration', '30 min')),
    result: optional(text('What came out, in a sentence or a figure.', 'no loss')),
    passed: optional(yesNo('yes: it passed.', 'yes')),
    file: optional(attachment('The report itself, beside the site file.', 'pressure-test.pdf'))
  }
)

export function makeTestReport(raw: z.output<typeof testReport>, at: At): TestReport {
  return made<TestReport>({
    at,
    kind: raw.kind,
    on: given(raw.on),
    by: given(raw.by),
    company: given(raw.company),
    witness: given(raw.witness),
    independent: given(raw.independent),
    meter: given(raw.meter),
    of: given(raw.of),
    pressure: given(raw.pressure),
    duration: given(raw.duration),
    result: given(raw.result),
    passed: given(raw.passed),
    file: given(raw.file)
  })
}
