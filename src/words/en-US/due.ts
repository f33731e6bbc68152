import type { TaskKind } from '../../domain/dates/task-kind.ts'

type Plain = Exclude<TaskKind, 'battery' | 'backflow' | 'maintenance'>

const KINDS: Readonly<Record<Plain, string>> = {
  'start-up': 'Season start-up',
  winterizing: 'Winterizing',
  inspection: 'Inspection',
  'warranty-inspection': 'Warranty inspection',
  'warranty-end': 'Warranty ends',
  audit: 'Audit',
  'establishment-end': 'Establishment ends: change the programs',
  removal: 'Take the temporary system away'
}

/** Words of the due list, the route sheet and the shopping list. */
export const dueWords = {
  task: (kind: Plain, name?: string) => {
    if (name === undefined) return KINDS[kind]
    return kind === 'warranty-inspection' ? `${KINDS[kind]}, ${name} after the start` : capital(name)
  },
  maintenance: (name: string) => capital(name),
  route: {
    title: 'Route sheet',
    link: 'Route sheet and shopping list',
    fleet: 'Sites',
    within: (days: number, day: string) =>
      `Everything that has no date, is overdue, or is due within ${days} days of ${day}. Boxes out of service are not in it.`,
    order:
      'Areas are sites within 50 km of each other; the order within an area is the shortest found by straight distance. Roads and traffic are not in it.',
    noPlace: 'Sites without coordinates',
    area: (name: string, stops: number, time: string, km: string) =>
      `${name}: ${stops === 1 ? '1 site' : `${stops} sites`}, ${time} on site${km === '' ? '' : `, ${km} between them in a straight line`}`,
    columns: {
      stop: 'Stop',
      box: 'Box',
      task: 'Task',
      due: 'Due',
      minutes: 'Minutes',
      parts: 'Take along',
      done: 'Done'
    },
    access: 'Access',
    lane: (window: string) => `Lane closure ${window}`,
    traffic: (plan: string) => `Traffic control ${plan}`,
    road: 'Work in or beside a road',
    watering: (window: string) => `waters ${window}`,
    tools: 'Tools',
    open: 'Left open',
    openJob: (text: string, since: string, owner: string) => `${text} (since ${since}${owner ? `, ${owner}` : ''})`,
    where: (distance: string) => `${distance} from the stop before`,
    noDate: 'NO DATE',
    overdue: (day: string) => `${day} OVERDUE`,
    shopping: 'To take along',
    shoppingColumns: { item: 'What', count: 'Needed', spares: 'Spare', total: 'Together' },
    spareRule:
      'Spares: one set more for every ten sets begun of a kind of battery; none of other parts (rule of this project). A set is what one controller takes.',
    weeks: 'Work by week',
    weekColumns: {
      week: 'Week of',
      stops: 'Sites',
      tasks: 'Tasks',
      hours: 'Due, time on site',
      planned: (hours: string) => `Levelled to ${hours}`,
      where: 'Where'
    },
    over: (time: string) => `, OVER by ${time}`,
    levelRule: (weeks: number) =>
      `Levelled: a site's tasks of one week stay together; they are done in the last week that has room, at most ${weeks} weeks early and never late; what is overdue or has no date as soon as there is room (rule of this project). OVER marks a week that holds more all the same.`,
    levelHint:
      'With --hours-a-week 30h, or hours-a-week in the company file, the work is levelled to what a week holds.',
    now: 'now: no date or overdue',
    minutesRule:
      'Minutes: what the site file states for a task; else 10 for a set of batteries, 30 for a backflow test, 20 and 5 a station for a start-up or winterizing, 30 for an inspection, 60 for an audit or a removal, 20 for other tasks, and 5 for each box that is opened. They are for planning only (rule of this project).',
    empty: 'Nothing is due in this time.',
    dash: '–'
  },
  tools: {
    lid: 'lid lifter and gloves',
    battery: 'test load and meter',
    backflow: 'test kit for backflow assemblies, with its calibration record',
    'start-up': 'meter, radio or phone for two',
    winterizing: 'wrench for the drains',
    air: 'compressor with regulator and gauge',
    audit: 'catch cans, pressure gauge, stopwatch',
    key: 'key of the shut-off'
  },
  calendar: {
    name: 'Irrigation upkeep',
    noDate: (count: number) => `No date is known for ${count === 1 ? 'one thing' : `${count} things`}`,
    overdue: (what: string) => `OVERDUE: ${what}`,
    summary: (what: string, subject: string, site: string) => `${what}, ${subject}, ${site}`
  }
} as const

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
