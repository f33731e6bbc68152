import type { z } from 'zod'
import type { At } from '../diagnostics/finding.ts'
import type { Climate, Company, DailyWeather, ProductSheet, Site, Visit, WateringRule } from '../model/site.ts'
import type { FrontMatter } from './front-matter.ts'
import { withPlanFile } from './plan-file.ts'
import type { PlanFile } from './plan-file.ts'
import { privateContactWords, privateWordsOf } from './private-words.ts'
import { proseOf } from './prose.ts'
import { makeBox } from './schema/box.ts'
import { makeBudget } from './schema/budget.ts'
import { makeClimate } from './schema/climate.ts'
import { makeCloseout } from './schema/closeout.ts'
import { makeContact } from './schema/contact.ts'
import { makeController } from './schema/controller.ts'
import { makeDrawing } from './schema/drawing.ts'
import { makeKey } from './schema/key.ts'
import { makeLocation } from './schema/location.ts'
import { makePhase } from './schema/phases.ts'
import { below, each, given, made, part } from './schema/made.ts'
import { makeMaintenance } from './schema/maintenance.ts'
import { makeSeason } from './schema/season.ts'
import { makeSensor } from './schema/sensor.ts'
import type { site } from './schema/site.ts'
import { makeStation } from './schema/station.ts'
import { makeSupply } from './schema/supply.ts'
import { makeWarranty } from './schema/warranty.ts'
import { makeWateringRule } from './schema/watering-rule.ts'
import { makeWinter } from './schema/winter.ts'
import { makeWorkRules } from './schema/work-rules.ts'

/** What the shared files and the visits say, ready to be joined to a site. Paths are as the site file writes them. */
export interface Companions {
  readonly sheets: ReadonlyMap<string, ProductSheet>
  readonly climates: ReadonlyMap<string, Climate>
  /** Daily records, by the path that a climate names them by. */
  readonly weather: ReadonlyMap<string, DailyWeather>
  readonly rules: ReadonlyMap<string, WateringRule>
  readonly company: Company | undefined
  /** What a file beside the site file adds to its drawing. */
  readonly planFile: PlanFile | undefined
  readonly visits: readonly Visit[]
  /** Every file that was read, the site file first: their private words all count. */
  readonly fronts: readonly FrontMatter[]
}

export function makeSite(id: string, raw: z.output<typeof site>, front: FrontMatter, companions: Companions): Site {
  const at: At = { file: front.lines.file, path: [] }
  const contacts = each(raw.contacts, at, 'contacts', makeContact)
  return made<Site>({
    at,
    id,
    title: raw.title,
    units: raw.units,
    languages: given(raw.languages),
    paper: raw.paper ?? (raw.units === 'us' ? 'Letter' : 'A4'),
    status: raw.status ?? 'in-service',
    place: raw.place ?? 'other',
    revision: given(raw.revision),
    issued: given(raw.issued),
    location: part(raw.location, at, 'location', makeLocation),
    contacts,
    season: part(raw.season, at, 'season', makeSeason),
    climate: climateOf(raw.climate, at, companions),
    phases: raw.phases ? each(raw.phases, at, 'phases', makePhase) : undefined,
    supplies: each(raw.supplies, at, 'supplies', makeSupply),
    wateringRules: rulesOf(raw['watering-rules'], at, companions),
    workRules: makeWorkRules(raw['work-rules'] ?? {}, below(at, 'work-rules')),
    winter: part(raw.winter, at, 'winter', makeWinter),
    boxes: each(raw.boxes, at, 'boxes', makeBox),
    controllers: each(raw.controllers, at, 'controllers', (one, place) =>
      makeController(one, place, companions.sheets.get(one.sheet ?? ''))
    ),
    stations: each(raw.stations, at, 'stations', makeStation),
    sensors: each(raw.sensors, at, 'sensors', makeSensor),
    keys: each(raw.keys, at, 'keys', makeKey),
    budget: part(raw.budget, at, 'budget', makeBudget),
    maintenance: raw.maintenance ? each(raw.maintenance, at, 'maintenance', makeMaintenance) : undefined,
    closeout: part(raw.closeout, at, 'closeout', makeCloseout),
    drawing: part(raw.drawing, at, 'drawing', (one, place) =>
      withPlanFile(makeDrawing(one, place), companions.planFile)
    ),
    warranties: each(raw.warranty, at, 'warranty', makeWarranty),
    visits: companions.visits,
    privateWords: [...companions.fronts.flatMap(privateWordsOf), ...privateContactWords(contacts)],
    prose: proseOf(front).map(({ line: _, ...section }) => section),
    company: companions.company
  })
}

function climateOf(raw: z.output<typeof site>['climate'], at: At, companions: Companions): Climate | undefined {
  const climate = typeof raw === 'string' ? companions.climates.get(raw) : part(raw, at, 'climate', makeClimate)
  const dailyWeather = companions.weather.get(climate?.dailyWeatherPath ?? '')
  return climate && dailyWeather ? { ...climate, dailyWeather } : climate
}

function rulesOf(raw: z.output<typeof site>['watering-rules'], at: At, { rules }: Companions): readonly WateringRule[] {
  return (raw ?? []).flatMap((one, index) => {
    if (typeof one !== 'string') return [makeWateringRule(one, below(at, 'watering-rules', index))]
    return rules.get(one) ?? []
  })
}
