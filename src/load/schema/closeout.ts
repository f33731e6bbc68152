import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Closeout } from '../../model/closeout.ts'
import { charts, makeCharts, makeRecordDrawing, recordDrawing } from './closeout-drawings.ts'
import { digital, installation, makeDigital, makeInstallation } from './closeout-installation.ts'
import { closeoutPhoto, makeCloseoutPhoto, makeUnfinished, unfinished } from './closeout-items.ts'
import { handedOver, makeHandedOver } from './closeout-things.ts'
import { makeSignOff, signOff } from './closeout-sign-offs.ts'
import { makeTestReport, testReport } from './closeout-tests.ts'
import { makeTraining, training } from './closeout-training.ts'
import { optional } from './field.ts'
import { each, given, made, part } from './made.ts'
import { list, record } from './record.ts'
import { text } from './texts.ts'
import { date } from './times.ts'

const maintenancePeriod = record(
  'the maintenance period',
  {
    does: 'How long the contractor looks after the work before it is handed over.',
    example: '{ from: 2025-05-01, to: 2025-08-29 }'
  },
  {
    from: optional(date('First day.', '2025-05-01')),
    to: optional(date('Last day.', '2025-08-29')),
    agreement: optional(text('The written agreement that ends it.', 'letter of 2025-08-29'))
  }
)

/** What is handed over when the work is done. */
export const closeout = record(
  'the closeout',
  { does: 'What is handed over when the work is done.', example: '{ acceptance: 2025-04-30 }' },
  {
    'work-start': optional(date('First day of the work.', '2025-03-03')),
    'substantial-completion': optional(date('Day on which it could be used.', '2025-04-22')),
    acceptance: optional(date('Day on which the owner accepted it.', '2025-04-30')),
    contract: optional(text('Number or name of the contract.', '"PSP-118"')),
    installation: optional(installation),
    digital: optional(digital),
    repairs: optional(text('What is promised for a repair.', 'two years on each repair; tag with date and name')),
    'maintenance-period': optional(maintenancePeriod),
    'record-drawings': optional(
      list(recordDrawing, {
        does: 'Record drawings, sheet by sheet.',
        example: '[{ number: RD-1, dated: 2025-04-28 }]'
      })
    ),
    charts: optional(charts),
    tests: optional(list(testReport, { does: 'Test reports.', example: '[{ kind: pressure, on: 2025-04-10 }]' })),
    training: optional(
      list(training, { does: 'Who was taught what.', example: '[{ on: 2025-04-30, trainer: P. Sample }]' })
    ),
    spares: optional(list(handedOver, { does: 'Spare parts.', example: '[{ item: coil, count: 2 }]' })),
    tools: optional(list(handedOver, { does: 'Tools.', example: '[{ item: valve key, count: 2 }]' })),
    'sign-offs': optional(
      list(signOff, { does: 'What was signed, or refused.', example: '[{ kind: walk-through, on: 2025-04-30 }]' })
    ),
    unfinished: optional(
      list(unfinished, { does: 'What was still to be done on the day.', example: '[{ item: mulch around VB2 }]' })
    ),
    photographs: optional(
      list(closeoutPhoto, {
        does: 'Photographs of the finished work and of what is buried.',
        example: '[{ file: trench-north.jpg, kind: open trench }]'
      })
    )
  }
)

export function makeCloseout(raw: z.output<typeof closeout>, at: At): Closeout {
  return made<Closeout>({
    at,
    workStart: given(raw['work-start']),
    substantialCompletion: given(raw['substantial-completion']),
    acceptance: given(raw.acceptance),
    contract: given(raw.contract),
    installation: part(raw.installation, at, 'installation', makeInstallation),
    digital: part(raw.digital, at, 'digital', makeDigital),
    repairs: given(raw.repairs),
    maintenancePeriod: part(raw['maintenance-period'], at, 'maintenance-period', (one, place) => ({
      at: place,
      ...(one.from ? { from: one.from } : {}),
      ...(one.to ? { to: one.to } : {}),
      ...(one.agreement ? { agreement: one.agreement } : {})
    })),
    recordDrawings: each(raw['record-drawings'], at, 'record-drawings', makeRecordDrawing),
    charts: part(raw.charts, at, 'charts', makeCharts),
    tests: each(raw.tests, at, 'tests', makeTestReport),
    training: each(raw.training, at, 'training', makeTraining),
    spares: each(raw.spares, at, 'spares', makeHandedOver),
    tools: each(raw.tools, at, 'tools', makeHandedOver),
    signOffs: each(raw['sign-offs'], at, 'sign-offs', makeSignOff),
    unfinished: each(raw.unfinished, at, 'unfinished', makeUnfinished),
    photographs: each(raw.photographs, at, 'photographs', makeCloseoutPhoto)
  })
}
