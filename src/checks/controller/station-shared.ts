import { groupBy } from '../../base/collections.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationsInService } from '../wire/subject.ts'

export const stationShared: SiteCheck = {
  card: {
    code: 'controller/station-shared',
    severity: 'error',
    looksAt: 'One output of a controller that two zones claim.',
    why: 'Both would water together at twice the flow, or one of the two is not wired as the binder says.',
    sources: ['project-rule'],
    fix: 'Give each zone its own output. Where two valves really share one, list both under "valve:" of one station.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }
  - { id: K1/1, zone: Z2, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }
  - { id: K1/2, zone: Z2, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }`
    }
  },
  run: ({ site }, report) => {
    for (const [id, claims] of groupBy(stationsInService(site), station => station.id)) {
      const [first, ...others] = claims
      if (!first) continue
      // The same zone written twice is a name that stands twice, and is told as that.
      for (const other of others.filter(one => one.zone !== first.zone)) {
        report({
          subject: id,
          at: at(other, 'id'),
          message: `Output ${id} is claimed by ${first.zone} and by ${other.zone}.`,
          fix: 'Correct one of the two numbers. Where two valves really hang on one output, list both under "valve:" of one station.',
          related: [{ at: at(first, 'id'), note: `claimed here by ${first.zone}` }]
        })
      }
    }
  }
}
