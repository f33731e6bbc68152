import { describe, expect, it } from 'vitest'
import { withoutPrivate } from '../../src/checks/without-private.ts'
import type { Finding } from '../../src/diagnostics/finding.ts'

const finding = (message: string, text: string): Finding => ({
  code: 'box/no-ties',
  severity: 'note',
  site: 'quay',
  subject: 'VB1',
  message,
  why: 'So.',
  sources: [],
  fix: 'Mend it.',
  place: { file: 'site.md', line: 4, column: 10, length: 5, text },
  related: [],
  values: {}
})
const words = [{ at: { file: 'site.md', path: [] }, label: 'keys', text: 'depot locker 14, code 7719' }]
const said = (message: string, text: string) => {
  const [one] = withoutPrivate([finding(message, text)], words)
  return [one?.message, one?.place.text]
}

describe('a finding that is said aloud', () => {
  it('has dots for a private word in the line it shows, one for each sign', () => {
    expect(said('x', '  where: gate, code 7719')).toEqual(['x', '  where: gate, •••••••••'])
    expect(said('x', 'Depot Locker 14 it is')).toEqual(['x', '••••••••••••••• it is'])
  })

  it('has dots for the word in its sentences', () => {
    expect(said('"gate 7719" is no tag.', '')).toEqual(['"gate ••••" is no tag.', ''])
  })

  it('shows nothing of a line where the word is spelled in another way', () => {
    expect(said('x', 'where: 77-19')).toEqual(['x', '•••••• •••••'])
  })

  it('leaves all else as it is', () => {
    expect(said('17719 steps', 'length: 177190 mm')).toEqual(['17719 steps', 'length: 177190 mm'])
  })

  it('is looked through once where thousands show one and the same long line', () => {
    const line = `window: [${'x, '.repeat(9000)}code 7719]`
    const began = process.cpuUsage()
    const told = withoutPrivate(
      Array.from({ length: 9000 }, (_, n) => finding(`${n} is no time.`, line)),
      words
    )
    const { user, system } = process.cpuUsage(began)
    expect(told.every(one => one.place.text.endsWith('•••• ••••]') || one.place.text.endsWith('•••••••••]'))).toBe(true)
    // One look takes some milliseconds, nine thousand took ten seconds.
    expect((user + system) / 1e6).toBeLessThan(4)
  })
})
