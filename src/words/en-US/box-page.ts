import { MONTH_NAMES } from '../../units/date.ts'

/** Words that the data of a box page is made from. The labels of its parts stand with the templates' words. */
export const boxPageWords = {
  serves: (what: readonly string[]) =>
    what.length === 0 ? 'Nothing is recorded in this box.' : `This box holds ${list(what)}.`,
  shutOff: (id: string, kind: string) => `${id} · ${kind}`,
  noShutOff: 'Where to shut the water off is not supplied. Look for the meter or the main valve and tell the owner.',
  byHandTitle: 'At the valve',
  byHandSteps: [
    'Close the valve by hand: turn the flow control down, or turn the coil until the flow stops.',
    'A latching valve does not close by itself when the battery is taken out.'
  ],
  months: MONTH_NAMES as readonly string[],
  asOf: (day: string) => `As of ${day}`,
  noRunToday: 'No watering on this day.',
  runToday: (program: string, from: string, to: string) => `Program ${program}: ${from} to ${to}`,
  daysLine: (program: string, days: string, starts: string) => `Program ${program}: ${days}, start ${starts}`,
  offSeason: (from: string, to: string) => `Off outside ${from} to ${to}.`,
  windowRule: (window: string, authority: string) => `Watering allowed ${window}${authority ? ` (${authority})` : ''}.`,
  laneRule: (window: string) => `Lane closure ${window}.`,
  noProgram: 'No program on file for this controller.',
  lastVisit: (day: string, by: string) => `Last visit ${day}${by ? ` by ${by}` : ''}`,
  noVisit: 'No visit is on file.',
  away: (what: string, reason: string) => `${what} is out of service: ${reason}`,
  twins: (others: readonly string[]) => `This tag is on ${list(others)} too. See which box you are at before you work.`,
  /** What a check found, in its own words. */
  found: (message: string) => message,
  openFault: (text: string) => `Open: ${text}`,
  batteryReading: (controller: string, rest: string, load: string) =>
    `${controller} battery: ${[rest && `${rest} at rest`, load && `${load} under load`].filter(Boolean).join(', ')}`,
  loopReading: (station: string, loop: string) => `${station}: loop ${loop}`,
  coilReading: (station: string, coil: string) => `${station}: coil ${coil}`,
  meterReading: (supply: string, meter: string) => `${supply} meter: ${meter}`,
  quote: (tag: string) => `Quote ${tag}`,
  printedCopy: 'A printed binder is with the owner.',
  revision: (revision: string) => `Revision ${revision}`,
  dataDate: (day: string) => `Data of ${day}`,
  coil: (kind: string, ohm: string, leads: string) => [kind, ohm && `about ${ohm}`, leads].filter(Boolean).join(', '),
  baseline: (value: string, day: string) => `${value} on ${day}`,
  coilKinds: {
    'DC latching 2-wire': 'DC latching 2-wire',
    'DC latching 3-wire': 'DC latching 3-wire',
    '24 V AC': '24 V AC',
    'not known': 'not known'
  },
  roles: {
    owner: 'owner',
    maintainer: 'maintainer',
    installer: 'installer',
    electrician: 'electrician'
  },
  every: (minutes: string) => `${minutes} min`,
  gone: {
    title: (tag: string) => `Tag ${tag}`,
    moved: (box: string, where: string) =>
      `This box was moved. It was ${box}.${where ? ` It is now at ${where}.` : ''}`,
    retired: (box: string) => `This box is out of use. It was ${box}.`,
    replaced: (box: string) => `This tag was replaced. It was ${box}.`,
    unplaced: (box: string) =>
      `This tag belongs to ${box}. Its page could not be made. Call the owner and quote the tag.`
  }
}

/** "a", "a and b", "a, b and c". */
export function list(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? ''
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`
}
