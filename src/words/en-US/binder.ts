/** Words of the printed binder. */
export const binderWords = {
  subtitle: 'Maintenance binder',
  contents: 'Contents',
  running: (site: string, revision: string) => `${site} · revision ${revision}`,
  dataDate: (day: string) => `Data of ${day}`,
  notSupplied: 'not supplied',
  notComputed: 'not computed',
  none: 'none',
  cover: {
    place: 'Place',
    address: 'Address',
    owner: 'Owner',
    maintainer: 'Maintained by',
    installer: 'Installed by',
    season: 'Watering season',
    status: 'Status',
    boxes: 'Valve boxes',
    controllers: 'Controllers',
    stations: 'Stations',
    supplies: 'Water supplies',
    open: (errors: number, warnings: number, notes: number) =>
      errors + warnings + notes === 0
        ? 'No open items.'
        : `Open items: ${count(errors, 'error')}, ${count(warnings, 'warning')}, ${count(notes, 'note')}. They are listed under Open items.`
  },
  places: {
    roundabout: 'Roundabout',
    median: 'Median',
    verge: 'Verge',
    planter: 'Planters',
    roof: 'Roof',
    nursery: 'Nursery',
    glasshouse: 'Glasshouse',
    park: 'Park',
    slope: 'Slope',
    temporary: 'Temporary planting',
    other: 'Other'
  },
  statuses: {
    planned: 'Planned',
    'in-service': 'In service',
    'out-of-service': 'Out of service',
    'closed-out': 'Closed out',
    removed: 'Removed'
  },
  season: (from: string, to: string) => `${from} to ${to}`,
  allYear: 'All year',
  sections: {
    safety: 'Safety first',
    contacts: 'Contacts',
    site: 'The site',
    supplies: 'Water supply and shut-off',
    boxes: 'Valve boxes and how to find them',
    controllers: 'Controllers and their programs',
    zones: 'Zones',
    wires: 'Wire schedule',
    schedule: 'Month-by-month schedule',
    batteries: 'Battery log',
    faults: 'Fault finding',
    visits: 'Visits',
    warranty: 'Warranty',
    open: 'Open items',
    missing: 'What is not supplied',
    signOffs: 'Sign-offs',
    numbers: 'How these numbers were made'
  },
  safety: {
    lead: 'Read these before you open a box. DANGER will kill or badly injure, WARNING can, CAUTION can injure, NOTICE is about damage only.',
    chosen:
      'These cautions were chosen by what the site file says of this place. Where it says nothing of road, roof edge or depth, the caution stands.',
    coverHeading: 'Cover over buried wire'
  },
  contacts: {
    role: 'Role',
    name: 'Name',
    company: 'Company',
    phone: 'Phone',
    licence: 'License',
    private:
      'Private numbers, codes and key places stand on the restricted sheet, which is printed apart from this binder.',
    withheld: 'on the restricted sheet'
  },
  site: {
    facts: 'Place and rules',
    coordinates: 'Coordinates',
    elevation: 'Elevation',
    timeZone: 'Time zone',
    country: 'Country',
    windows: 'Watering window',
    days: 'Watering days',
    authority: 'Set by',
    rule: 'Watering rule',
    laneClosure: 'Lane closure',
    plan: 'Traffic-control plan',
    sensors: 'Sensors',
    sensor: 'Sensor',
    kind: 'Kind',
    where: 'Where',
    notes: 'Notes',
    workNote: 'When working here',
    referenceEt: 'Reference evapotranspiration by month, as supplied',
    month: 'Month'
  },
  supplies: {
    stopTitle: (id: string) => `To stop the water at ${id}`,
    supply: 'Supply',
    kind: 'Kind',
    shutOff: 'Shut-off',
    limit: 'Most flow',
    pressure: 'Static pressure',
    meter: 'Meter',
    backflow: 'Backflow assembly',
    serial: 'Serial number',
    tested: 'Last tested',
    due: 'Next test due',
    tester: 'Tested by',
    reason: 'Reason'
  },
  boxes: {
    box: 'Box',
    tag: 'Tag',
    where: 'Where',
    ties: 'Measured ties',
    holds: 'Holds',
    load: 'Load rating',
    scan: 'Scan the code, or type the tag at',
    pictures: 'Pictures',
    pictureOf: (box: string) => `Valve box ${box}, lid open`,
    controller: (id: string) => `controller ${id}`,
    valve: (zone: string) => `valve ${zone}`,
    away: (status: string) => `out of service: ${status}`
  },
  controllers: {
    box: 'Box',
    sheet: 'Product sheet',
    serial: 'Serial number',
    battery: 'Battery',
    clock: 'Daylight saving',
    delay: 'Delay between stations',
    stations: 'Outputs',
    pulse: 'Pulse at the terminals',
    master: 'Master valve',
    pump: 'Pump start',
    supply: 'Supply',
    clocks: {
      'by itself': 'the clock changes by itself',
      'moved by hand': 'the clock is moved by hand',
      'not followed': 'the clock stays on standard time'
    },
    movedBy: (who: string) => (/^[a-z]/u.test(who) ? `by the ${who}` : `by ${who}`),
    outOfService: 'Out of service',
    noProgram: 'No program is written for this controller.',
    alike: 'Controllers set alike',
    controller: 'Controller',
    fitted: 'Fitted',
    allStrip: 'One watering day of all controllers, noon to noon, at 100 %. Hatched: the watering window.',
    allStripTitle: 'Watering day, all controllers',
    programTitle: (controller: string, program: string, name: string) =>
      `${controller} · program ${program}${name ? ` · ${name}` : ''}`,
    days: 'Days',
    starts: 'Start times',
    percent: 'Monthly percent',
    fromTo: 'In force',
    ends: 'Last station ends',
    from: (day: string) => `from ${day}`,
    to: (day: string) => `to ${day}`,
    strip: (controller: string) =>
      `One watering day of ${controller}, noon to noon, at 100 %. Hatched: the watering window.`,
    stripTitle: (controller: string) => `Watering day, ${controller}`,
    window: 'window'
  },
  zones: {
    station: 'Station',
    zone: 'Zone',
    waters: 'Waters',
    devices: 'Devices',
    area: 'Area',
    flow: 'Normal flow',
    rate: 'Application rate',
    noRate: 'flow or area is not supplied',
    valve: 'Valve',
    valveBox: 'Box',
    plants: 'Plant factor',
    soil: 'Soil',
    roots: 'Root depth'
  },
  wires: {
    lead: 'One-way lengths. Loop is both wires at 20 °C. The limit named is the one that governs.',
    station: 'Station',
    zone: 'Zone',
    wire: 'Wire',
    colour: 'Colors',
    length: 'One way',
    loop: 'Loop',
    coil: 'Coil',
    expected: 'Expect at controller',
    volts: 'Volts at coil',
    limit: 'Limit',
    longest: 'Longest run',
    verdict: 'Verdict',
    passes: 'PASSES',
    fails: 'FAILS',
    unknown: 'NO LIMIT STATED',
    open: 'NOT COMPUTED',
    baseline: 'Baseline',
    figureTitle: (station: string) => `Wire run, station ${station}`,
    figureCaption: (station: string, verdict: string) => `Run of station ${station}: ${verdict}.`,
    limitLength: (length: string, size: string) => `${length}${size ? ` at ${size}` : ''}`,
    limitLoop: (ohm: string) => `loop ${ohm}`,
    limitVolts: (volts: string) => `${volts} at coil`,
    splices: 'Splices',
    spliceLine: (station: string, where: string, kind: string) => `${station}: ${where}${kind ? `, ${kind}` : ''}`,
    readings: 'Readings on file',
    on: 'Date',
    by: 'By',
    fillIn: 'Readings to come'
  },
  schedule: {
    lead: (year: number) =>
      `Made from the programs as they stand, for ${year}. Minutes are open valve on one watering day. Days are the average for the month: days in month × watering days a week ÷ 7; odd and even dates are counted.`,
    station: 'Station',
    waters: 'Waters',
    year: 'Year',
    minutesPerDay: 'Minutes on a watering day',
    days: 'Watering days',
    minutes: 'Minutes in the month',
    volume: 'Water in the month',
    percent: 'Monthly percent',
    figureTitle: 'Minutes of watering by month, all stations',
    figureCaption: 'Open-valve minutes of the whole site, month by month. The same figures stand in the table.',
    volumeFigureTitle: 'Water given by month',
    volumeFigureCaption: 'Water given by the programs as they stand, month by month, for stations with a stated flow.',
    noFlow: 'Stations without a stated flow are not in the volume.',
    program: (controller: string, program: string) => `${controller}, program ${program}`,
    outOfSeason: (from: string, to: string) => `Outside ${from} to ${to} the controllers are off.`,
    nothing: 'No programs are written, so there is no schedule.'
  },
  batteries: {
    controller: 'Controller',
    box: 'Box',
    kind: 'Kind',
    count: 'Count',
    fitted: 'Fitted',
    due: 'Due',
    state: 'State',
    because: 'Set by',
    states: { ok: 'OK', 'due-soon': 'DUE SOON', overdue: 'OVERDUE', 'no-date': 'NO DATE', none: 'NONE' },
    log: 'Log: fill in at every change',
    date: 'Date',
    rest: 'Volts at rest',
    load: 'Volts under load',
    who: 'Who',
    clockSet: 'Clock and program seen',
    valvesSeen: 'Valves open and close',
    lead: 'A latching valve stays where it was when the battery dies. Change in time, then see every valve open and close.'
  },
  visits: {
    date: 'Date',
    by: 'By',
    reason: 'Reason',
    found: 'Found',
    done: 'Done',
    open: 'Left open',
    readings: 'Readings',
    none: 'No visit is on file.',
    blank: 'Visits to come'
  },
  warranty: { item: 'Item', start: 'Start', end: 'End', terms: 'Terms', contact: 'Who to call' },
  open: {
    none: 'Nothing is open.',
    alike: (code: string, names: readonly string[]) =>
      `The same, ${code}, holds for ${names.length} more: ${names.join(', ')}.`,
    lead: 'What the checks found on the data of this binder. An error is wrong or unsafe as it stands, a warning needs a look, a note is advice.',
    severities: { error: 'ERROR', warning: 'WARNING', note: 'NOTE' }
  },
  missing: {
    lead: 'These parts of a complete binder have not been supplied. They are listed so that nobody takes a gap for an oversight.',
    none: 'Everything asked for is here.',
    part: 'Part',
    what: 'What is missing',
    parts: {
      recordDrawing: ['Record drawing', 'A drawing of what was installed, dated and signed'],
      waterNeed: [
        'Water need and budget',
        'What the plants need month by month, and the allowance; this version prints what the programs give'
      ],
      calendar: ['Maintenance calendar and season checklists', 'Tasks by month, start-up and winterizing lists'],
      spares: ['Parts and spares', 'What is kept in stock and where it is bought'],
      warranty: ['Warranty', 'Item, start, end, terms and who to call'],
      training: ['Training record', 'Date, trainer, people, topics, signatures'],
      tests: ['Test reports', 'Pressure, flush, coverage, audit and start-up pressures'],
      photos: ['Photographs', 'Each box with the lid open, each trench before it was filled']
    } satisfies Record<string, readonly [string, string]>
  },
  signOffs: {
    lead: 'Sign when the binder was handed over and walked through on site.',
    installer: 'Installer',
    owner: 'Owner or representative',
    maintainer: 'Maintainer',
    fields: ['Name', 'Signature', 'Date']
  },
  numbers: {
    lead: 'Every figure comes from a named calculation. Run one alone with: npx underlid calc NAME. How a value came to be known is shown by its mark.',
    noWorkings: 'No figure was computed.'
  },
  restricted: {
    title: 'Restricted sheet',
    lead: 'Keep this sheet apart from the binder. Hand it only to people who need it, and collect it again.',
    what: 'What',
    word: 'Value',
    none: 'Nothing private is on file.'
  }
}

export function count(n: number, noun: string): string {
  return `${n} ${noun}${n === 1 ? '' : 's'}`
}
