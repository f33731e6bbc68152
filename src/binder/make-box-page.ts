import type { BoxPage, ControllerToday } from './pages.ts'
import type { PageContext, PublicContext } from './context.ts'
import { revisionOf } from './context.ts'
import { roleIn } from './role-words.ts'
import { batteryRow } from './battery-row.ts'
import { boxCautions, boxHazards, hazardLine } from './cautions.ts'
import { daysText } from './days.ts'
import { boxFaults } from './fault-steps.ts'
import { holdsOf, stationsAt } from './holds.ts'
import { masterValvesAt } from './master-valves.ts'
import { programCards } from './program-card.ts'
import { pageScriptData } from './script-data.ts'
import { stationRow } from './station-row.ts'
import { handlingLines } from './unit-facts.ts'
import { orNotSupplied } from './values.ts'
import { visitAsks } from './visit-asks.ts'
import { sortedBy, sum } from '../base/collections.ts'
import { nextRuns } from '../domain/schedule/next-runs.ts'
import { openJobs } from '../plan/open-jobs.ts'
import { groupBy } from '../base/collections.ts'
import { epochDay } from '../units/date.ts'
import { showClock, showWindow } from '../units/clock.ts'
import { roundedText, showStated } from '../units/show.ts'
import type { Box, Controller, Site } from '../model/site.ts'
import { wordsOf } from '../words/languages.ts'

/** What a technician sees on scanning the code of a box. Nothing private comes near it. */
export function makeBoxPage(box: Box & { readonly tag: string }, context: PublicContext): BoxPage {
  const { site, plan, words } = context
  const stations = stationsAt(site, box)
  const controllers = site.controllers.filter(
    one => one.box === box.id || stations.some(station => station.controller === one.id)
  )
  const line = hazardLine(site, words.cautions)
  const [photo] = box.photos
  const cautions = boxCautions(site, box.id, plan.cautions, { ...words.cautions, closing: '' })
  return {
    kind: 'live',
    tag: box.tag,
    language: words.language,
    site: { id: site.id, title: site.title },
    box: box.id,
    ...(line ? { hazardLine: line } : {}),
    rightBox: {
      serves: words.boxPage.serves(holdsOf(site, box, words)),
      where: orNotSupplied(box.where, words),
      ties: box.ties,
      ...(photo
        ? { photo: { file: `photos/${photo.file}`, alt: photo.caption ?? words.binder.boxes.pictureOf(box.id) } }
        : {})
    },
    stopTheWater: stopTheWater(box, context),
    hazards: boxHazards(site, box.id, plan.cautions, words.cautions),
    masters: masterValvesAt(box.id, site.controllers, words).map(one => stationRow(one, context)),
    wiredHere: stations.map(station => stationRow(station, context)),
    batteries: controllers.flatMap(one => {
      const battery = plan.batteries.get(one.id)
      return battery && battery.state !== 'none' ? [batteryRow(battery, context)] : []
    }),
    today: controllers.map(one => today(one, context)),
    known: known(box, context),
    tell: tell(box.tag, context),
    trust: {
      dataDate: words.boxPage.dataDate(plan.on),
      revision: words.boxPage.revision(revisionOf(context)),
      printed: words.boxPage.printedCopy,
      tag: box.tag
    },
    programs: controllers.flatMap(one => programCards(one, context)),
    faults: boxFaults(context, stations, controllers),
    cautions: cautions.full.map(block => ({
      ...block,
      deference: block.deference.trimEnd()
    })),
    otherCautions: cautions.others,
    languages: languagesOf(site),
    ...(plan.cautions.length > 0 ? { cautionsFoot: words.cautions.closing } : {}),
    script: pageScriptData(controllers, context),
    supplies: site.supplies.map(one => one.id),
    visit: visitAsks(context, stations, controllers)
  }
}

/** The first language has the page that the code leads to; another stands beside it, under its own name. */
function languagesOf({ languages = [] }: Site): BoxPage['languages'] {
  if (languages.length < 2) return []
  return languages.map((code, index) => ({ code, name: wordsOf(code).name, href: languageFile(code, index) }))
}

export function languageFile(code: string, index: number): string {
  return index === 0 ? 'index.html' : `${code}.html`
}

function stopTheWater(box: Box, { site, words }: PageContext): BoxPage['stopTheWater'] {
  const w = words.boxPage
  const valves = site.stations.flatMap(station => station.valves)
  // The valves in this box come first: another box of the site may hold another make.
  const byHand = [...valves.filter(valve => valve.box === box.id), ...valves]
    .map(valve => valve.byHand)
    .find(text => text !== undefined)
  const supplies = site.supplies.map(supply => ({
    title: w.shutOff(supply.id, supply.kind),
    steps: [supply.shutOff ?? w.noShutOff]
  }))
  const [first, ...rest] = w.byHandSteps
  return [
    ...(supplies.length > 0 ? supplies : [{ title: words.binder.supplies.shutOff, steps: [w.noShutOff] }]),
    { title: w.byHandTitle, steps: [byHand ?? first ?? '', ...rest] }
  ]
}

function today(controller: Controller, { site, plan, words }: PageContext): ControllerToday {
  const w = words.boxPage
  const schedule = plan.schedules.get(controller.id)
  const runs = nextRuns(schedule?.days ?? [], epochDay(plan.on), 1)
  const lines = [...groupBy(runs, run => run.program)].map(([program, own]) => {
    const from = own[0]?.startS ?? 0
    const to = Math.max(...own.map(run => run.startS + run.durationS))
    return w.runToday(program, showClock(from / 60, site.units), showClock(to / 60, site.units))
  })
  const settings = controller.programs.map(program =>
    w.daysLine(
      program.id,
      daysText(program.days, words),
      program.starts.map(start => showClock(start, site.units)).join(', ')
    )
  )
  return {
    controller: controller.id,
    asOf: w.asOf(plan.on),
    lines: controller.outOfService
      ? [w.away(controller.id, controller.outOfService)]
      : controller.programs.length === 0
        ? [w.noProgram]
        : lines.length > 0
          ? lines
          : [w.noRunToday],
    months: w.months.map((label, index) => {
      const rows = schedule?.months ?? []
      const minutes = sum(rows.map(row => (row.days[index] ? (row.minutesPerDay[index] ?? 0) : 0)))
      const percents = [...new Set(rows.map(row => roundedText((row.percent[index] ?? 0) * 100, 0)))]
      return {
        label,
        percent: minutes > 0 ? `${percents.join(' / ')} %` : '–',
        minutes: minutes > 0 ? w.every(roundedText(minutes, 1)) : '–'
      }
    }),
    rules: [
      ...(controller.outOfService ? [w.away(controller.id, controller.outOfService)] : settings),
      ...handlingLines({ site, words }, [controller]),
      ...(site.season ? [w.offSeason(site.season.from, site.season.to)] : []),
      ...site.wateringRules.flatMap(rule =>
        rule.windows.map(window => w.windowRule(showWindow(window, site.units), rule.authority ?? ''))
      ),
      ...(site.workRules.note ? [site.workRules.note] : []),
      ...(site.workRules.laneClosure ? [w.laneRule(showWindow(site.workRules.laneClosure, site.units))] : [])
    ]
  }
}

function known(box: Box, { site, plan, findings, words }: PageContext): BoxPage['known'] {
  const w = words.boxPage
  const last = sortedBy(
    site.visits.filter(visit => visit.on <= plan.on),
    visit => visit.on
  ).at(-1)
  const here = new Set([box.id, ...stationsAt(site, box).flatMap(one => [one.zone, one.id, one.controller])])
  const away = [
    ...(box.status ? [w.away(box.id, box.status)] : []),
    ...site.controllers.flatMap(one =>
      here.has(one.id) && one.outOfService ? [w.away(one.id, one.outOfService)] : []
    ),
    ...stationsAt(site, box).flatMap(one => (one.outOfService ? [w.away(one.zone, one.outOfService)] : []))
  ]
  const twins = site.boxes.filter(one => one.id !== box.id && one.tag === box.tag).map(one => one.id)
  const open = findings.filter(one => one.severity !== 'note' && here.has(one.subject)).map(one => w.found(one.message))
  return {
    lastVisit: last ? w.lastVisit(last.on, last.by ?? '') : w.noVisit,
    items: [
      ...away,
      ...(twins.length > 0 ? [w.twins(twins)] : []),
      ...openJobs(site, plan.on).map(job => w.openFault(job.text))
    ],
    found: open,
    readings: last
      ? [
          ...last.batteries.map(one =>
            w.batteryReading(
              one.controller,
              one.rest ? showStated(one.rest) : '',
              one.underLoad ? showStated(one.underLoad) : ''
            )
          ),
          ...last.readings.flatMap(one => [
            ...(one.station && one.loop ? [w.loopReading(one.station, showStated(one.loop))] : []),
            ...(one.station && one.coil ? [w.coilReading(one.station, showStated(one.coil))] : []),
            ...(one.supply && one.meter ? [w.meterReading(one.supply, showStated(one.meter))] : [])
          ])
        ]
      : []
  }
}

function tell(tag: string, { site, words }: PageContext): BoxPage['tell'] {
  const people = site.contacts.filter(one => one.public)
  return people.map(one => ({
    role: roleIn(one.role, words),
    name: [one.name, one.company].filter(Boolean).join(', ') || roleIn(one.role, words),
    ...(one.phone ? { phone: one.phone } : {}),
    quote: words.boxPage.quote(tag)
  }))
}
