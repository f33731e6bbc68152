import { describe, expect, it } from 'vitest'
import type { Finding } from '../../src/diagnostics/finding.ts'
import { PLAIN } from '../../src/report/paint.ts'
import { countsText, findingsLines, findingsText, findingText, sitesTable } from '../../src/report/text.ts'

const finding = (patch: Partial<Finding> = {}): Finding => ({
  code: 'wire/loop-over-limit',
  severity: 'error',
  site: 'quay-street',
  subject: 'Z3',
  message: 'Z3: the loop is 14.8 Ω; the limit of K1 is 10 Ω.',
  why: 'The pulse may be too weak.',
  sources: ['ohms-law'],
  fix: '2.5 mm² would pass.',
  place: { file: 'sites/quay-street/site.md', line: 42, column: 13, length: 5, text: '    length: 410 m' },
  related: [],
  values: {},
  ...patch
})

describe('a finding in a terminal', () => {
  it('starts with the place, so that an editor jumps to it', () => {
    expect(findingText(finding(), PLAIN).split('\n')[0]).toBe(
      'sites/quay-street/site.md:42:13  error  wire/loop-over-limit'
    )
  })

  it('underlines the value under its own line', () => {
    const lines = findingText(finding(), PLAIN).split('\n')
    const line = lines.findIndex(one => one.includes('length: 410 m'))
    expect(lines[line + 1]?.indexOf('^')).toBe(lines[line]?.indexOf('410 m'))
    expect(lines[line + 1]?.match(/\^+/u)?.[0]).toHaveLength(5)
  })

  it('cuts a long line round the value and still underlines it', () => {
    const text = `${'x'.repeat(300)} 410 m ${'y'.repeat(300)}`
    const lines = findingText(finding({ place: { file: 'a.md', line: 1, column: 302, length: 5, text } }), PLAIN).split(
      '\n'
    )
    const line = lines.findIndex(one => one.includes('410 m'))
    expect(lines[line]?.length).toBeLessThan(140)
    expect(lines[line + 1]?.indexOf('^')).toBe(lines[line]?.indexOf('410 m'))
  })

  it('shows no excerpt of an empty line', () => {
    expect(
      findingText(finding({ place: { file: 'a.md', line: 1, column: 1, length: 1, text: '' } }), PLAIN)
    ).not.toContain('|')
  })
})

describe('many findings', () => {
  it('are folded after the second where more than four of a site are alike, and all are named', () => {
    const many = Array.from({ length: 20 }, (_, index) => finding({ subject: `Z${index + 1}` }))
    const text = findingsText(many, PLAIN)
    expect(text.match(/error {2}wire/gu)).toHaveLength(2)
    expect(text).toContain('and 18 more in this site: Z3, Z4')
    expect(text).toContain('Z20')
  })

  it('are named by their lines where they are of no thing that has a name', () => {
    const place = (line: number) => ({ file: 'a.md', line, column: 1, length: 1, text: 'x' })
    const many = Array.from({ length: 6 }, (_, index) => finding({ subject: '', place: place(index + 1) }))
    expect(findingsText(many, PLAIN)).toContain('and 4 more in this site: line 3, line 4, line 5, line 6')
  })

  it('are not folded at four', () => {
    const text = findingsText(
      Array.from({ length: 4 }, () => finding()),
      PLAIN
    )
    expect(text.match(/error {2}wire/gu)).toHaveLength(4)
  })

  it('are counted in words', () => {
    expect(countsText([finding(), finding({ severity: 'note' })])).toBe('1 error, 0 warnings, 1 note')
    expect(countsText([])).toBe('0 errors, 0 warnings, 0 notes')
  })
})

describe('findings for an editor', () => {
  it('are one line each, place first, and are not folded', () => {
    const lines = findingsLines(Array.from({ length: 9 }, () => finding())).split('\n')
    expect(lines).toHaveLength(9)
    expect(lines[0]).toBe(
      'sites/quay-street/site.md:42:13: error: Z3: the loop is 14.8 Ω; the limit of K1 is 10 Ω. [wire/loop-over-limit]'
    )
  })
})

describe('a run over the fleet', () => {
  it('has a row a site and says which could not be read', () => {
    const rows = sitesTable([
      { id: 'quay-street', site: {}, findings: [finding(), finding({ severity: 'note' })] },
      { id: 'broken', findings: [finding()] }
    ]).split('\n')
    expect(rows[1]).toMatch(/quay-street\s+1\s+0\s+1$/u)
    expect(rows[2]).toMatch(/broken\s+1\s+0\s+0 {2}could not be read$/u)
  })
})
