import { isPresent } from '../../base/absent.ts'
import { atLeast } from '../../domain/within.ts'
import { fromSi } from '../../units/quantity.ts'
import { show, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName } from '../wire/subject.ts'
import { usRule } from './us-rule.ts'

const DECIDES = 'The local electrical code, the road authority and the permit come first.'

export const coverShallow: SiteCheck = {
  card: {
    code: 'safety/cover-shallow',
    severity: 'warning',
    looksAt: 'The cover over control cable, against the least cover for the place it lies in.',
    why: 'Spades, aerators and road work reach a shallow cable, and a cut one leaves its valve as it stands.',
    sources: ['nec-300-5', 'common-practice'],
    fix: 'Lay the cable deeper, or protect it as the local electrical code allows.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1 }, wire: [{ size: 1.5 mm², length: 20 m, cover: 300 mm, under: road }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1 }, wire: [{ size: 1.5 mm², length: 20 m, cover: 600 mm, under: road }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { station: id, segment, coverM, leastM, location } of plan.covers) {
      if (!isPresent(coverM) || atLeast(coverM, leastM)) continue
      const station = site.stations.find(one => one.id === id)
      const wire = station?.wire[segment]
      if (!station || !wire?.cover) continue
      const unit = site.units === 'us' ? 'in' : 'mm'
      const figure = (meters: number) => Number(fromSi(meters, unit, 'length').toFixed(1))
      report({
        subject: station.zone,
        at: at(wire, 'cover'),
        message: `${stationName(station)}: ${showStated(wire.cover)} of cover over the cable (${location}); the least is ${show(leastM, 'cover', site.units)}.`,
        fix: `Lay it ${show(leastM, 'cover', site.units)} deep, to the top of the cable, or protect it.${usRule(site, DECIDES)}`,
        values: { [`cover_${unit}`]: figure(coverM), [`least_${unit}`]: figure(leastM) }
      })
    }
  }
}
