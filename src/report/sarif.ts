import type { Check } from '../checks/check.ts'
import type { Finding, Place, Severity } from '../diagnostics/finding.ts'
import { citeSource } from '../reference/sources.ts'
import { sourceText } from './source-text.ts'

const LEVELS: Readonly<Record<Severity, 'error' | 'warning' | 'note'>> = {
  error: 'error',
  warning: 'warning',
  note: 'note'
}

/** The findings as SARIF 2.1.0 (OASIS Static Analysis Results Interchange Format, 2020), for editors and code hosts. */
export function findingsSarif(findings: readonly Finding[], checks: readonly Check[], version: string): object {
  const used = checks.filter(({ card }) => findings.some(finding => finding.code === card.code))
  const index = new Map(used.map(({ card }, position) => [card.code, position]))
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Underlid', version, rules: used.map(rule) } },
        columnKind: 'utf16CodeUnits',
        results: findings.map(finding => result(finding, index.get(finding.code) ?? -1))
      }
    ]
  }
}

function rule({ card }: Check): object {
  return {
    id: card.code,
    shortDescription: { text: card.looksAt },
    fullDescription: { text: card.why },
    help: { text: `${card.fix} Source: ${card.sources.map(citeSource).join('; ')}` },
    defaultConfiguration: { level: LEVELS[card.severity] }
  }
}

function result(finding: Finding, ruleIndex: number): object {
  const { code, severity, site, subject, message, why, fix, sources, place, related, values } = finding
  return {
    ruleId: code,
    ...(ruleIndex >= 0 ? { ruleIndex } : {}),
    level: LEVELS[severity],
    message: { text: `${message} ${fix}` },
    locations: [location(place)],
    ...(related.length > 0
      ? { relatedLocations: related.map(one => ({ ...location(one.place), message: { text: one.note } })) }
      : {}),
    partialFingerprints: { 'underlid/v1': [site, code, subject].join(' ') },
    properties: { site, subject, why, source: sourceText(sources), values }
  }
}

function location({ file, line, column, length }: Place): object {
  return {
    physicalLocation: {
      artifactLocation: { uri: encodeURI(file) },
      region: { startLine: line, startColumn: column, endColumn: column + Math.max(1, length) }
    }
  }
}
