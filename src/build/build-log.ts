import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { countFindings } from '../diagnostics/finding.ts'
import { diskTrouble } from './disk-trouble.ts'
import type { BuildResult } from './pipeline.ts'

/** What became of each site and each print, and why: one a line, sorted, so that two logs can be held beside each other. */
export function buildLog({ on, made, same, leftOut, notAsked, findings, prints, report }: BuildResult): string {
  const faults = (id: string): number => countFindings(findings.filter(one => one.site === id)).error
  const lines = [
    ...made
      .filter(id => !leftOut.includes(id))
      .map(id => `${id}: made, since something that shapes it changed or it was never made here`),
    ...same.map(id => `${id}: skipped, since nothing that shapes it changed`),
    ...leftOut.map(id => `${id}: left out, since its files have ${faults(id)} faults; the last good pages stay`),
    ...notAsked.map(id => `${id}: skipped, since it was not asked for; the last pages stay`),
    ...(prints?.printed ?? []).map(pdf => `${pdf}: printed`),
    ...(prints?.reused ?? []).map(pdf => `${pdf}: skipped, since its document did not change`),
    ...(prints?.failed ?? []).map(({ pdf, reason }) => `${pdf}: not printed: ${reason}`),
    ...report.removed.map(path => `${path}: taken away, since nothing makes it any more`)
  ].sort()
  return [
    `As of ${on}: ${made.length} made, ${same.length} unchanged, ${leftOut.length} left out, ${notAsked.length} not asked for.`,
    ...lines,
    ''
  ].join('\n')
}

export function writeLog(file: string, text: string): void {
  try {
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, text)
  } catch (error) {
    throw diskTrouble(error, 'The outputs are written; only the log is not.')
  }
}
