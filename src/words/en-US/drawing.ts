/** Words of the record drawing and of the controller charts. */
export const drawingWords = {
  places: {
    box: 'Valve box',
    controller: 'Controller',
    'shut-off': 'Shut-off',
    meter: 'Meter',
    backflow: 'Backflow assembly',
    sensor: 'Sensor',
    splice: 'Splice',
    filter: 'Filter',
    pump: 'Pump',
    'quick coupler': 'Quick coupler',
    drain: 'Drain',
    'ground rod': 'Ground rod',
    other: 'Other'
  },
  /** Beside the sign of a thing, after the name of what it is of. */
  short: {
    'shut-off': 'shut-off',
    meter: 'meter',
    backflow: 'backflow',
    sensor: 'sensor',
    splice: 'splice',
    filter: 'filter',
    pump: 'pump',
    'quick coupler': 'coupler',
    drain: 'drain',
    'ground rod': 'rod',
    box: 'box',
    controller: 'controller',
    other: ''
  },
  valveBox: 'Valve box with valves',
  valve: 'Valve',
  point: 'Permanent point',
  tie: 'Tie, measured distance',
  aside: 'True place of a symbol',
  lines: {
    curb: 'Curb',
    'road edge': 'Edge of the road',
    wall: 'Wall',
    building: 'Building',
    walk: 'Edge of a walk',
    fence: 'Fence',
    main: 'Main line',
    lateral: 'Lateral',
    wire: 'Wire path',
    sleeve: 'Sleeve',
    other: 'Other, by its name'
  },
  north: 'N',
  master: 'MV',
  splices: (count: number) => (count === 1 ? '1 splice' : `${count} splices`),
  zone: (zone: string, station: string) => (zone === station ? station : `${zone}, ${station}`),
  scale: (ratio: number) => `1:${ratio}`,
  scaleFeet: (feet: number, ratio: number) => `1 in = ${feet} ft (1:${ratio})`,
  heading: 'RECORD DRAWING',
  ownNote: (own: string, signed: string) =>
    `${own}, the plan of this binder, is drawn from the site file at a scale of its own. It does not take the place of ${signed}.`,
  caption: (scale: string) =>
    `As installed, ${scale} when printed at full size. Measure by the scale bar where it was not.`,
  title: (site: string) => `Record drawing, ${site}`,
  alt: (scale: string, things: readonly string[], zones: readonly string[]) =>
    `Plan at ${scale}, north up. Drawn: ${things.join(', ')}.${zones.length > 0 ? ` Zones by pattern: ${zones.join(', ')}.` : ''} Places and ties stand in the table after it.`,
  block: {
    site: 'Site',
    sheet: 'Sheet',
    ownSheet: (own: string, signed: string) => (signed === '' ? own : `${own}; signed: ${signed}`),
    dated: 'Dated',
    revision: 'Revision',
    scale: 'Scale',
    tolerance: 'Places',
    within: (amount: string) => `within ${amount}`,
    pressure: 'Pressure',
    static: (pressures: string) => `${pressures} static`,
    by: 'Drawn for',
    notSupplied: 'not supplied'
  },
  notes: {
    unplaced: (names: readonly string[]) => `Not on this drawing: ${names.join(', ')}`
  },
  table: {
    caption: 'Places on the drawing',
    thing: 'Thing',
    where: 'Where',
    ties: 'Ties',
    east: 'East',
    north: 'North',
    by: 'By',
    how: { measured: 'measured', degrees: 'degrees', ties: 'two ties' },
    origin: 'East and north are counted from the origin of the drawing; west and south are below zero.'
  },
  unplaced: {
    caption: 'Without a place on the drawing',
    thing: 'Thing',
    why: 'Why',
    because: {
      nothing: 'no place is written',
      'few-ties': 'fewer than two ties lead to a point of the drawing',
      'no-meeting': 'its ties do not meet',
      'two-spots': 'its ties fit two spots; the side is not written',
      'no-origin': 'it is written in degrees, and the origin of the drawing is not'
    }
  },
  none: {
    text: 'No place is known, so nothing can be drawn. Write where the boxes and the points of their ties are, under drawing.',
    caption: 'Ties as measured',
    box: 'Box',
    where: 'Where',
    ties: 'Ties'
  },
  find: {
    heading: 'How to find each box',
    title: (box: string) => `How to find ${box}`,
    alt: (box: string, ties: readonly string[]) =>
      `Plan of the ground round ${box}, north up.${ties.length > 0 ? ` Ties: ${ties.join('; ')}.` : ''}`,
    picture: (box: string) => `Box ${box}`
  },
  chart: {
    section: 'Controller charts',
    document: 'Controller charts',
    heading: (controllers: string, count: number) => `${count === 1 ? 'Controller' : 'Controllers'} ${controllers}`,
    keep: 'KEEP AT THE CONTROLLER',
    copies: 'Three copies: one sealed at the controller, two for the owner. Print anew when anything changes.',
    planTitle: (controllers: string) => `Zones of ${controllers}`,
    planAlt: (controllers: string, zones: readonly string[]) =>
      `Plan of the zones of ${controllers} by pattern, north up: ${zones.join(', ')}.`,
    schematic: 'Zones by pattern, not to scale: the site file has no drawing of their ground.',
    pattern: 'Pattern',
    station: 'Station',
    zone: 'Zone',
    waters: 'Waters',
    valve: 'Valve',
    box: 'Box',
    master: 'Master valve',
    minutes: 'Minutes on a watering day',
    quarters: ['Jan–Mar', 'Apr–Jun', 'Jul–Sep', 'Oct–Dec'],
    off: 'off',
    spread: (low: string, high: string) => (low === high ? low : `${low}–${high}`),
    asOf: (day: string, revision: string) => `Program as of ${day}, revision ${revision}`,
    programs: 'Program',
    program: (id: string, days: string, starts: string) => `${id}: ${days}, start ${starts}`,
    established: (zone: string, day: string) =>
      `${zone}: established from ${day}; the times above follow the program, change it on that day`,
    shutOff: 'Shut-off',
    shutsOff: (supply: string, where: string) => `${supply}, all water of this controller: ${where}`,
    meter: 'Meter',
    backflow: 'Backflow assembly',
    installer: 'Installer',
    warranty: 'Warranty',
    warrantySpan: (item: string, from: string, to: string) => `${item}: ${from} to ${to}`
  }
}
