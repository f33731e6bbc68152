import { groupBy, sortedBy } from '../../base/collections.ts'
import { atMost } from '../../domain/within.ts'
import type { Recorded, Site } from '../../model/site.ts'
import type { NightPlan } from '../../plan/plan.ts'
import { daysInMonth, yearOf } from '../../units/date.ts'
import { roundedText } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { monthName } from './month-name.ts'

/** More names than this are told as a number. */
const NAMES_TOLD = 6

export const needExceedsWindow: SiteCheck = {
  card: {
    code: 'water/need-exceeds-window',
    severity: 'warning',
    looksAt:
      'The minutes that the plants need on the fullest watering night of each month, zone after zone, against the hours allowed. Run times set are not looked at, only which zones water on the night.',
    why: 'In a month in which the need does not fit, every zone goes short, or water runs outside the hours and is fined.',
    sources: ['site-record', 'wucols-guide', 'ia-scheduling', 'project-rule'],
    fix: 'Add a watering night, let more zones run at once where the supply gives it, raise the efficiency of the zones, or ask for more hours.',
    worked: {
      example: `supplies: [{ id: S1, kind: potable, zones-at-once: 1 }]
watering-rules: [{ authority: invented water board, window: 04:00-05:00 }]`,
      instead: `supplies: [{ id: S1, kind: potable, zones-at-once: 1 }]
watering-rules: [{ authority: invented water board, window: 03:00-05:00 }]`
    }
  },
  run: ({ site, plan, on }, report) => {
    for (const rows of groupBy(plan.nights, one => `${one.of} ${one.id}`).values()) {
      const short = rows.filter(one => !atMost(one.needS, one.allowedS))
      const worst = sortedBy(short, one => one.allowedS - one.needS)[0]
      if (!worst) continue
      const [needMin, allowedMin] = [worst.needS / 60, worst.allowedS / 60]
      const [need, allowed] = toldApart(needMin, allowedMin, 0)
      const month = monthName(worst.month)
      report({
        subject: worst.id,
        at: placeOf(worst, site),
        message:
          `${worst.id}: on a watering night in ${month} the plants need ${need}\u00a0min, ${inTurn(worst)}; ` +
          `the hours allowed give ${allowed}\u00a0min, ${roundedText(needMin - allowedMin, 1)}\u00a0min too few.${alsoShort(short, worst)}${notKnown(worst)}`,
        fix: howToFit(worst, daysInMonth(yearOf(on), worst.month)),
        values: { need_min: needMin, window_min: allowedMin, short_min: needMin - allowedMin, month }
      })
    }
  }
}

function placeOf({ of, id }: NightPlan, site: Site) {
  const records: readonly (Recorded & { readonly id: string })[] = of === 'supply' ? site.supplies : site.controllers
  const record = records.find(one => one.id === id) ?? site
  return at(record, ...(of === 'supply' ? ['zones-at-once'] : ['programs']))
}

function inTurn({ stations, zonesAtOnce }: NightPlan): string {
  if (stations.length === 1) return 'for 1 zone'
  const zones = `${stations.length} zones`
  return zonesAtOnce === 1 ? `${zones} one at a time` : `${zones}, ${zonesAtOnce} at a time`
}

function alsoShort(short: readonly NightPlan[], worst: NightPlan): string {
  const others = sortedBy(
    short.filter(one => one !== worst),
    one => one.month
  ).map(one => monthName(one.month))
  return others.length === 0 ? '' : ` It is short in ${others.join(', ')} as well.`
}

function notKnown({ notKnown: ids }: NightPlan): string {
  if (ids.length === 0) return ''
  return ` The need of ${ids.length > NAMES_TOLD ? `${ids.length} more stations` : ids.join(', ')} is not known and not in it.`
}

/** Nights that spread the need thin enough, by the week, and how much less the night must hold until then. */
function howToFit(night: NightPlan, daysOfMonth: number): string {
  const { needS, allowedS, nights } = night
  const perWeek = Math.max(1, Math.round((nights * 7) / daysOfMonth))
  const wanted = Math.ceil((perWeek * needS) / allowedS - 1e-9)
  const percent = Math.ceil((1 - allowedS / needS) * 100 - 1e-9)
  const spread =
    wanted <= 7 ? `Water on ${wanted} nights a week in place of ${perWeek}` : 'Seven nights a week would not do'
  return `${spread}${otherWay(night)}, or give each zone ${percent}\u00a0% less than it needs.`
}

function otherWay({ of, stations }: NightPlan): string {
  if (stations.length === 1) return ', split the zone between two'
  return of === 'supply'
    ? ', let another zone run at once if the supply gives it'
    : ', move zones to another controller'
}
