import { LANGUAGES } from '../../words/languages.ts'
import { PAPERS, PLACES, SITE_STATUSES } from '../../model/site.ts'
import { box } from './box.ts'
import { budget } from './budget.ts'
import { climate } from './climate.ts'
import { closeout } from './closeout.ts'
import { contact } from './contact.ts'
import { controller } from './controller.ts'
import { optional } from './field.ts'
import { drawing } from './drawing.ts'
import { key } from './key.ts'
import { location } from './location.ts'
import { phases } from './phases.ts'
import { maintenance } from './maintenance.ts'
import { either, list, record } from './record.ts'
import { season } from './season.ts'
import { sensor } from './sensor.ts'
import { station } from './station.ts'
import { supply } from './supply.ts'
import { choice, sharedFile, text } from './texts.ts'
import { date } from './times.ts'
import { warranty } from './warranty.ts'
import { wateringRule } from './watering-rule.ts'
import { winter } from './winter.ts'
import { workRules } from './work-rules.ts'

const CLIMATE = {
  does: 'Month-by-month figures, or the shared file that holds them.',
  example: '_shared/climates/north-coast.md'
}
const RULE = { does: 'A rule, or the shared file that holds it.', example: '_shared/rules/port-sable.md' }

/** The front matter of a site.md. */
export const site = record(
  'the site file',
  { does: 'One site.', example: 'title: Kestrel Cross Roundabout' },
  {
    title: text('Name of the site.', 'Kestrel Cross Roundabout'),
    units: choice(
      'How outputs show figures: us or metric. Values may be written in any unit.',
      ['us', 'metric'],
      'metric'
    ),
    languages: optional(
      list(choice('A language of the outputs.', LANGUAGES, 'en-US'), {
        does: 'Languages of the outputs: the first for binder and labels, all of them on the box pages.',
        example: '[en-US]'
      })
    ),
    paper: optional(choice('A4 or Letter; by the units where nothing is written.', PAPERS, 'A4')),
    status: optional(
      choice('Where the site stands; in-service where nothing is written.', SITE_STATUSES, 'in-service')
    ),
    place: optional(choice('What kind of place it is; other where nothing is written.', PLACES, 'roundabout')),
    revision: optional(text('Revision of the record, as printed on each page.', '"3"')),
    issued: optional(date('Day on which that revision was issued.', '2026-03-20')),
    location: optional(location),
    contacts: optional(list(contact, { does: 'Who is who.', example: '[{ role: owner, name: Harrow Mere Council }]' })),
    season: optional(season),
    climate: optional(either(CLIMATE, sharedFile(CLIMATE.does, CLIMATE.example), climate)),
    phases: optional(phases),
    supplies: optional(list(supply, { does: 'Points of connection.', example: '[{ id: S1, kind: potable }]' })),
    'watering-rules': optional(
      list(either(RULE, sharedFile(RULE.does, RULE.example), wateringRule), {
        does: 'Rules that watering must keep.',
        example: '[{ authority: Port Sable Water, window: 22:00-06:00 }]'
      })
    ),
    'work-rules': optional(workRules),
    winter: optional(winter),
    boxes: optional(list(box, { does: 'Valve boxes.', example: '[{ id: VB1, where: "centre island, NE" }]' })),
    controllers: optional(list(controller, { does: 'Controllers.', example: '[{ id: K1, box: VB1 }]' })),
    stations: optional(list(station, { does: 'Stations.', example: '[{ id: K1/1, zone: Z1 }]' })),
    sensors: optional(list(sensor, { does: 'Sensors.', example: '[{ id: RS1, kind: rain }]' })),
    keys: optional(list(key, { does: 'The key register.', example: '[{ id: C7, opens: [K1], count: 3 }]' })),
    budget: optional(budget),
    maintenance: optional(
      list(maintenance, { does: 'Tasks and when they are due.', example: '[{ task: audit, every: 5 years }]' })
    ),
    closeout: optional(closeout),
    drawing: optional(drawing),
    warranty: optional(list(warranty, { does: 'Warranties.', example: '[{ item: whole system, start: 2025-04-30 }]' }))
  }
)
