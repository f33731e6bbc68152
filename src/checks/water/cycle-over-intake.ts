import { isAbsent } from '../../base/absent.ts'
import { soakS, splitCycles } from '../../domain/water/cycle-soak.ts'
import { atMost } from '../../domain/within.ts'
import type { Station } from '../../model/site.ts'
import type { IntakePlan, SetRun } from '../../plan/plan.ts'
import { show } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { minutesText } from '../schedule/hours.ts'
import { stationName, stationsInService } from '../wire/subject.ts'
import { runWritten, setRunText, stepOf } from './set-run.ts'

/** Common practice, no source: 30 to 60 min. */
const LEAST_SOAK_S = 1800

export const cycleOverIntake: SiteCheck = {
  card: {
    code: 'water/cycle-over-intake',
    severity: 'warning',
    looksAt:
      'The longest cycle of sprays, rotors and other devices that wet an area, against the time after which water runs off. Drip and bubblers are not judged by it.',
    why: 'Once the soil takes in less than comes and its surface is full, the rest runs off: onto the path, into the drain, with soil in it.',
    sources: ['site-record', 'ia-scheduling', 'common-practice'],
    fix: 'Split the run into cycles with a soak between them. Figures by texture and slope are typical: watch the ground once before changing much.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, devices: { kind: spray, flow: 42 L/min }, area: 110 m², soil: { texture: clay, intake: 9 mm/h, surface-storage: 3 mm }, slope: "4:1" }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, programs: [{ id: A, days: every 2 days from 2026-04-02, starts: ["23:10"], stations: { 1: 3 x 9 min soak 30 min } }] }
stations:
  - { id: K1/1, zone: Z1, devices: { kind: spray, flow: 42 L/min }, area: 110 m², soil: { texture: clay, intake: 9 mm/h, surface-storage: 3 mm }, slope: "4:1" }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const station of stationsInService(site)) {
      const water = plan.water.get(station.id)
      const controller = site.controllers.find(one => one.id === station.controller)
      if (!water?.longestSet || !controller || isAbsent(water.intake) || isAbsent(water.rateMPerS)) continue
      const { cycle, watering } = water.longestSet
      const { intakeMPerS, surfaceM, longestS } = water.intake
      if (isAbsent(longestS) || longestS === 'no limit' || atMost(cycle.seconds, longestS)) continue
      const [, most] = toldApart(cycle.seconds / 60, longestS / 60, 1)
      const rate = (rateMPerS: number) => show(rateMPerS, 'rate', site.units)
      report({
        subject: station.zone,
        at: at(runWritten(cycle, station, controller)),
        message:
          `${stationName(station)}: a cycle lasts ${setRunText(cycle, 1, controller, site.units)}, but after ${most}\u00a0min water runs off: ` +
          `${rate(water.rateMPerS)} comes, ${groundText(station, water.intake)} takes in ${rate(intakeMPerS)}, and ${show(surfaceM, 'depth', site.units)} may stand on it.`,
        fix: howToSplit(watering, water.intake, longestS, stepOf(site, controller)),
        values: { set_min: cycle.seconds / 60, longest_cycle_min: longestS / 60 }
      })
    }
  }
}

function groundText({ soil, slope }: Station, { by }: IntakePlan): string {
  const typical = by === 'texture' ? 'typical ' : 'the '
  const tilt = slope === undefined || slope === 'flat' ? '' : ` at ${slope}`
  return `${typical}${soil?.texture ?? 'soil'}${tilt}`
}

/** The whole watering anew, in cycles that the ground takes. */
function howToSplit(watering: SetRun, { surfaceM, intakeMPerS }: IntakePlan, longestS: number, stepS: number): string {
  const split = splitCycles(watering.seconds, longestS, Math.max(LEAST_SOAK_S, soakS(surfaceM, intakeMPerS)), stepS)
  const minutes = (seconds: number) => minutesText(seconds / 60)
  if (isAbsent(split))
    return `No run time can be set that short: fit devices that give less water an hour, or use drip.`
  const { cycles, cycleS } = split
  const soak = Math.ceil(split.soakS / 60 - 1e-6) * 60
  return `Set ${cycles} cycles of ${minutes(cycleS)} with ${minutes(soak)} of soak between them, in place of ${watering.cycles} of ${minutes(watering.seconds / watering.cycles)}.`
}
