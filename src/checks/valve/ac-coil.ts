import { roundedText, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import type { Reading, Site, Station } from '../../model/site.ts'
import { at } from '../at.ts'
import { sortedBy } from '../../base/collections.ts'
import { stationName, stationsInService } from '../wire/subject.ts'

/** Good 24 V AC coils read 20 to 60 Ω: common practice, no source. Some DC latching coils read as much, so ohms alone only warn. */
const AC_LEAST_OHM = 20
const AC_MOST_OHM = 60
/** A reading this near to the stated resistance is the stated coil. Rule of this project, as for the closeout baseline. */
const SAME_COIL_WITHIN = 0.2

export const acCoil: SiteCheck = {
  card: {
    code: 'valve/ac-coil',
    severity: 'error',
    looksAt:
      'A coil that is made for 24 V AC, by its marking, or that reads like one, on a controller that sends pulses.',
    why: 'A 24 V AC coil has no magnet to latch, so a pulse cannot hold it open, and the controller supplies nothing between pulses.',
    sources: ['common-practice', 'project-rule'],
    fix: 'Swap the coil for a DC latching one that fits the valve.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: 24 V AC }, wire: [{ size: 1.5 mm², length: 20 m }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.5 mm², length: 20 m }] }`
    }
  },
  run: ({ site }, report) => {
    for (const station of stationsInService(site)) {
      const marked = station.valves.find(valve => valve.coil === '24 V AC')
      if (marked) {
        report({
          subject: station.zone,
          at: at(marked, 'coil'),
          message: `${stationName(station)}: the coil is marked 24 V AC and ${station.controller} sends DC pulses.`,
          fix: 'Swap the coil for a DC latching one that fits the valve; keep the old one out of the spares.'
        })
        continue
      }
      const reading = lastCoilReading(site, station)
      const ohm = reading?.coil?.si
      if (!reading?.coil || ohm === undefined || !looksAc(ohm, station)) continue
      const stated = station.valves[0]?.coilResistance
      report({
        subject: station.zone,
        at: at(reading, 'coil'),
        severity: 'warning',
        message:
          `${stationName(station)}: the coil reads ${showStated(reading.coil)}, as a 24 V AC coil does` +
          (stated ? `; its sheet says ${showStated(stated)}.` : '.'),
        fix: 'Read the marking on the coil. If it says AC, swap it for a DC latching coil. Ohms alone do not tell the two kinds apart.',
        values: { measured_ohm: ohm, ...(stated ? { stated_ohm: stated.si } : {}) }
      })
    }
  }
}

function looksAc(ohm: number, station: Station): boolean {
  if (ohm < AC_LEAST_OHM || ohm > AC_MOST_OHM) return false
  const stated = station.valves[0]?.coilResistance?.si
  return stated === undefined || Math.abs(ohm / stated - 1) > SAME_COIL_WITHIN
}

/** The latest coil reading, from the station's own list or from a visit. */
export function lastCoilReading(site: Site, station: Station): Pick<Reading, 'coil' | 'on' | 'at'> | undefined {
  const fromVisits = site.visits.flatMap(visit =>
    visit.readings
      .filter(one => one.station === station.id && one.coil)
      .map(one => ({ on: visit.on, coil: one.coil, at: one.at }))
  )
  const all = [...station.readings.filter(one => one.coil), ...fromVisits]
  return sortedBy(all, one => one.on).at(-1)
}

export const ohmText = (ohm: number): string => `${roundedText(ohm, 1)} Ω`
