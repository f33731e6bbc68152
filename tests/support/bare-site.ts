import type { Box, Controller, Site, Station, Supply, Valve, WorkRules } from '../../src/model/site.ts'

const AT = { file: 'sites/bare/site.md', path: [] }

/** A site that states nothing but its place, for tests below the loader. */
export function bareSite(stated: Partial<Site> = {}): Site {
  return {
    at: AT,
    id: 'bare',
    title: 'Bare Site',
    units: 'metric',
    paper: 'A4',
    status: 'in-service',
    place: 'other',
    contacts: [],
    supplies: [],
    wateringRules: [],
    workRules: { at: AT },
    boxes: [],
    controllers: [],
    stations: [],
    sensors: [],
    keys: [],
    warranties: [],
    visits: [],
    privateWords: [],
    prose: [],
    ...stated
  }
}

export const bareRules = (stated: Partial<WorkRules>): WorkRules => ({ at: AT, ...stated })

export const bareBox = (id: string, hazards: readonly string[] = []): Box => ({
  at: AT,
  id,
  ties: [],
  photos: [],
  hazards
})

export const bareSupply = (stated: Partial<Supply>): Supply => ({ at: AT, id: 'S1', kind: 'potable', ...stated })

export const bareController = (stated: Partial<Controller>): Controller => ({
  at: AT,
  id: 'K1',
  power: 'battery',
  programs: [],
  ...stated
})

export const bareStation = (valve: Partial<Valve> = {}): Station => ({
  at: AT,
  id: 'K1/1',
  controller: 'K1',
  number: 1,
  zone: 'Z1',
  valves: [{ at: AT, ...valve }],
  wire: [],
  splices: [],
  readings: []
})
