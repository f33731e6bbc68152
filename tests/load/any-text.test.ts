import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CHECKS } from '../../src/checks/list.ts'
import { wordFault } from '../../src/checks/run.ts'
import { loadRegister } from '../../src/load/register.ts'
import { loadSite } from '../../src/load/site.ts'
import type { Fault } from '../../src/load/loaded.ts'
import { baseRegister, baseSite } from '../support/base-site.ts'

const GOOD = baseSite('private: { gate: 0391 }\n', {
  visits: [['2026-04-10.md', 'on: 2026-04-10\nreadings: [{ station: K1/1, loop: 4.4 ohm }]\n']]
})

/** Bits of text that mean something to YAML, to dates, to units, or to nobody. */
const BITS = [
  ...[
    '\t',
    '\n',
    '\r\n',
    '\r',
    ' ',
    '  ',
    '\n---\n',
    '---',
    '...',
    '# ',
    ': ',
    ':',
    ', ',
    ',,',
    '- ',
    '? ',
    '| ',
    '>\n'
  ],
  ...['{', '}', '[', ']', '"', "'", '&a ', '*a', '!x ', '!!js/function ', '@', '%', '`', '<<: ', '__proto__: '],
  ...['0', '-1', '1e400', '36,5 m', '1,200 ft', '1/2 in', 'NaN', '.inf', '2025-02-30', '24:00', '26:00-27:00'],
  ...['null', '~', 'yes', 'true', 'K9/9', '🌱', 'Ω', '\u0000', '\uFEFF', '\u2028', '水']
]

const bit = fc.constantFrom(...BITS)
const at = fc.double({ min: 0, max: 1, noNaN: true })
const spot = (text: string, share: number) => Math.floor(share * text.length)

/** One thing done to a text: a stretch of it taken out, doubled, moved, or something put in. */
const change: fc.Arbitrary<(text: string) => string> = fc.oneof(
  fc.tuple(at, bit).map(
    ([share, extra]) =>
      (text: string) =>
        insert(text, spot(text, share), extra)
  ),
  fc.tuple(at, fc.nat(40)).map(
    ([share, many]) =>
      (text: string) =>
        cut(text, spot(text, share), many)
  ),
  fc.tuple(at, at, fc.nat(80)).map(([from, to, many]) => (text: string) => {
    const start = spot(text, from)
    return insert(text, spot(text, to), text.slice(start, start + many))
  }),
  fc.tuple(at, bit).map(([share, extra]) => (text: string) => {
    const start = spot(text, share)
    return insert(cut(text, start, extra.length), start, extra)
  }),
  at.map(share => (text: string) => text.slice(0, spot(text, share))),
  fc.constant((text: string) => text.replaceAll('\n', '\r\n'))
)

const insert = (text: string, index: number, extra: string) => text.slice(0, index) + extra + text.slice(index)
const cut = (text: string, index: number, many: number) => text.slice(0, index) + text.slice(index + many)
const changed = (text: string, changes: readonly ((text: string) => string)[]) =>
  changes.reduce((result, one) => one(result), text)

/** Every fault stands somewhere, and a person can be told of it in words that hold nothing of the program's. */
function tellable(faults: readonly Fault[]): void {
  for (const fault of faults) {
    const { line, column, length, text } = fault.place
    expect(line).toBeGreaterThanOrEqual(1)
    expect(column).toBeGreaterThanOrEqual(1)
    expect(length).toBeGreaterThanOrEqual(0)
    expect(text).not.toContain('\n')
    expect(column - 1 + length).toBeLessThanOrEqual(text.length)
    const { message, why, fix } = wordFault('base', fault, CHECKS)
    for (const words of [message, why, fix]) {
      expect(words.trim()).not.toBe('')
      expect(words).not.toMatch(/\bundefined\b|\[object/u)
    }
  }
}

describe('whatever a file holds', () => {
  it('a site is loaded or told of, and nothing throws: a good site with a few things done to it', () => {
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), fc.nat(2), (changes, which) => {
        const files = GOOD.files.map((one, index) =>
          index === which ? { ...one, text: changed(one.text, changes) } : one
        )
        const shared = GOOD.shared.map(one => (which === 2 ? { ...one, text: changed(one.text, changes) } : one))
        const { faults, site } = loadSite({ ...GOOD, files, shared })
        tellable(faults)
        expect(site === undefined).toBe(faults.some(fault => fault.fatal))
      }),
      { numRuns: 200 }
    )
  })

  it('a site is loaded or told of, and nothing throws: any text at all', () => {
    const any = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(bit, { maxLength: 30 }).map(bits => bits.join(''))
    )
    fc.assert(
      fc.property(any, fc.boolean(), (text, fenced) => {
        const file = { file: 'sites/base/site.md', text: fenced ? `---\n${text}\n---\n` : text }
        tellable(loadSite({ id: 'base', files: [file], shared: [] }).faults)
      }),
      { numRuns: 200 }
    )
  })

  it.each([
    '__proto__: ',
    '__proto__: \n__proto__: ',
    'constructor: 1',
    'toString: { a: 1 }',
    'stations: { __proto__: [1] }'
  ])('keys named like the inner parts of an object are told of: %s', keys => {
    const file = { file: 'sites/base/site.md', text: `---\ntitle: X\nunits: us\n${keys}\n---\n` }
    const { faults } = loadSite({ id: 'base', files: [file], shared: [] })
    expect(faults.length).toBeGreaterThan(0)
    tellable(faults)
  })

  it('the same text is told of in the same way each time', () => {
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), changes => {
        const files = GOOD.files.map(one => ({ ...one, text: changed(one.text, changes) }))
        const once = () => JSON.stringify(loadSite({ ...GOOD, files }))
        expect(once()).toBe(once())
      }),
      { numRuns: 50 }
    )
  })

  it('a register is loaded or told of, and nothing throws', () => {
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), changes => {
        tellable(loadRegister({ ...baseRegister, text: changed(baseRegister.text, changes) }).faults)
      }),
      { numRuns: 300 }
    )
  })
})
