import { absent, isAbsent } from '../base/absent.ts'
import type { Maybe } from '../base/absent.ts'
import { alongTheWay } from '../domain/supply/along-the-way.ts'
import type { WayPart } from '../domain/supply/along-the-way.ts'
import { pipeSteps } from '../domain/supply/pipe-loss-card.ts'
import { pressureSteps } from '../domain/supply/pressure-left-card.ts'
import { startPressure } from '../domain/supply/start-pressure.ts'
import { whatPasses } from '../domain/supply/what-passes.ts'
import { atLeast } from '../domain/within.ts'
import type { PipeSegment, Site, Station, Supply } from '../model/site.ts'
import { PIPE_ROUGHNESS, mostVelocityMPerS } from '../reference/pipe.ts'
import { flowsBeside } from './flows-beside.ts'
import type { FlowBeside } from './flows-beside.ts'
import type { SchedulePlan, Working } from './plan.ts'
import { takenPa } from './pressure-plan.ts'
import type { PressurePart, PressurePlan } from './pressure-plan.ts'
import { stationFlowM3s } from './station-flow.ts'
import { controllersOn } from './supply-peaks.ts'

export interface PressuresPlanned {
  /** By station id: those on whose way a pipe is written. */
  readonly pressures: ReadonlyMap<string, Maybe<PressurePlan>>
  readonly workings: readonly Working[]
}

/** Pressure, loss, velocity and lift along the pipe as it is written, for each station with the most that runs beside it. */
export function planPressures(site: Site, schedules: ReadonlyMap<string, SchedulePlan>): PressuresPlanned {
  const pressures = new Map<string, Maybe<PressurePlan>>()
  for (const supply of site.supplies) {
    const fed = new Set(controllersOn(site, supply).map(one => one.id))
    const stations = site.stations.filter(
      one => fed.has(one.controller) && one.outOfService === undefined && hasPipe(supply, one)
    )
    if (stations.length === 0) continue
    const beside = flowsBeside(site, supply, schedules)
    for (const station of stations) pressures.set(station.id, pressureOf(supply, station, beside.get(station.id)))
  }
  const workings = [...pressures].flatMap(([id, plan]) => (isAbsent(plan) ? [] : workingsOf(id, plan, site)))
  return { pressures, workings }
}

const hasPipe = (supply: Supply, station: Station): boolean =>
  (supply.pipe ?? []).length + (station.pipe ?? []).length > 0

function pressureOf(supply: Supply, station: Station, beside: FlowBeside | undefined): Maybe<PressurePlan> {
  const flowM3s = stationFlowM3s(station)
  if (isAbsent(flowM3s)) return flowM3s
  const mainFlowM3s = Math.max(flowM3s, beside?.flowM3s ?? 0)
  const { staticPressure, pressureAtFlow } = supply
  const start = startPressure({
    flowM3s: mainFlowM3s,
    ...(staticPressure ? { staticPa: staticPressure.si } : {}),
    ...(pressureAtFlow ? { measured: { pressurePa: pressureAtFlow.pressure.si, flowM3s: pressureAtFlow.flow.si } } : {})
  })
  if (isAbsent(start)) return start
  const way = wayOf(supply, station, flowM3s, mainFlowM3s)
  const written = way.map(one => one.part)
  const passed = alongTheWay(start.pressurePa, written)
  const parts = passed.flatMap((one, index) => {
    const from = way[index]
    return from ? [{ ...one, of: from.of, ...(from.pipe ? { pipe: from.pipe } : {}) }] : []
  })
  const leftPa = parts.at(-1)?.leftPa ?? start.pressurePa
  const neededPa = station.devices?.pressure?.si ?? absent('the least pressure of the devices is not stated')
  const governing = mostTaken(parts)
  return {
    station: station.id,
    supply: supply.id,
    flowM3s,
    mainFlowM3s,
    beside: (beside?.stations ?? []).filter(one => one !== station.id),
    start,
    parts,
    leftPa,
    neededPa,
    marginPa: isAbsent(neededPa) ? neededPa : leftPa - neededPa,
    ...(governing === undefined ? {} : { governing }),
    ...(isAbsent(neededPa) || atLeast(leftPa, neededPa)
      ? {}
      : { passing: whatPasses(start.pressurePa, written, neededPa) })
  }
}

type WayWritten = Pick<PressurePart, 'of' | 'pipe' | 'part'>

/** Fittings and pipe of the supply, then valve, regulator and pipe of the station. */
function wayOf(supply: Supply, { valves, regulator, pipe = [] }: Station, own: number, main: number): WayWritten[] {
  const { losses = [], pipe: mainPipe = [] } = supply
  const valveLoss = Math.max(0, ...valves.map(valve => valve.loss?.si ?? 0))
  return [
    ...losses.map<WayWritten>(one => ({ of: 'stated', part: { kind: 'loss', name: one.of, lossPa: one.loss.si } })),
    ...mainPipe.map((segment, index) => pipeWritten('supply-pipe', segment, index, main)),
    ...(valveLoss > 0 ? [{ of: 'valve', part: { kind: 'loss', name: 'valve', lossPa: valveLoss } } as const] : []),
    ...(regulator
      ? [{ of: 'regulator', part: { kind: 'regulator', name: 'regulator', mostPa: regulator.si } } as const]
      : []),
    ...pipe.map((segment, index) => pipeWritten('station-pipe', segment, index, own))
  ]
}

function pipeWritten(
  of: 'supply-pipe' | 'station-pipe',
  segment: PipeSegment,
  index: number,
  flowM3s: number
): WayWritten {
  const { inside, length, rise, material } = segment
  const part: WayPart = {
    kind: 'pipe',
    name: `${of === 'supply-pipe' ? 'main' : 'lateral'} ${index + 1}`,
    flowM3s,
    insideM: inside.si,
    lengthM: length.si,
    riseM: rise?.si ?? 0,
    roughness: PIPE_ROUGHNESS[material]
  }
  return { of, part, pipe: { segment, index, mostMPerS: mostVelocityMPerS(material) } }
}

function mostTaken(parts: readonly PressurePart[]): number | undefined {
  const taken = parts.map(takenPa)
  const most = Math.max(0, ...taken)
  return most > 0 ? taken.indexOf(most) : undefined
}

function workingsOf(id: string, { start, parts, neededPa }: PressurePlan, site: Site): Working[] {
  const fastest = parts.reduce<PressurePart | undefined>(
    (most, one) => ((one.velocityMPerS ?? 0) > (most?.velocityMPerS ?? 0) ? one : most),
    undefined
  )
  const pipe = fastest?.part.kind === 'pipe' ? fastest.part : undefined
  const needed = isAbsent(neededPa) ? undefined : neededPa
  return [
    {
      calculation: 'pressure-left',
      subject: id,
      steps: pressureSteps(start.pressurePa, parts, needed, site.units)
    },
    ...(pipe
      ? [
          {
            calculation: 'pipe-loss',
            subject: `${id}, ${pipe.name}`,
            steps: pipeSteps(
              { flow: pipe.flowM3s, inside: pipe.insideM, lengthM: pipe.lengthM, roughness: pipe.roughness },
              site.units
            )
          }
        ]
      : [])
  ]
}
