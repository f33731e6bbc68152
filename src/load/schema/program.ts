import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Program, ProgramStation } from '../../model/site.ts'
import { MONTHS } from '../../units/date.ts'
import { sortedBy } from '../../base/collections.ts'
import { optional } from './field.ts'
import { below, each, given, made } from './made.ts'
import { list, record, table } from './record.ts'
import { monthlyPercent } from './monthly-percent.ts'
import { makeSuspension, suspensions } from './suspension.ts'
import { id, text } from './texts.ts'
import { clock, date, dayRule, runTime } from './times.ts'

export const program = record(
  'a program',
  {
    does: 'A program of the controller.',
    example: '{ id: A, days: every day, starts: ["23:10"], stations: { 1: 25 min } }'
  },
  {
    id: id('Its letter or number on the controller.', 'A'),
    name: optional(text('What it is for.', 'summer')),
    days: dayRule(
      'every day; every 2 days from a date; even dates; odd dates; weekdays.',
      'every 2 days from 2026-04-02'
    ),
    starts: list(clock('A start time.', '"23:10"'), { does: 'Start times.', example: '["23:10"]' }),
    stations: table(/^[1-9]\d*$/u, runTime('Run time of the station; cycles with soak.', '2 x 6 min soak 30 min'), {
      does: 'Run time of each station, by its number.',
      example: '{ 1: 25 min, 3: 2 x 6 min soak 30 min }'
    }),
    'monthly-percent': optional(monthlyPercent),
    from: optional(date('First day on which it is set.', '2026-04-01')),
    to: optional(date('Last day on which it is set.', '2026-10-15')),
    suspensions: optional(suspensions)
  }
)

export function makeProgram(raw: z.output<typeof program>, at: At): Program {
  return made<Program>({
    at,
    id: raw.id,
    name: given(raw.name),
    days: raw.days,
    starts: raw.starts,
    stations: makeStations(raw.stations, at),
    monthlyPercent: raw['monthly-percent'] ? MONTHS.map(month => raw['monthly-percent']?.[month].si ?? 1) : undefined,
    from: given(raw.from),
    to: given(raw.to),
    suspensions: raw.suspensions ? each(raw.suspensions, at, 'suspensions', makeSuspension) : undefined
  })
}

function makeStations(raw: z.output<typeof program>['stations'], at: At): readonly ProgramStation[] {
  const stations = Object.entries(raw).map(([number, run]) =>
    made<ProgramStation>({ at: below(at, 'stations', number), number: Number(number), runTime: run })
  )
  return sortedBy(stations, one => one.number)
}
