/** Words of the watering day and the watering week. */
export const stripWords = {
  title: 'Watering day and week',
  dayTitle: (name: string, date: string) => `Watering day, ${name}, ${date}`,
  dayParts: {
    lead: (controllers: string, date: string) =>
      `The fullest night of the year for ${controllers}: from noon of ${date} to noon, by the legal clock.`,
    hours: 'Hatched behind the lanes: the hours allowed.',
    noRule: 'No watering rule is on file.',
    load: 'Below: what is drawn.'
  },
  weekTitle: (name: string) => `Watering week, ${name}`,
  weekParts: {
    lead: (controllers: string) => `The week of that night for ${controllers}. Each row runs from noon to noon.`,
    load: 'Hatched steps: what is drawn.',
    hours: 'Dashed frame: the hours allowed on that day.'
  },
  onSupply: (supply: string, controllers: string) => `all controllers on ${supply} (${controllers})`,
  window: 'hours allowed',
  load: (unit: string) => `Flow, ${unit}`,
  peak: (flow: string) => `most ${flow}`,
  limit: (flow: string) => `limit ${flow}`,
  weekdays: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  row: (weekday: string, date: string) => `${weekday} ${date}`,
  runs: 'Run by run, the fullest night',
  opens: 'Opens',
  shuts: 'Shuts',
  station: 'Station',
  waters: 'Waters',
  program: 'Program',
  minutes: 'Open',
  flow: 'Flow',
  days: 'The week, night by night',
  night: 'From noon of',
  count: 'Runs',
  open: 'Open valve',
  most: 'Most at once',
  first: 'First opens',
  last: 'Last shuts',
  noFlow: (stations: string) => `No flow is stated for ${stations}: what they draw is not in the figure.`
}
