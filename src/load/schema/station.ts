import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Station, Valve } from '../../model/site.ts'
import { catchCans, makeCatchCans } from './catch-cans.ts'
import { devices, makeDevices } from './devices.ts'
import { optional } from './field.ts'
import { below, each, given, made, part } from './made.ts'
import { makePipe, pipe } from './pipe.ts'
import { makePhase, phases } from './phases.ts'
import { makePlants, plants } from './plants.ts'
import { quantity } from './quantities.ts'
import { makeReading, reading } from './reading.ts'
import { either, list, record } from './record.ts'
import { slope } from './slope.ts'
import { makeSoil, soil } from './soil.ts'
import { pattern, text } from './texts.ts'
import { makeValve, valve } from './valve.ts'
import { makeSplice, makeWire, splice, wire } from './wire.ts'

const STATION_ID = /^(.*\S)\s*\/\s*0*([1-9]\d*)$/u

const VALVE = {
  does: 'The valve; a list where coils are wired in parallel to one output.',
  example: '{ box: VB1, size: 1 in }'
}
const PARALLEL = { does: 'Valves wired in parallel.', example: '[{ box: VB1 }, { box: VB2 }]' }

export const station = record(
  'a station',
  {
    does: 'A station of a controller and the zone it waters.',
    example: '{ id: K1/3, zone: Z3, waters: "meadow, spray" }'
  },
  {
    id: pattern('Controller, slash, number of the output.', 'K1/3', STATION_ID, 'a controller, a slash and a number'),
    zone: optional(text('Your own name for what it waters; the id where none is given.', 'Z3')),
    waters: optional(text('What it waters.', '"meadow, spray"')),
    valve: optional(either(VALVE, valve, list(valve, PARALLEL))),
    wire: optional(
      list(wire, { does: 'The wires, one entry for each size.', example: '[{ size: 1.5 mm², length: 36 m }]' })
    ),
    splices: optional(list(splice, { does: 'The splices.', example: '[{ box: VB2, kind: gel-filled connector }]' })),
    pipe: optional(
      list(pipe, {
        does: 'The pipe from the branch to the devices that are hardest to reach, in the order of the water.',
        example: '[{ inside: 26.2 mm, material: plastic, length: 24 m, rise: 1.2 m }]'
      })
    ),
    regulator: optional(
      quantity('What the pressure regulator at the valve lets through at most.', 'pressure', '2.0 bar')
    ),
    devices: optional(devices),
    area: optional(quantity('The area it waters.', 'area', '210 m²')),
    efficiency: optional(quantity('Application efficiency: share of the water that the roots get.', 'ratio', '70 %')),
    uniformity: optional(
      quantity(
        'Distribution uniformity of the lowest quarter, in place of efficiency: it sets a multiplier of the need.',
        'ratio',
        '65 %'
      )
    ),
    'catch-cans': optional(catchCans),
    plants: optional(plants),
    phases: optional(phases),
    soil: optional(soil),
    slope: optional(slope('Slope of the ground: percent, or run to rise.', '1 %')),
    readings: optional(
      list(reading, { does: 'Readings, the first at closeout.', example: '[{ on: 2026-03-20, coil: 4.3 ohm }]' })
    ),
    'out-of-service': optional(text('Why it is not running.', 'bed is being replanted'))
  }
)

export function makeStation(raw: z.output<typeof station>, at: At): Station {
  const [controller, number] = stationParts(raw.id) ?? ['', 0]
  const id = `${controller}/${number}`
  return made<Station>({
    at,
    id,
    controller,
    number,
    zone: raw.zone ?? id,
    waters: given(raw.waters),
    valves: makeValves(raw.valve, at),
    wire: each(raw.wire, at, 'wire', makeWire),
    splices: each(raw.splices, at, 'splices', makeSplice),
    pipe: each(raw.pipe, at, 'pipe', makePipe),
    regulator: given(raw.regulator),
    devices: part(raw.devices, at, 'devices', makeDevices),
    area: given(raw.area),
    efficiency: given(raw.efficiency),
    uniformity: given(raw.uniformity),
    catchCans: part(raw['catch-cans'], at, 'catch-cans', makeCatchCans),
    plants: part(raw.plants, at, 'plants', makePlants),
    phases: raw.phases ? each(raw.phases, at, 'phases', makePhase) : undefined,
    soil: part(raw.soil, at, 'soil', makeSoil),
    slope: given(raw.slope),
    readings: each(raw.readings, at, 'readings', makeReading),
    outOfService: given(raw['out-of-service'])
  })
}

/** "K1/3" is station 3 of K1. Undefined where the text has no such form. */
export function stationParts(id: string): [controller: string, number: number] | undefined {
  const match = STATION_ID.exec(id.trim())
  return match?.[1] === undefined ? undefined : [match[1], Number(match[2])]
}

function makeValves(raw: z.output<typeof station>['valve'], at: At): readonly Valve[] {
  if (raw === null || raw === undefined) return []
  return Array.isArray(raw)
    ? each(raw, at, 'valve', makeValve)
    : [makeValve(raw as z.output<typeof valve>, below(at, 'valve'))]
}
