import { MONTH_NAMES } from '../../units/date.ts'
import { show } from '../../units/show.ts'
import type { Controller } from '../../model/site.ts'
import type { ColdestMonth } from '../../plan/power-plan.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const coldShortensLife: SiteCheck = {
  card: {
    code: 'power/cold-shortens-life',
    severity: 'note',
    looksAt:
      'The coldest month in which valves are worked, against what the cells give in the cold and against the working range of the unit.',
    why: 'Cold cells give less and their pulse sags first: a valve opens in the afternoon and does not close at night.',
    sources: ['product-sheet', 'project-rule'],
    fix: 'Fit lithium cells where the sheet allows them, change the set before that month, or do not water in it.',
    worked: {
      example: `season: { from: 01-01, to: 12-31 }
climate:
  mean-high: "1 2 6 10 14 17 19 19 16 11 6 3 °C"
  mean-low: "-7 -6 -2 1 4 7 9 9 6 3 0 -4 °C"`,
      instead: `climate:
  mean-high: "1 2 6 10 14 17 19 19 16 11 6 3 °C"
  mean-low: "-7 -6 -2 1 4 7 9 9 6 3 0 -4 °C"`
    }
  },
  run: ({ site, plan }, report) => {
    for (const controller of site.controllers) {
      const battery = plan.batteries.get(controller.id)
      const coldest = battery?.coldest
      if (!battery || battery.state === 'none' || !coldest) continue
      const says = [...capacityText(coldest), ...rangeText(controller, coldest)]
      if (says.length === 0) continue
      const mean = show(coldest.meanC, 'temperature', site.units)
      report({
        subject: controller.id,
        at: at(controller, 'battery'),
        message: `${controller.id}: it works valves in ${MONTH_NAMES[coldest.month - 1]}, at a mean of ${mean}; ${says.join(', and ')}.`,
        fix: `Change the set before ${MONTH_NAMES[coldest.month - 1]} and measure it under load then, or fit lithium cells if the sheet allows them.`,
        values: { month: coldest.month, mean_c: coldest.meanC, capacity_share: coldest.share }
      })
    }
  }
}

function capacityText({ share, by }: ColdestMonth): readonly string[] {
  if (share >= 1) return []
  const percent = `${Math.round(share * 100)} %`
  return [
    by === 'sheet'
      ? `by its sheet the cells then give ${percent} of their charge`
      : `${percent} of the charge is counted then`
  ]
}

function rangeText({ sheet }: Controller, { meanC }: ColdestMonth): readonly string[] {
  const least = sheet?.working?.from
  return least && meanC < least.si ? [`its sheet allows ${least.value} ${least.unit} and more`] : []
}
