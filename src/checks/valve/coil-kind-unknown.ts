import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { runsInService } from '../wire/subject.ts'

export const coilKindUnknown: SiteCheck = {
  card: {
    code: 'valve/coil-kind-unknown',
    severity: 'warning',
    looksAt: 'A valve whose coil kind is not stated.',
    why: 'Whoever replaces the coil has to know whether it is DC latching with two or three leads; the wrong kind does not move or burns.',
    sources: ['project-rule'],
    fix: 'Read the marking on the coil and write it down.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1 }, wire: [{ size: 1.5 mm², length: 20 m }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }`
    }
  },
  run: ({ site }, report) => {
    for (const { subject, name, valves } of runsInService(site)) {
      for (const valve of valves) {
        if (valve.coil !== undefined && valve.coil !== 'not known') continue
        report({
          subject,
          at: at(valve, 'coil'),
          message: `${name}: the coil kind is not stated.`,
          fix: 'Read the marking, then write "coil: DC latching 2-wire", "DC latching 3-wire" or "24 V AC".'
        })
      }
    }
  }
}
