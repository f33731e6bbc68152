import { sum } from '../base/collections.ts'
import type { Worked } from '../domain/calculation.ts'
import { figures } from '../domain/figures.ts'
import { pulsesOnWateringDay, pulsesPerDay, shareOfDays } from '../domain/power/pulses-per-day.ts'
import type { PulseProgram } from '../domain/power/pulses-per-day.ts'
import type { Controller, Program, Site } from '../model/site.ts'
import type { IsoDate } from '../units/date.ts'

/**
 * Pulses a day as programmed, averaged over days with and without water, for the busiest stretch since `fitted`: programs with dates of
 * their own follow one another. The season is not counted on. Stations out of service send none; a master valve and a pump relay add a pair for each start.
 */
export function programmedPulses(site: Site, controller: Controller, fitted: IsoDate): Worked<number> {
  const dates = [fitted, ...controller.programs.flatMap(({ from }) => (from && from > fitted ? [from] : []))]
  const stretches = dates.map(date => stretch(site, controller, date))
  return stretches.reduce((most, one) => (one.value > most.value ? one : most))
}

function stretch(site: Site, controller: Controller, date: IsoDate): Worked<number> {
  const running = controller.programs.filter(program => isRunning(program, date))
  const programs = running.map(program => pulseProgram(site, controller, program))
  const steps = programs.flatMap((program, index) =>
    pulsesOnWateringDay(program) === 0 ? [] : [pulseStep(running[index]?.id ?? '', program)]
  )
  return { value: pulsesPerDay(programs), steps }
}

function isRunning(program: Program, date: IsoDate): boolean {
  const off = program.monthlyPercent !== undefined && program.monthlyPercent.every(percent => percent === 0)
  return !off && (program.from ?? date) <= date && date <= (program.to ?? date)
}

function pulseProgram(site: Site, controller: Controller, program: Program): PulseProgram {
  const off = site.stations.filter(one => one.controller === controller.id && one.outOfService !== undefined)
  const stations = program.stations.filter(({ number }) => !off.some(one => one.number === number))
  return {
    days: program.days,
    starts: program.starts.length,
    cycles: sum(stations.map(({ runTime }) => runTime.cycles)),
    masterValve: controller.masterValve !== undefined,
    pumpRelay: controller.pumpStart === true
  }
}

/** What opens and shuts with a whole program: master valve and pump relay. */
export function pulseFollowers({ masterValve, pumpStart }: Controller): number {
  return (masterValve === undefined ? 0 : 1) + (pumpStart === true ? 1 : 0)
}

/** "program A: 2 × 4 starts × 6 cycles = 48 pulses on a day with water". */
function pulseStep(id: string, program: PulseProgram): string {
  const { starts, cycles } = program
  const share = shareOfDays(program.days)
  const follow = [program.masterValve ? ' + 1 master valve' : '', program.pumpRelay ? ' + 1 pump relay' : ''].join('')
  const each = follow === '' ? `${cycles} cycles` : `(${cycles} cycles${follow})`
  const wet = pulsesOnWateringDay(program)
  const step = `program ${id}: 2 × ${starts} starts × ${each} = ${wet} pulses on a day with water`
  return share === 1 ? step : `${step}; × ${figures(share, 4)} of all days = ${figures(wet * share, 4)} a day`
}
