/** Words of the section on programs that would meet the need. */
export const adviceWords = {
  title: 'Programs that would meet the need',
  lead: 'Worked out from the same need as the tables of water: run times for the month in which a watering must give most, each cycle rounded up to the controller’s step, inside the hours and days allowed, beside the other stations and controllers. As near to what is set as that allows. Months in which nothing is programmed stay dry.',
  heading: (controllers: string) => `${controllers}: program to key in`,
  asSetMeets: (controllers: string) =>
    `${controllers}: as set meets the need, within a step or a tenth in every month, and inside the rules.`,
  notKnown: (controllers: string) => `${controllers}: the need of its zones is not known, so nothing is advised.`,
  cannot: (controllers: string) =>
    `${controllers}: nothing that it can be set to meets the need within the rules. What stands in the way:`,
  asSet: (program: string) => `As set: ${program}`,
  wouldMeet: (program: string) => `What would meet the need: ${program}`,
  program: (controllers: string, program: string) => `${controllers}, program ${program}`,
  stays: (programs: string) => `Stays as set: program ${programs}.`,
  notJudged: (station: string, reason: string) => `${station} is left as set: ${reason}.`,
  hours: (need: string, allowed: string, short: string) =>
    `Needs ${need} a night; the rules allow ${allowed} on end: ${short} short.`,
  hoursDay: (need: string, allowed: string, short: string) =>
    `Needs ${need} a night; the rules allow ${allowed}: ${short} short.`,
  supply: (need: string, free: string, short: string) =>
    `Needs ${need} a night; beside the others on its supply ${free} are free in the hours allowed: ${short} short.`,
  reservoir: (zone: string, month: string, need: string, holds: string, over: string) =>
    `${zone}, ${month}: with as many waterings as the rules allow, one must put on ${need}; the root zone takes up ${holds}: ${over} drain away.`,
  interval: (zone: string, month: string, gap: number, lasts: number) =>
    `${zone}, ${month}: the root zone lasts ${days(lasts)}; the days allowed leave ${days(gap)} between waterings: ${days(gap - lasts)} too long.`,
  intake: (zone: string, least: string, longest: string, over: string) =>
    `${zone}: water runs off after ${longest}; the shortest cycle that can be set is ${least}: ${over} too long.`,
  cap: (zone: string, month: string, need: string, allowed: string, over: string) =>
    `${zone}, ${month}: with as many waterings as the rules allow, a day must give it ${need}; a rule allows ${allowed} a day: ${over} too long.`,
  cycleStarts: (zone: string, wanted: number, takes: number) =>
    `${zone}: it has no cycles with a soak, and ${wanted} starts a day would be wanted in their place; it takes ${takes}.`,
  startsADay: (wanted: number, makes: number) =>
    `Each of its ${wanted} programs wants a start; it makes ${makes} a day: ${wanted - makes} too many.`,
  noPercent: 'none: key in the minutes of each month',
  byMonth: (program: string) => `${program}: minutes to key in, each month, for each cycle`,
  programs: (wanted: number, holds: number) =>
    `${wanted} programs of different dates are wanted; it holds ${holds}: ${wanted - holds} too many.`,
  days: (rule: string, date: string) =>
    `No setting of its days keeps to the days allowed: “${rule}” leaves them on ${date}. Start the count anew by then, each time, or fit a controller with a setting for dates.`,
  noDays: (rule: string) => `No setting of its days keeps to the days allowed, “${rule}” neither.`,
  given: 'Needed and given, month by month',
  givenLead:
    'Depth over the whole area. Needed: what the plants lack after rain, with the losses of the zone made good. Given: minutes as programmed times the application rate.',
  figureTitle: (station: string) => `${station}: needed and given`,
  figureCaption: (station: string, need: string, given: string) =>
    `${station}: ${need} needed in the year, ${given} given.`,
  figureCaptionUnknown: (station: string, given: string, why: string) =>
    `${station}: ${given} given in the year. Need not computed: ${why}.`,
  needed: 'needed',
  givenShort: 'given as set',
  table: (unit: string) => `Depth needed and given, ${unit}`,
  station: 'Station',
  waters: 'Waters',
  year: 'Year',
  rowWhat: 'What',
  rowNeeded: 'needed',
  rowSet: 'as set',
  rowAdvised: 'as advised'
}

function days(count: number): string {
  return count === 1 ? '1 day' : `${count} days`
}
