import type { BoxPageScript, ScriptController } from './pages.ts'
import type { PageContext } from './context.ts'
import { isPresent } from '../base/absent.ts'
import { DEFAULT_STEP_S } from '../domain/schedule/controller.ts'
import type { Controller, Suspension } from '../model/site.ts'
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
    controllers: controllers.map(one => ({
      controller: one.id,
      units: site.units,
      ...(site.season ? { season: { from: site.season.from, to: site.season.to } } : {}),
      delayBetweenStationsS: one.delayBetweenStations?.si ?? 0,
      stepS: one.sheet?.runTimeStep?.si ?? DEFAULT_STEP_S,
      ...(one.outOfService === undefined ? {} : { outOfService: one.outOfService }),
      programs: one.programs.map(({ id, days, starts, stations, monthlyPercent, from, to, suspensions }) => ({
        id,
        days,
        starts,
        stations: stations.map(({ number, runTime }) => {
          const station = site.stations.find(each => each.controller === one.id && each.number === number)
          return { number, runTime, waters: station ? [station.zone, station.waters].filter(Boolean).join(' · ') : '' }
        }),
        ...(monthlyPercent ? { monthlyPercent } : {}),
        ...(from ? { from } : {}),
        ...(to ? { to } : {}),
        ...ahead([...(one.suspensions ?? []), ...(suspensions ?? [])], plan.on)
      }))
    }))
  }
}

/** Without the reasons and the places in files, which are no matter of a public page. */
function ahead(
  suspensions: readonly Suspension[],
  on: IsoDate
): Pick<ScriptController['programs'][number], 'suspensions'> {
  const left = suspensions.filter(({ to }) => to >= on).map(({ from, to }) => ({ from, to }))
  return left.length === 0 ? {} : { suspensions: left }
}
