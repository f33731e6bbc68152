/** Words of the totals and next runs of the schedule section, and of watering rules in plain words. */
export const totalsWords = {
  totals: 'Totals of the year',
  totalsNote:
    'Sums of the stations above. Openings are counted in the calendar of the year. Depth is the water over all areas together.',
  what: 'What',
  kinds: {
    station: 'Station',
    program: 'Program',
    controller: 'Controller',
    supply: 'Supply',
    site: 'Whole site'
  },
  openings: 'Openings',
  minutes: 'Minutes',
  volume: 'Water',
  depth: 'Depth',
  atLeast: (text: string) => `${text} or more`,
  flowNotStated: (ids: string) => `Not in the water, since no flow is stated: ${ids}.`,
  next: 'Next runs',
  nextNote: (on: string) => `By the clock of each controller, from the morning of ${on}, if nobody changes anything.`,
  station: 'Station',
  waters: 'Waters',
  run: (index: number) => `${index}.`,
  runText: (date: string, time: string, minutes: string) => `${date} ${time}, ${minutes}`,
  sensor: 'A sensor may stop it',
  suspended: 'Held back',
  controller: 'Controller',
  program: 'Program',
  allPrograms: 'all',
  from: 'First day',
  to: 'Last day',
  why: 'Why',
  acts: {
    'stops all': 'stops all stations of its controller',
    'stops its stations': 'stops its stations',
    'only reports': 'only reports'
  },
  actsByKind: { true: 'holds watering back, by its kind', false: 'only reports, by its kind' },
  couldStop: (openings: number, minutes: string) => `; it could stop ${openings} openings, ${minutes}, of the year`,
  sensorText: (sensor: string, kind: string, does: string, could: string) => `${sensor} (${kind}) ${does}${could}.`,
  rule: {
    daysByAddress: (days: string, number: number | 'none') =>
      number === 'none' ? `${days}, for places without a street address` : `${days}, for house number ${number}`,
    group: (digits: string, days: string) => `numbers ending in ${digits}: ${days}`,
    groupNone: (days: string) => `no street address: ${days}`,
    holds: 'Rule holds',
    dates: (from: string, to: string) => `from ${from} to ${to}`,
    when: { 'daylight-saving': 'while daylight saving is on', standard: 'while standard time is on' },
    cap: 'Most in a day',
    capText: (most: string) => `${most} for each station`,
    except: 'Left free',
    afterRain: 'After rain',
    afterRainText: (time: string) => `no watering within ${time} of rain; the controllers cannot know`
  }
}
