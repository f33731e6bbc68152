import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService, stationsInService } from '../wire/subject.ts'

export const tooManyStations: SiteCheck = {
  card: {
    code: 'controller/too-many-stations',
    severity: 'error',
    looksAt: 'The stations wired to a controller, against the outputs on its product sheet.',
    why: 'A station above the last output is not wired to anything.',
    sources: ['product-sheet'],
    fix: 'Correct the station number, or name the product sheet of the controller that is really there.',
    worked: {
      example: `stations:
  - { id: K1/9, zone: Z9, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }`,
      instead: `stations:
  - { id: K1/2, zone: Z2, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }`
    }
  },
  run: ({ site }, report) => {
    for (const controller of controllersInService(site)) {
      const { sheet } = controller
      const outputs = sheet?.stations
      if (!sheet || outputs === undefined) continue
      const own = stationsInService(site).filter(one => one.controller === controller.id)
      for (const station of own.filter(one => one.number > outputs)) {
        report({
          subject: controller.id,
          at: at(station, 'id'),
          message: `${controller.id} has ${outputs} ${outputs === 1 ? 'output' : 'outputs'}; station ${station.id} is beyond the last.`,
          fix: `Use ${outputs === 1 ? 'number 1' : `a number from 1 to ${outputs}`}, or name the product sheet of the unit that is there.`,
          values: { outputs, station: station.number },
          related: [{ at: at(sheet, 'stations'), note: 'the number of outputs' }]
        })
      }
    }
  }
}
