import type { ClimatePlan, EtWay } from '../../plan/climate-plan.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { listed } from '../file/say.ts'

const WAYS: Readonly<Record<EtWay, string>> = {
  'by-hand': 'the figures stated under "reference-et"',
  'daily-weather': 'the weather of the daily record',
  'daily-temperatures': 'the temperatures of the daily record',
  weather: 'the monthly weather',
  'zone-table': 'the zone table',
  temperatures: 'the mean temperatures'
}

export const climateTwice: SiteCheck = {
  card: {
    code: 'water/climate-twice',
    severity: 'note',
    looksAt: 'A climate that gives reference evapotranspiration in more than one way.',
    why: 'Two ways give two figures, and a reader must know which of them the run times rest on.',
    sources: ['project-rule'],
    fix: 'Nothing, if the one named is meant to count. Else take it out of the climate.',
    worked: {
      example: `climate: { reference-et: 14 20 40 62 90 105 112 92 58 32 16 11 mm, mean-high: 7 8 10 13 16 19 21 20 17 13 10 8 °C, mean-low: 2 2 3 4 7 10 12 12 10 7 4 2 °C }`,
      instead: `climate: { mean-high: 7 8 10 13 16 19 21 20 17 13 10 8 °C, mean-low: 2 2 3 4 7 10 12 12 10 7 4 2 °C }`
    }
  },
  run: ({ site, plan: { climate } }, report) => {
    const given = climate.ways.filter(way => !isPartOf(way, climate))
    const [first, ...others] = given
    if (!first || others.length === 0 || !site.climate) return
    const months = climate.months.filter(one => one.way === first).length
    const rest = listed(
      others.map(way => WAYS[way]),
      'and'
    )
    report({
      subject: site.id,
      at: at(site.climate),
      message:
        months === 12
          ? `Reference ET comes from ${WAYS[first]}; ${rest} are given as well and not used.`
          : `Reference ET of ${months === 1 ? '1 month' : `${months} months`} comes from ${WAYS[first]}; ${rest} are used for the others only.`,
      fix: 'Leave it so if that is meant; else take the one out that should not count.',
      values: { ways: given.length, months }
    })
  }
}

/** Temperatures alone are no way of their own where the weather that they belong to is used. */
function isPartOf(way: EtWay, { ways }: ClimatePlan): boolean {
  return (
    (way === 'temperatures' && ways.includes('weather')) ||
    (way === 'daily-temperatures' && ways.includes('daily-weather'))
  )
}
