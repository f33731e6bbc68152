import type { Controller, ProductSheet, Site } from '../../model/site.ts'
import type { At } from '../../diagnostics/finding.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService, stationsInService } from '../wire/subject.ts'

export const notOnItsSheet: SiteCheck = {
  card: {
    code: 'controller/not-on-its-sheet',
    severity: 'error',
    looksAt:
      'A coil of three leads, a master valve, a pump relay or sensors wired to a controller whose product sheet says that it has no output or terminal for it.',
    why: 'What the unit has no terminal for is wired to a terminal that is meant for something else.',
    sources: ['product-sheet'],
    fix: 'Fit a unit that has it, or correct the sheet.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/two-leads.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 3-wire } }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/two-leads.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire } }`
    }
  },
  run: ({ site }, report) => {
    for (const controller of controllersInService(site)) {
      const { id, sheet } = controller
      if (!sheet) continue
      for (const { what, key, where } of missing(site, controller, sheet)) {
        report({
          subject: id,
          at: where,
          message: `${id}: ${what}.`,
          fix: 'Fit a unit that has it, take it off, or correct the product sheet where it is mistaken.',
          related: [{ at: at(sheet, key), note: 'what the sheet states' }]
        })
      }
    }
  }
}

interface Missing {
  readonly what: string
  readonly key: string
  readonly where: At
}

function missing(site: Site, controller: Controller, sheet: ProductSheet): Missing[] {
  const { id, masterValve, pumpStart } = controller
  const three = stationsInService(site)
    .filter(one => one.controller === id)
    .flatMap(one => one.valves.map(valve => ({ zone: one.zone, valve })))
    .find(({ valve }) => valve.coil === 'DC latching 3-wire')
  const sensors = site.sensors.filter(one => one.controller === id && one.wired === 'own terminals')
  const most = sheet.sensorInputs
  const [, second] = sensors
  return [
    ...(three && sheet.threeLead === false
      ? [
          {
            what: `the coil of ${three.zone} has three leads, and its sheet says that it works two`,
            key: 'three-lead',
            where: at(three.valve, 'coil')
          }
        ]
      : []),
    ...(masterValve && sheet.masterOutput === false
      ? [
          {
            what: 'a master valve is wired, and its sheet says that it has no output for one',
            key: 'master-output',
            where: at(masterValve)
          }
        ]
      : []),
    ...(pumpStart === true && sheet.pumpOutput === false
      ? [
          {
            what: 'a pump is started, and its sheet says that it has no output for a pump relay',
            key: 'pump-output',
            where: at(controller, 'pump-start')
          }
        ]
      : []),
    ...(most !== undefined && second && sensors.length > most
      ? [
          {
            what: `${sensors.length} sensors are wired to terminals of their own; its sheet gives it ${most}`,
            key: 'sensor-inputs',
            where: at(sensors[most] ?? second, 'wired')
          }
        ]
      : [])
  ]
}
