/** How a standing is marked beside a value and explained in the key. The mark is one letter, so that it survives a photocopy. */
interface StandingWords {
  readonly mark: string
  readonly sample: string
  readonly means: string
}

/** The labels that the templates set around the data of a page. */
export const pageWords = {
  binder: {
    revision: 'Revision',
    preparedBy: 'Prepared by',
    tags: 'Boxes and their tags',
    gap: 'not supplied'
  },
  key: {
    title: 'How a value came to be known',
    lead: 'The mark stands after the value. In the head of a column or after the first name of a row it holds for all of it.'
  },
  standings: {
    stated: { mark: '', sample: '38 L/min', means: 'as written for this site' },
    measured: { mark: 'm', sample: '4.3 Ω', means: 'measured on site with an instrument' },
    computed: { mark: 'c', sample: '4.38 Ω', means: 'computed from the data of this site by a named calculation' },
    'data-plate': { mark: 'p', sample: '8.5 V', means: 'as the product sheet or the data plate states it' },
    'common-practice': { mark: 't', sample: '8 V', means: 'common practice in the trade, no source' },
    default: { mark: 'd', sample: '12 months', means: 'taken because nothing was stated' },
    'not-supplied': { mark: '', sample: 'not supplied', means: 'asked for and not there' },
    'not-computed': { mark: '', sample: 'not computed', means: 'could not be worked out; the reason stands beside it' }
  } satisfies Record<string, StandingWords>,
  blocks: {
    station: 'Station',
    waters: 'Waters',
    runTime: 'Run time',
    why: 'Why',
    fix: 'Do',
    source: 'Source',
    sources: 'Sources',
    place: 'Where',
    limits: 'Limits',
    splices: (count: number) => (count === 1 ? '1 splice' : `${count} splices`)
  },
  label: {
    shutOff: 'Stop the water',
    battery: 'Battery',
    coil: 'Coils',
    box: 'Box'
  },
  box: {
    tag: 'Tag',
    where: 'Where',
    rightBox: 'Right box?',
    jump: 'On this page',
    stopTheWater: 'Stop the water',
    hazards: 'What can hurt you or the kit',
    wiredHere: 'Wired here',
    wiredNothing: 'No station is wired here.',
    wire: 'Wire',
    wireColour: 'Wire color',
    valveSize: 'Valve size',
    valveBox: 'Valve in box',
    normalFlow: 'Normal flow',
    readings: 'Coil and meter readings',
    atController: 'At the controller',
    atValve: 'At the valve',
    baseline: 'On record',
    battery: 'Battery',
    noBattery: 'No battery in this box.',
    fitted: 'Fitted',
    due: 'Due',
    today: 'What it should do',
    month: 'Month',
    percent: 'Percent',
    minutes: 'Run',
    rules: 'Rules in force',
    known: 'Already known',
    tell: 'Tell',
    trust: 'This page',
    program: 'Program card',
    programLead: 'To key in a program that was lost.',
    faults: 'Find the fault',
    safety: 'Safety',
    visit: 'Visit slip'
  },
  visit: {
    lead: 'Note these at the box and hand them in.',
    leadWithScript: 'Fill in what you saw, then copy the slip or mail it. It stays on this phone until you clear it.',
    on: 'Date',
    by: 'Name and company',
    reason: 'Reason',
    reasonHint: 'route, call, season',
    battery: 'Battery',
    changed: 'Changed today',
    rest: 'Volts at rest',
    load: 'Volts under load',
    station: 'Station',
    loop: 'Ohms at the controller',
    coil: 'Ohms at the valve',
    flow: 'Flow',
    found: 'Found',
    done: 'Done',
    open: 'Left open',
    lines: 'One thing a line.',
    slip: 'The slip'
  },
  /** Handed to the page's script. Words in braces are filled in by it. */
  script: {
    ok: 'OK',
    soon: 'DUE SOON',
    overdue: 'OVERDUE',
    noDate: 'NO DATE',
    daysLeft: 'due in {n} days',
    dayLeft: 'due in 1 day',
    dueToday: 'due today',
    daysOver: '{n} days over',
    dayOver: '1 day over',
    today: 'Today, {date}',
    noRun: 'No watering today.',
    next: 'Next: {date}, {time}.',
    never: 'No watering day in the year to come.',
    outOfService: 'Out of service.',
    stationRuns: '{program} · {number} {waters}: {times}',
    thisMonth: 'now',
    weekdays: 'Mon Tue Wed Thu Fri Sat Sun',
    months: 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec',
    copy: 'Copy the slip',
    copied: 'Copied',
    selected: 'Selected. Copy it now.',
    mail: 'Mail it',
    clear: 'Clear',
    subject: 'Visit {site} {box} {tag}'
  },
  entry: {
    all: 'All tags',
    unknown: 'No box has this tag. Look again: the tag is on the label under the lid.'
  },
  gone: { now: 'Go to tag' },
  office: {
    facts: 'The site',
    files: 'To print and to open',
    boxes: 'Valve boxes',
    box: 'Box',
    tag: 'Tag',
    where: 'Where',
    serves: 'Serves',
    noTag: 'no tag',
    batteries: 'Batteries',
    controller: 'Controller',
    kind: 'Kind',
    fitted: 'Fitted',
    due: 'Due',
    state: 'State',
    findings: 'Findings',
    noFindings: 'Nothing found.',
    error: (count: number) => (count === 1 ? 'error' : 'errors'),
    warning: (count: number) => (count === 1 ? 'warning' : 'warnings'),
    note: (count: number) => (count === 1 ? 'note' : 'notes'),
    sites: 'Sites',
    site: 'Site',
    place: 'Place',
    stations: 'Stations',
    nextDue: 'Next due',
    open: 'Errors, warnings, notes',
    dueList: 'Due',
    date: 'Date',
    subject: 'Thing',
    what: 'What',
    nothingDue: 'Nothing is due.',
    noSites: 'No sites yet.'
  }
} as const

export type PageWords = typeof pageWords
