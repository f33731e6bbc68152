import { isPresent } from '../../base/absent.ts'
import { darkestMonths, winterNoonSunDeg } from '../../domain/power/noon-sun.ts'
import type { Controller, Site } from '../../model/site.ts'
import type { Plan } from '../../plan/plan.ts'
import type { SolarMonth } from '../../plan/power-plan.ts'
import { MONTHS, fromEpochDay, monthOf } from '../../units/date.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

/**
 * Below this height a flat panel gets less than a third of what the sun sends (the sine of 20° is 0.34), and every hedge and curb throws
 * its shade over it. Rule of this project, for want of a published one.
 */
const LOW_NOON_SUN_DEG = 20

/** Words that say that a place lies in the shade. */
const SHADE =
  /\b(shade|shaded|shady|overgrown)\b|\b(under|below|beneath) (the |a |an )?([\w-]+ )?(trees?|canopy|hedge|bridge|awning|shrubs?)\b/iu

export const solarDoubtful: SiteCheck = {
  card: {
    code: 'power/solar-doubtful',
    severity: 'note',
    looksAt:
      'A controller on a solar panel: what the panel gives month by month against what is drawn, where the sheet says both; else whether it is said to lie in the shade, or waters in months when the noon sun stays low.',
    why: 'A panel in the shade or under a low sun does not refill the cell, and nothing tells until a valve stays as it is.',
    sources: ['fao-56', 'liu-jordan', 'erbs-1982', 'project-rule'],
    fix: 'Measure the cell under load at the darkest time of the year, and move the panel or add a battery if it sags.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, where: on the post under the plane tree, sheet: _shared/sheets/plain.md, power: solar }`,
      instead: `controllers:
  - { id: K1, box: VB1, where: on the post in the open, sheet: _shared/sheets/plain.md, power: solar }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of controllersInService(site)) {
      if (controller.power !== 'solar') continue
      const solar = plan.batteries.get(controller.id)?.solar
      const months = solar && isPresent(solar.months) ? solar.months : undefined
      const shade = solar?.shadeStated === true ? undefined : shadeOf(site, controller)
      const winter = months ? undefined : winterOf(site, controller, plan)
      const doubt = months?.filter(({ verdict }) => verdict !== 'enough') ?? []
      const facts = [
        ...(shade === undefined ? [] : [`"${shade}" says that it is shaded`]),
        ...(winter ? [winter.text] : []),
        ...doubtTexts(doubt)
      ]
      if (facts.length === 0) continue
      report({
        subject: controller.id,
        at: at(controller, 'power'),
        message: `${controller.id} runs from a solar panel: ${facts.join('; ')}.`,
        fix: 'Measure the cell under load in the darkest month. If it sags, move the panel into the open or fit a battery.',
        values: {
          ...(winter ? { noon_sun_deg: winter.noonSunDeg } : {}),
          ...(doubt.length > 0 ? { months_in_doubt: doubt.length, least_ratio: leastRatio(doubt) } : {})
        }
      })
    }
  }
}

/** "it draws more than the panel gives in Dec; it draws more than half of it in Nov and Jan". */
function doubtTexts(doubt: readonly SolarMonth[]): readonly string[] {
  const named = (verdict: SolarMonth['verdict']) =>
    doubt.filter(one => one.verdict === verdict).map(({ month }) => MONTHS[month - 1])
  const [little, unsure] = [named('too little'), named('in doubt')]
  const overcast = doubt.some(({ by }) => by === 'overcast') ? ', every day counted as overcast' : ''
  return [
    ...(little.length > 0 ? [`it draws more than the panel gives in ${little.join(', ')}${overcast}`] : []),
    ...(unsure.length > 0 ? [`it draws more than half of what the panel gives in ${unsure.join(', ')}${overcast}`] : [])
  ]
}

const leastRatio = (doubt: readonly SolarMonth[]): number =>
  Math.min(...doubt.map(({ yieldMah, drawnMah }) => yieldMah / drawnMah))

function shadeOf(site: Site, { where, box: id }: Controller): string | undefined {
  const box = site.boxes.find(one => one.id === id)
  return [where, box?.where, ...(box?.hazards ?? [])].find(text => text !== undefined && SHADE.test(text))
}

/** The first of the dark months in which it waters, where the sun stays low in them. */
function winterOf(
  site: Site,
  { id }: Controller,
  plan: Plan
): { readonly text: string; readonly noonSunDeg: number } | undefined {
  const latitude = site.location?.latitude
  if (latitude === undefined) return undefined
  const noonSunDeg = winterNoonSunDeg(latitude)
  if (noonSunDeg >= LOW_NOON_SUN_DEG) return undefined
  const dark = darkestMonths(latitude)
  const months = new Set((plan.schedules.get(id)?.days ?? []).map(({ day }) => monthOf(fromEpochDay(day))))
  const wet = dark.filter(month => months.has(month)).map(month => MONTHS[month - 1])
  if (wet.length === 0) return undefined
  const sun = noonSunDeg <= 0 ? 'does not rise' : `stands only ${roundedText(noonSunDeg, 0)}° high at noon`
  return { text: `it waters in ${wet.join(', ')}, and on the shortest day the sun ${sun}`, noonSunDeg }
}
