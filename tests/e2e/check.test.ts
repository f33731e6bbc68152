import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { ON, underlid, workFolder } from './support.ts'

interface Report {
  readonly schema: number
  readonly on: string
  readonly findings: readonly Record<string, unknown>[]
  readonly counts: Record<string, number>
}

describe('underlid check', () => {
  const folder = workFolder(['kestrel-cross', 'harbour-steps'])

  it('ends with 1 where a site has an error, and prints place, code, reason and fix', () => {
    const { code, out } = underlid(['check', 'kestrel-cross', '--on', ON], folder)
    expect(code).toBe(1)
    expect(out).toMatch(/^sites\/kestrel-cross\/site\.md:\d+:\d+ {2}error {2}wire\/coil-voltage-low$/mu)
    expect(out).toContain('2.5 mm² would pass')
  })

  it('ends with 0 on the clean site and finds nothing above a note there', () => {
    const { code, out } = underlid(['check', 'harbour-steps', '--on', ON, '--format', 'json'], folder)
    const report = JSON.parse(out) as Report
    expect(code).toBe(0)
    expect(report.counts).toMatchObject({ error: 0, warning: 0 })
  })

  it('gives JSON of the contract: every finding with code, place, reason, source, fix and figures', () => {
    const report = JSON.parse(underlid(['check', '--on', ON, '--format', 'json'], folder).out) as Report
    expect(report).toMatchObject({ schema: 1, on: ON })
    expect(report.findings.length).toBeGreaterThan(0)
    for (const finding of report.findings) {
      for (const key of ['code', 'severity', 'site', 'message', 'why', 'source', 'fix', 'file'])
        expect(finding[key], key).toBeTypeOf('string')
      expect(finding['line']).toBeGreaterThan(0)
      expect(finding['column']).toBeGreaterThan(0)
    }
    const low = report.findings.find(one => one['code'] === 'wire/coil-voltage-low')
    expect(low?.['values']).toMatchObject({ passing_size: '2.5 mm²' })
  })

  it('is the same text on every run', () => {
    const once = () => underlid(['check', '--on', ON, '--format', 'json'], folder).out
    expect(once()).toBe(once())
  })

  it('ends with 2 and says what there is where a site is not there', () => {
    const { code, err } = underlid(['check', 'nowhere'], folder)
    expect(code).toBe(2)
    expect(err).toContain('harbour-steps')
    expect(err).not.toMatch(/\n\s+at /u)
  })

  it('ends with 2 on a day that does not exist', () => {
    const { code, err } = underlid(['check', '--on', '2026-02-30'], folder)
    expect(code).toBe(2)
    expect(err).toContain('2026-02-30')
  })

  it('tells every fault of a broken file at once, without a stack trace', () => {
    const file = join(folder, 'sites/kestrel-cross/site.md')
    const good = readFileSync(file, 'utf8')
    writeFileSync(
      file,
      good
        .replace('limit: 60 L/min', 'limit: 60')
        .replace('tested: 2026-03-20', 'tested: 2026-02-30')
        .replace('load-rating: C250', 'load-ratign: C250')
    )
    const { code, out } = underlid(['check', 'kestrel-cross', '--on', ON], folder)
    writeFileSync(file, good)
    expect(code).toBe(1)
    for (const part of ['file/unit-missing', 'file/date', 'file/unknown-key', 'load-rating'])
      expect(out).toContain(part)
    expect(out).not.toMatch(/\n\s+at /u)
  })
})
