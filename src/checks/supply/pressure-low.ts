import { isAbsent } from '../../base/absent.ts'
import { atLeast } from '../../domain/within.ts'
import type { PressurePlan } from '../../plan/pressure-plan.ts'
import { takenPa } from '../../plan/pressure-plan.ts'
import { fromSi } from '../../units/quantity.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { stationName, stationsInService } from '../wire/subject.ts'
import { insideAtLeast, partName, pressureAtLeast } from './way-words.ts'

export const pressureLow: SiteCheck = {
  card: {
    code: 'supply/pressure-low',
    severity: 'warning',
    looksAt:
      'The pressure left at the heads or drippers after meter, backflow assembly, pipe, height, valve and regulator, with all that runs beside, against the least on which they work.',
    why: 'With too little pressure sprays fall short and drops grow large, so that rings stay dry; drippers give unequal amounts.',
    sources: ['hazen-williams', 'site-record', 'project-rule'],
    fix: 'Run fewer zones at once, split the zone, or lay a wider pipe where most of the pressure goes.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1 }
  - id: K1/2
    zone: Z2
    valve: { box: VB2, normal-flow: 28 L/min, loss: 0.3 bar }
    pipe: [{ inside: 16 mm, material: plastic, length: 40 m, rise: 3 m }]
    devices: { kind: spray, flow: 28 L/min, pressure: 2.1 bar }`,
      instead: `stations:
  - { id: K1/1, zone: Z1 }
  - id: K1/2
    zone: Z2
    valve: { box: VB2, normal-flow: 28 L/min, loss: 0.3 bar }
    pipe: [{ inside: 26 mm, material: plastic, length: 40 m, rise: 3 m }]
    devices: { kind: spray, flow: 28 L/min, pressure: 2.1 bar }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const pressure = plan.pressures.get(station.id)
      if (pressure === undefined || isAbsent(pressure) || isAbsent(pressure.neededPa)) continue
      const { leftPa, neededPa } = pressure
      if (atLeast(leftPa, neededPa)) continue
      const [unit, key, places] = site.units === 'us' ? (['psi', 'psi', 1] as const) : (['bar', 'bar', 2] as const)
      const [left, needed] = [leftPa, neededPa].map(pa => fromSi(pa, unit, 'pressure')) as [number, number]
      const [leftText, neededText] = toldApart(left, needed, places)
      report({
        subject: station.zone,
        at: at(station, 'devices', 'pressure'),
        message:
          (leftPa > 0
            ? `${stationName(station)}: ${leftText}\u00a0${unit} is left at the devices, which need ${neededText}\u00a0${unit}.`
            : `${stationName(station)}: the pressure is used up before the devices, which need ${neededText}\u00a0${unit}.`) +
          `${besideText(pressure)}${governText(pressure, site.units)}`,
        fix: howToPass(pressure, site.units),
        values: {
          [`left_${key}`]: left,
          [`needed_${key}`]: needed,
          [`short_${key}`]: needed - left,
          [`supply_${key}`]: fromSi(pressure.start.pressurePa, unit, 'pressure'),
          ...passingValues(pressure, site.units)
        }
      })
    }
  }
}

function besideText({ beside }: PressurePlan): string {
  if (beside.length === 0) return ''
  return ` ${beside.length > 4 ? `${beside.length} more stations` : beside.join(', ')} ${beside.length === 1 ? 'runs' : 'run'} beside it.`
}

function governText({ parts, governing }: PressurePlan, units: UnitSystem): string {
  const part = governing === undefined ? undefined : parts[governing]
  if (!part) return ''
  const height = part.liftPa > part.lossPa ? ', by height' : ''
  return ` Most goes in ${partName(part)}: ${show(takenPa(part), 'pressure-loss', units)}${height}.`
}

function howToPass({ passing, parts }: PressurePlan, units: UnitSystem): string {
  const part = passing?.wider && parts[passing.wider.index]
  const wider =
    part && passing.wider
      ? `an inside diameter of ${insideAtLeast(passing.wider.insideM, units)} in ${partName(part)}`
      : ''
  const start = passing?.startPa === undefined ? '' : `${pressureAtLeast(passing.startPa, units)} at the supply`
  const ways = [wider, start].filter(Boolean).join(', or ')
  if (ways === '')
    return 'No wider pipe alone and no more pressure would do: see whether the regulator is set too low, or split the zone.'
  return `It would take ${ways}. Fewer heads on the zone help as well.`
}

function passingValues({ passing }: PressurePlan, units: UnitSystem): Record<string, number> {
  const [pressure, length] = units === 'us' ? (['psi', 'in'] as const) : (['bar', 'mm'] as const)
  const values: Record<string, number> = {}
  if (passing?.wider) values[`passing_inside_${length}`] = fromSi(passing.wider.insideM, length, 'length')
  if (passing?.startPa !== undefined)
    values[`passing_supply_${pressure}`] = fromSi(passing.startPa, pressure, 'pressure')
  return values
}
