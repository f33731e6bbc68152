import type { BatteryPlan } from '../../plan/plan.ts'

/** The visit that should change the cells, to stand behind "change it": "at the start-up visit, by 2026-04-01". */
export function visitText(doAt: BatteryPlan['doAt']): string {
  switch (doAt?.visit) {
    case 'start-up':
      return `at the start-up visit, by ${doAt.on}`
    case 'season-end':
      return `at the visit that ends the season, by ${doAt.on}`
    case 'task':
      return `at the visit for "${doAt.task ?? 'maintenance'}", by ${doAt.on}`
    default:
      return 'at the next visit'
  }
}
