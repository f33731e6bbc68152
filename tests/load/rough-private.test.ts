import { describe, expect, it } from 'vitest'
import { roughPrivateWords } from '../../src/load/rough-private.ts'

const words = (...lines: readonly string[]): string[] => roughPrivateWords({ text: lines.join('\n') })

describe('what a file that cannot be understood may hold in private', () => {
  it.each([
    ['a line below the key', ['private:', '  gate: code 4711']],
    ['a quote that is not closed', ['private:', '  gate: "code 4711', 'boxes: []']],
    ['a list', ['private:', '  - code 4711']],
    ['brackets on one line', ['boxes: [{ id: VB1, private: { gate: code 4711 }, where: north']],
    ['brackets over lines', ['private: {', '  gate: code 4711,', '  more: [']],
    ['a record of a list', ['contacts:', '  - role: owner', '    private:', '      door: code 4711', '  - role: x']],
    ['Windows line ends', ['private:\r', '  gate: code 4711\r']],
    ['a telephone', ['contacts:', '  - { role: maintainer, phone: code 4711, name: "A }']]
  ])('%s', (_, lines) => {
    expect(words(...lines)).toContain('code 4711')
  })

  it('nothing that stands after the key, on its own level', () => {
    expect(words('private:', '  gate: code 4711', 'title: "Verge', 'boxes: [')).toEqual(['code 4711'])
  })

  it('no telephone that is called public', () => {
    expect(words('  - { role: owner, phone: 0100 4711, public: yes')).toEqual([])
  })
})
