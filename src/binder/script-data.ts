import type { BoxPageScript, ScriptController } from './pages.ts'
import type { PageContext } from './context.ts'
import { isPresent } from '../base/absent.ts'
import type { SuspendedDays } from '../domain/schedule/suspended.ts'
import type { Controller } from '../model/site.ts'
import { scheduledController } from '../plan/schedules.ts'
import type { IsoDate } from '../units/date.ts'

/** What the page's script needs to say what holds on the day the page is read, rather than on the day it was made. */
export function pageScriptData(controllers: readonly Controller[], { site, plan }: PageContext): BoxPageScript {
  return {
    units: site.units,
    batteries: controllers.flatMap(one => {
      const battery = plan.batteries.get(one.id)
      if (!battery || battery.state === 'none') return []
      return [{ controller: one.id, ...(isPresent(battery.dueOn) ? { due: battery.dueOn } : {}) }]
    }),
    words: {},
    controllers: controllers
      .map(one => ({ one, scheduled: scheduledController(site, one) }))
      .map(({ one, scheduled }) => ({
        controller: one.id,
        units: site.units,
        ...(site.season ? { season: { from: site.season.from, to: site.season.to } } : {}),
        delayBetweenStationsS: scheduled.delayS,
        stepS: scheduled.stepS,
        ...(one.outOfService === undefined ? {} : { outOfService: one.outOfService }),
        programs: scheduled.programs.map(({ id, days, starts, stations, monthlyPercent, from, to, suspensions }) => ({
          id,
          days,
          starts,
          stations: stations.map(({ number, runTime }) => {
            const station = site.stations.find(each => each.controller === one.id && each.number === number)
            return {
              number,
              runTime,
              waters: station ? [station.zone, station.waters].filter(Boolean).join(' · ') : ''
            }
          }),
          ...(monthlyPercent ? { monthlyPercent } : {}),
          ...(from ? { from } : {}),
          ...(to ? { to } : {}),
          ...ahead(suspensions ?? [], plan.on)
        }))
      }))
  }
}

/** Without the reasons and the places in files, which are no matter of a public page. */
function ahead(
  suspensions: readonly SuspendedDays[],
  on: IsoDate
): Pick<ScriptController['programs'][number], 'suspensions'> {
  const left = suspensions.filter(({ to }) => to >= on).map(({ from, to }) => ({ from, to }))
  return left.length === 0 ? {} : { suspensions: left }
}
