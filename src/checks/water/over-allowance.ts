import { isAbsent } from '../../base/absent.ts'
import { atMost } from '../../domain/within.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText } from '../../units/show.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'

export const overAllowance: SiteCheck = {
  card: {
    code: 'water/over-allowance',
    severity: 'warning',
    looksAt:
      'The water that the zones are estimated to use in a year, and that the programs give as they stand, against the water allowance of the site.',
    why: 'Where an ordinance sets the allowance, a landscape that is estimated above it does not comply; above a volume that was agreed, the rest costs more or is not there.',
    sources: ['ca-title-23-490', 'site-record', 'project-rule'],
    fix: 'Plant what needs less, raise the efficiency, or bring the programs down. The authority decides what counts.',
    worked: {
      example: `budget: { form: annual volume, annual: 20 m³ }`,
      instead: `budget: { form: annual volume, annual: 400 m³ }`
    }
  },
  run: ({ site, plan }, report) => {
    const { budget } = site
    const { allowanceM3, estimatedM3, programmedM3, flowNotStated } = plan.budget
    if (!budget || isAbsent(allowanceM3)) return
    const isOrdinance = budget.form === 'ordinance 2015'
    const tell = (usedM3: number, what: 'estimated' | 'programmed'): void => {
      if (atMost(usedM3, allowanceM3)) return
      const [unit, key, places] = site.units === 'us' ? (['gal', 'gal', 0] as const) : (['m³', 'm3', 1] as const)
      const [used, allowed] = [usedM3, allowanceM3].map(m3 => fromSi(m3, unit, 'volume')) as [number, number]
      const [usedText, allowedText] = toldApart(used, allowed, places)
      const percent = roundedText((used / allowed - 1) * 100, 0)
      const reported: Parameters<Report>[0] = {
        subject: '',
        at: at(budget, 'form'),
        message:
          what === 'estimated'
            ? `The zones are estimated to use ${usedText}\u00a0${unit} a year; the allowance is ${allowedText}\u00a0${unit}. That is ${percent} % over.`
            : `The programs give ${usedText}\u00a0${unit} a year; the allowance is ${allowedText}\u00a0${unit}.${notStated(flowNotStated)}`,
        fix:
          what === 'estimated'
            ? 'Plant what needs less, or raise the efficiency of the zones that use most. See whether factors, efficiencies and areas are right, and which areas count in full.'
            : `Bring the programs down by ${roundedText((1 - allowed / used) * 100, 0)} % over the year, the largest zones first.`,
        severity: what === 'estimated' && isOrdinance ? 'error' : 'warning',
        values: { [`${what}_${key}`]: used, [`allowance_${key}`]: allowed, over_percent: (used / allowed - 1) * 100 }
      }
      report(reported)
    }
    if (!isAbsent(estimatedM3)) tell(estimatedM3, 'estimated')
    tell(programmedM3, 'programmed')
  }
}

const notStated = (stations: readonly string[]): string =>
  stations.length === 0 ? '' : ` What ${stations.join(', ')} draws is not in it.`
