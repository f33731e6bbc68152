import { atMost } from '../../domain/within.ts'
import type { Winter } from '../../model/site.ts'
import { inUnit } from '../../units/quantity.ts'
import type { Quantity } from '../../units/quantity.ts'
import { roundedText, showStated } from '../../units/show.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'

const DECIDES = 'The ratings marked on the parts and a trained operator decide.'

export const blowOutPressure: SiteCheck = {
  card: {
    code: 'safety/blow-out-pressure',
    severity: 'error',
    looksAt: 'The air pressure of a blow-out, against the weakest part on the line.',
    why: 'Air under pressure throws a part that fails, and it bursts a part that held water well.',
    sources: ['common-practice'],
    fix: 'Set the regulator no higher than the lowest-rated part on the line.',
    worked: {
      example: 'winter: { method: air, air-pressure: 80 psi, lowest-rated: 50 psi }',
      instead: 'winter: { method: air, air-pressure: 50 psi, lowest-rated: 50 psi }'
    }
  },
  run: ({ site }, report) => {
    const { winter } = site
    if (winter?.method !== 'air') return
    const { airPressure, lowestRated } = winter
    if (airPressure && lowestRated) judge(winter, airPressure, lowestRated, report)
    else reportGap(winter, report)
  }
}

function judge(winter: Winter, air: Quantity<'pressure'>, rated: Quantity<'pressure'>, report: Report): void {
  if (atMost(air.si, rated.si)) return
  const inAirUnit = inUnit(rated, air.unit)
  report({
    subject: '',
    at: at(winter, 'air-pressure'),
    message: `Lines are blown out at ${showStated(air)}; the weakest part is rated ${showStated(rated)}.`,
    fix: `Set the regulator to ${roundedText(inAirUnit, 1)} ${air.unit} or less. ${DECIDES}`,
    values: { air_bar: inUnit(air, 'bar'), rated_bar: inUnit(rated, 'bar') },
    related: [{ at: at(winter, 'lowest-rated'), note: 'the weakest part' }]
  })
}

function reportGap(winter: Winter, report: Report): void {
  const missing = [
    ...(winter.airPressure ? [] : ['the pressure']),
    ...(winter.lowestRated ? [] : ['the rating of the weakest part'])
  ]
  report({
    subject: '',
    at: at(winter, 'method'),
    severity: 'warning',
    message: `Lines are blown out with air, and ${missing.join(' and ')} ${missing.length === 1 ? 'is' : 'are'} not stated.`,
    fix: `Write both: winter: { method: air, air-pressure: 2.5 bar, lowest-rated: 4 bar }, with this site's own figures. ${DECIDES}`
  })
}
