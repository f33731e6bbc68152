import { describe, expect, it } from 'vitest'
import { setupFile } from './setup-file.ts'

interface Verdict {
  readonly lines: readonly string[]
  readonly found?: number
}
const { auditVerdict } = await setupFile<{ auditVerdict: (text: string) => Verdict }>('audit-verdict.mjs')

describe('the look for known weaknesses', () => {
  it('names each with what it is and what mends it', () => {
    const via = [{ title: 'Runs what it reads', url: 'https://example.org/advisory' }]
    const answer = {
      auditReportVersion: 2,
      vulnerabilities: {
        sheets: { severity: 'moderate', range: '*', via: ['reader'], fixAvailable: false },
        reader: { severity: 'high', range: '<2.0.0', via, fixAvailable: true }
      }
    }
    const { lines, found } = auditVerdict(JSON.stringify(answer))
    expect(found).toBe(2)
    expect(lines.join('\n')).toBe(
      [
        'reader <2.0.0: high',
        '  Runs what it reads https://example.org/advisory',
        '  A newer version mends it: npm update, then npm test.',
        'sheets *: moderate',
        '  through reader',
        '  No version mends it yet.'
      ].join('\n')
    )
  })

  it('says so where there is none', () => {
    expect(auditVerdict('{"auditReportVersion":2,"vulnerabilities":{}}').found).toBe(0)
  })

  it.each([
    [
      '{"message":"405 Method Not Allowed - POST https://example.org/audit","statusCode":405}',
      '405 Method Not Allowed'
    ],
    ['{"error":{"code":"ENOAUDIT","summary":"offline"}}', 'offline'],
    ['', 'nothing that can be read'],
    ['{"vulnerabilities":[]}', 'nothing that can be read']
  ])('a registry that gives no answer is told of, and is no finding: %s', (text, reason) => {
    const { lines, found } = auditVerdict(text)
    expect(found).toBeUndefined()
    expect(lines[0]).toBe(`The registry gave no answer about known weaknesses (${reason}), so nothing was looked up.`)
  })
})
