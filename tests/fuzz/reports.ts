import type { CaseReport, RunReport } from './run-cases.ts'

/** What parts of a run came to together, with cases that no part could report. */
export function joined(parts: readonly RunReport[], others: readonly CaseReport[]): RunReport {
  const total = (of: (part: RunReport) => Readonly<Record<string, number>>): Record<string, number> => {
    const sums: Record<string, number> = {}
    for (const part of parts)
      for (const [name, count] of Object.entries(of(part))) sums[name] = (sums[name] ?? 0) + count
    return sums
  }
  const byKind = total(part => part.byKind)
  for (const { kind } of others) byKind[kind] = (byKind[kind] ?? 0) + 1
  return {
    cases: parts.reduce((sum, { cases }) => sum + cases, others.length),
    byKind,
    outcomes: total(part => part.outcomes),
    commands: total(part => part.commands),
    findings: parts.reduce((sum, { findings }) => sum + findings, 0),
    slowest: parts.map(part => part.slowest).sort((a, b) => b.seconds - a.seconds)[0] ?? { seconds: 0, case: 0 },
    failures: [...parts.flatMap(part => part.failures), ...others].sort((a, b) => a.number - b.number)
  }
}
