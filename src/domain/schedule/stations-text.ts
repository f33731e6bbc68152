import { absent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import type { QuantityProblem } from '../../units/quantity.ts'
import { parseRunTime } from './text.ts'
import type { StationEntry } from './controller.ts'

/** Reads "1: 25 min, 2: 2 x 6 min soak 30 min": station numbers with their run times, in the order written. */
export function parseStations(text: string): Maybe<StationEntry[]> {
  const entries: StationEntry[] = []
  for (const part of text.split(/[,;]\s*(?=\d+\s*:)/u)) {
    const match = /^\s*(\d+)\s*:\s*(.+?)\s*$/u.exec(part)
    if (!match) return absent(`“${part.trim()}” is not a station with a run time: write 1: 25 min.`)
    const runTime = parseRunTime(match[2] ?? '')
    if (!runTime.ok) return absent(`Station ${match[1]}: ${runTimeProblem(runTime.problem)}`)
    entries.push({ number: Number(match[1]), runTime: runTime.value })
  }
  return entries
}

/** What to write instead, as a sentence. */
export function runTimeProblem(problem: QuantityProblem): string {
  switch (problem.kind) {
    case 'unit-missing':
      return `${problem.number} needs its unit: write ${problem.number} min or ${problem.number} s.`
    case 'decimal-comma':
      return `write ${problem.corrected}, with a decimal point.`
    case 'unit-unknown':
    case 'unit-of-another-kind':
      return `${problem.unit} is not a unit of time: write s, min or h.`
    case 'not-a-quantity':
      return `“${problem.text}” is not a run time: write 25 min, or 2 x 6 min soak 30 min.`
  }
}
