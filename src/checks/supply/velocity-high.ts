import { isAbsent } from '../../base/absent.ts'
import { leastInsideM } from '../../domain/supply/pipe-loss.ts'
import { atMost } from '../../domain/within.ts'
import type { Site, Station } from '../../model/site.ts'
import type { Plan } from '../../plan/plan.ts'
import type { PressurePart } from '../../plan/pressure-plan.ts'
import { fromSi } from '../../units/quantity.ts'
import { show } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { stationName, stationsInService } from '../wire/subject.ts'
import { insideAtLeast, partName } from './way-words.ts'

export const velocityHigh: SiteCheck = {
  card: {
    code: 'supply/velocity-high',
    severity: 'warning',
    looksAt:
      'How fast the water goes in each length of pipe at the most that is drawn through it: 5 ft/s (1.52 m/s) in plastic, 7 ft/s (2.13 m/s) in metal.',
    why: 'The faster the water, the harder the blow when a valve shuts; latching valves shut at once. Joints and fittings tire, and friction takes the pressure.',
    sources: ['osu-912', 'tac-344-62'],
    fix: 'Lay a wider pipe, split the zone, or move start times apart so that less runs at once.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1 }
  - { id: K1/2, zone: Z2, valve: { normal-flow: 28 L/min }, pipe: [{ inside: 19 mm, material: plastic, length: 12 m }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1 }
  - { id: K1/2, zone: Z2, valve: { normal-flow: 28 L/min }, pipe: [{ inside: 20 mm, material: plastic, length: 12 m }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { subject, name, part, pipe, flowM3s, velocity } of tooFast(site, plan)) {
      const [speed, flowUnit, speedKey] =
        site.units === 'us' ? (['ft/s', 'gpm', 'ft_per_s'] as const) : (['m/s', 'L/min', 'm_per_s'] as const)
      const [fast, most] = [velocity, pipe.mostMPerS].map(si => fromSi(si, speed, 'speed')) as [number, number]
      const [fastText, mostText] = toldApart(fast, most, site.units === 'us' ? 1 : 2)
      const plastic = pipe.segment.material === 'plastic'
      const least = leastInsideM(flowM3s, pipe.mostMPerS)
      report({
        subject,
        at: at(pipe.segment, 'inside'),
        message: `${name}: in ${partName(part)} the water goes ${fastText}\u00a0${speed} at ${show(flowM3s, 'flow', site.units)}; ${mostText}\u00a0${speed} is the most for ${plastic ? 'plastic' : 'metal'} pipe.`,
        fix: `Draw less at once, or use an inside diameter of ${insideAtLeast(least, site.units)} or more.`,
        sources: plastic ? ['osu-912'] : ['tac-344-62'],
        values: {
          [`velocity_${speedKey}`]: fast,
          [`limit_${speedKey}`]: most,
          [`flow_${flowUnit === 'gpm' ? 'gpm' : 'l_per_min'}`]: fromSi(flowM3s, flowUnit, 'flow'),
          least_inside_mm: least * 1000
        }
      })
    }
  }
}

interface Fast {
  readonly subject: string
  readonly name: string
  readonly part: PressurePart
  readonly pipe: NonNullable<PressurePart['pipe']>
  readonly flowM3s: number
  readonly velocity: number
}

/** A length of supply pipe once, at the station that draws most through it; the pipe of a zone for its zone. */
function tooFast(site: Site, plan: Plan): readonly Fast[] {
  const worst = new Map<string, Fast>()
  for (const station of stationsInService(site))
    for (const one of fastIn(station, plan)) {
      const key = `${one.part.of} ${one.subject} ${one.pipe.index}`
      const known = worst.get(key)
      if (!known || one.velocity > known.velocity) worst.set(key, one)
    }
  return [...worst.values()]
}

function fastIn(station: Station, plan: Plan): Fast[] {
  const pressure = plan.pressures.get(station.id)
  if (pressure === undefined || isAbsent(pressure)) return []
  return pressure.parts.flatMap(part => {
    const { velocityMPerS, pipe, of } = part
    if (!pipe || velocityMPerS === undefined || atMost(velocityMPerS, pipe.mostMPerS)) return []
    const shared = of === 'supply-pipe'
    return [
      {
        subject: shared ? pressure.supply : station.zone,
        name: shared ? pressure.supply : stationName(station),
        part,
        pipe,
        flowM3s: shared ? pressure.mainFlowM3s : pressure.flowM3s,
        velocity: velocityMPerS
      }
    ]
  })
}
