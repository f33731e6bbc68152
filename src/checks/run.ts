import { sortFindings } from '../diagnostics/finding.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { Fleet } from '../model/fleet.ts'
import type { Fault, LoadedSite } from '../load/loaded.ts'
import type { Plan } from '../plan/plan.ts'
import type { Check, CheckContext, FileCheck, Reported, SiteCheck } from './check.ts'

export interface Checkable {
  readonly loaded: LoadedSite
  readonly plan?: Plan
  readonly fleet: Fleet
}

/** Every finding of one site, sorted. A site that could not be understood yields the findings of its file alone. */
export function runChecks({ loaded, plan, fleet }: Checkable, checks: readonly Check[]): Finding[] {
  const findings = loaded.faults.map(fault => wordFault(loaded.id, fault, checks))
  const { site } = loaded
  if (site && plan) {
    const context: CheckContext = { site, plan, fleet, on: plan.on }
    for (const check of checks) if (isSiteCheck(check)) findings.push(...runOne(check, context, loaded))
  }
  return sortFindings(findings)
}

export function isSiteCheck(check: Check): check is SiteCheck {
  return 'run' in check
}

function runOne(check: SiteCheck, context: CheckContext, loaded: LoadedSite): Finding[] {
  const findings: Finding[] = []
  check.run(context, reported => findings.push(toFinding(check, reported, loaded)))
  return findings
}

function toFinding({ card }: SiteCheck, reported: Reported, loaded: LoadedSite): Finding {
  return {
    code: card.code,
    severity: reported.severity ?? card.severity,
    site: loaded.id,
    subject: reported.subject,
    message: plainSpaces(reported.message),
    why: plainSpaces(reported.why ?? card.why),
    sources: reported.sources ?? card.sources,
    fix: plainSpaces(reported.fix),
    place: loaded.locate(reported.at),
    related: (reported.related ?? []).map(({ at, note }) => ({ place: loaded.locate(at), note })),
    values: reported.values ?? {}
  }
}

/** The words for a fault of a file. */
export function wordFault(site: string, fault: Fault, checks: readonly Check[]): Finding {
  const check = checks.find((one): one is FileCheck => one.card.code === fault.code && !isSiteCheck(one))
  if (!check) throw new Error(`no check has words for ${fault.code}`)
  const { message, why, fix, values } = check.word(fault)
  return {
    code: fault.code,
    severity: check.card.severity,
    site,
    subject: fault.subject,
    message: plainSpaces(message),
    why: plainSpaces(why ?? check.card.why),
    sources: check.card.sources,
    fix: plainSpaces(fix),
    place: fault.place,
    related: fault.related ?? [],
    values: values ?? {}
  }
}

/** A finding is searched, piped and compared as text, so the spaces that hold a number to its unit on a page become plain ones. */
function plainSpaces(text: string): string {
  return text.replace(/[\u00a0\u202f]/gu, ' ')
}
