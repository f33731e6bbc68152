import { sum } from '../../base/collections.ts'
import { pipeVolumeM3 } from '../../domain/supply/drained-volume.ts'
import { atMost } from '../../domain/within.ts'
import type { Devices, Site, Station } from '../../model/site.ts'
import type { SchedulePlan } from '../../plan/plan.ts'
import { LEAST_DROP_M } from '../../reference/pipe.ts'
import { fromSi } from '../../units/quantity.ts'
import { roundedText, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName, stationsInService } from '../wire/subject.ts'

export const lowHeadDrainage: SiteCheck = {
  card: {
    code: 'supply/low-head-drainage',
    severity: 'warning',
    looksAt: 'Heads that lie more than 1 ft (0.3 m) below the highest part of their pipe and have no check valves.',
    why: 'After each cycle the pipe empties through the lowest heads: water runs off, the ground there stays wet, and air hammers in the pipe at the next start. More cycles drain it more often.',
    sources: ['common-practice', 'project-rule'],
    fix: 'Fit heads with check valves, or one check valve in the pipe, good for the height; or split the zone along the slope.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1 }
  - { id: K1/2, zone: Z2, pipe: [{ inside: 26 mm, material: plastic, length: 30 m }], devices: { kind: spray, drop: 2.5 m, check-valves: no } }`,
      instead: `stations:
  - { id: K1/1, zone: Z1 }
  - { id: K1/2, zone: Z2, pipe: [{ inside: 26 mm, material: plastic, length: 30 m }], devices: { kind: spray, drop: 2.5 m, check-valves: yes } }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const { devices, pipe = [] } = station
      if (!devices?.drop || devices.checkValves === true || atMost(devices.drop.si, LEAST_DROP_M)) continue
      const volumeM3 = sum(pipe.map(({ inside, length }) => pipeVolumeM3(inside.si, length.si)))
      const cycles = cyclesOfMonth(station, site, plan.schedules.get(station.controller))
      const [unit, key] = site.units === 'us' ? (['gal', 'gal'] as const) : (['L', 'l'] as const)
      const volume = fromSi(volumeM3, unit, 'volume')
      const month = volume * cycles
      report({
        subject: station.zone,
        at: at(station, 'devices', 'drop'),
        message: `${stationName(station)}: the lowest heads lie ${showStated(devices.drop)} below the top of their pipe; ${valvesText(devices)}.${drainsText(volume, month, cycles, unit)}`,
        fix: `Fit check valves that hold ${showStated(devices.drop)} of water, or split the zone along the slope.`,
        values: {
          drop_m: devices.drop.si,
          ...(volume > 0 ? { [`drains_${key}`]: volume, cycles_in_month: cycles, [`month_${key}`]: month } : {})
        }
      })
    }
  }
}

const valvesText = ({ checkValves }: Devices): string =>
  checkValves === false ? 'they have no check valves' : 'whether they have check valves is not stated'

function drainsText(volume: number, month: number, cycles: number, unit: string): string {
  if (!(volume > 0)) return ' Write their pipe to see how much drains.'
  const once = ` Up to ${roundedText(volume, 1)}\u00a0${unit} drains after each cycle`
  return cycles > 0 ? `${once}, ${roundedText(month, 0)}\u00a0${unit} in the month with most cycles.` : `${once}.`
}

/** Cycles in the month that has most of them. */
function cyclesOfMonth({ number, controller }: Station, site: Site, schedule: SchedulePlan | undefined): number {
  const programs = site.controllers.find(one => one.id === controller)?.programs ?? []
  const rows = (schedule?.months ?? []).flatMap(row => {
    const program = programs.find(one => one.id === row.program)
    const entry = program?.stations.find(one => one.number === number)
    if (row.station !== number || !program || !entry) return []
    return [{ minutes: row.minutes, days: row.days, cycles: program.starts.length * entry.runTime.cycles }]
  })
  const byMonth = Array.from({ length: 12 }, (_, month) =>
    sum(rows.map(({ minutes, days, cycles }) => ((minutes[month] ?? 0) > 0 ? (days[month] ?? 0) * cycles : 0)))
  )
  return Math.max(0, ...byMonth)
}
