import { isAbsent } from '../../base/absent.ts'
import type { Station } from '../../model/site.ts'
import { uniformity } from '../../domain/water/uniformity.ts'
import { show } from '../../units/show.ts'
import type { UnitSystem } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName, stationsInService } from '../wire/subject.ts'

export const efficiencyAndUniformity: SiteCheck = {
  card: {
    code: 'water/efficiency-and-uniformity',
    severity: 'error',
    looksAt: 'A zone for which an application efficiency stands beside a distribution uniformity or a test with cans.',
    why: 'Each already makes good for the water that misses the roots. Counted together the zone would run too long, so its need is not computed until one is left.',
    sources: ['ia-scheduling', 'wucols-guide', 'project-rule'],
    fix: 'Keep the uniformity for sprays and rotors that were tested, the efficiency for drip.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, devices: { kind: spray, flow: 42 L/min }, area: 110 m², plants: { factor: 0.6 }, efficiency: 70 %, uniformity: 65 % }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, devices: { kind: spray, flow: 42 L/min }, area: 110 m², plants: { factor: 0.6 }, uniformity: 65 % }`
    }
  },
  run: ({ site }, report) => {
    for (const station of stationsInService(site)) {
      if (!station.efficiency || !(station.uniformity ?? station.catchCans)) continue
      const share = show(station.efficiency.si, 'percent', site.units)
      report({
        subject: station.zone,
        at: at(station, 'efficiency'),
        message: `${stationName(station)}: an efficiency of ${share} is stated, and ${uniformityText(station, site.units)}. They stand for the same loss.`,
        fix: isDrip(station)
          ? 'Keep "efficiency:", as it is drip, and take the uniformity out.'
          : 'Keep the uniformity, which was measured on the ground, and take "efficiency:" out.',
        values: { efficiency_percent: station.efficiency.si * 100 }
      })
    }
  }
}

function uniformityText({ uniformity: stated, catchCans }: Station, units: UnitSystem): string {
  const cans = catchCans && uniformity(catchCans.catches.map(one => one.si))
  if (cans && !isAbsent(cans)) return `cans show a uniformity of ${show(cans.lowQuarter, 'percent', units)}`
  return stated ? `a uniformity of ${show(stated.si, 'percent', units)}` : 'a test with cans'
}

const isDrip = ({ devices }: Station): boolean => /drip|emitter/iu.test(devices?.kind ?? '')
