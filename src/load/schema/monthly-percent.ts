import { MONTHS } from '../../units/date.ts'
import type { Month } from '../../units/date.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'

/** Controllers offer 200 or 300 %; ten times the run time is a slip, and would open a valve for ages. */
const MOST = { si: 10, words: 'must be no more than 1,000 %' }

const percent = (month: Month) =>
  quantity(`${month}: share of the run time that is set.`, 'ratio', '70 %', 'zero', MOST)

type MonthShape = Record<Month, ReturnType<typeof percent>>

/** All twelve months, so that none is guessed. */
export const monthlyPercent = record(
  'the monthly percent',
  {
    does: 'Share of the run times in each month, all twelve. Without it the run times hold all year.',
    example:
      '{ Jan: 0 %, Feb: 0 %, Mar: 30 %, Apr: 55 %, May: 80 %, Jun: 95 %, Jul: 100 %, Aug: 80 %, Sep: 50 %, Oct: 30 %, Nov: 0 %, Dec: 0 % }'
  },
  Object.fromEntries(MONTHS.map(month => [month, percent(month)])) as MonthShape
)
