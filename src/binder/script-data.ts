import type { BoxPageScript } from './pages.ts'
import type { PageContext } from './context.ts'
import { isPresent } from '../base/absent.ts'
import { DEFAULT_STEP_S } from '../domain/schedule/controller.ts'
import type { Controller } from '../model/site.ts'

/** What the page's script needs to say what holds on the day the page is read, rather than on the day it was made. */
export function pageScriptData(controllers: readonly Controller[], { site, plan }: PageContext): BoxPageScript {
  return {
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
      programs: one.programs.map(({ id, days, starts, stations, monthlyPercent, from, to }) => ({
        id,
        days,
        starts,
        stations: stations.map(({ number, runTime }) => {
          const station = site.stations.find(each => each.controller === one.id && each.number === number)
          return { number, runTime, waters: station ? [station.zone, station.waters].filter(Boolean).join(' · ') : '' }
        }),
        ...(monthlyPercent ? { monthlyPercent } : {}),
        ...(from ? { from } : {}),
        ...(to ? { to } : {})
      }))
    }))
  }
}
