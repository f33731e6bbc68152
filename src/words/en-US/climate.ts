import type { RainMethod } from '../../reference/effective-rain.ts'
import type { PhaseKind } from '../../domain/water/phase-need.ts'

const ways = {
  'by-hand': 'as stated',
  'daily-weather': 'weather of the daily record',
  'daily-temperatures': 'temperatures of the daily record',
  weather: 'monthly weather',
  'zone-table': 'zone table',
  temperatures: 'mean temperatures'
}

const lacks = {
  humidity: 'dew point or humidity',
  wind: 'wind',
  sunshine: 'sunshine or radiation',
  elevation: 'elevation'
}

const rainMethods: Readonly<Record<RainMethod, string>> = {
  none: 'No rain is counted.',
  'tr-21':
    'Rain that counts is told for each zone, by its use and by what its soil stores (USDA soil storage method, National Engineering Handbook 623).',
  'scs-monthly': 'Rain counts by the USDA monthly method as FAO paper 46 has it.',
  'fao-manual-3': 'Rain counts by FAO training manual 3, for slopes of up to 5 %.',
  'per-event': 'Each day of the record counts as one rain, by the rule of the Texas evapotranspiration network.',
  'quarter-of-annual': 'A quarter of the rain counts, the most that California lets count.'
}

const phases: Readonly<Record<PhaseKind, string>> = {
  establishment: 'Establishment',
  established: 'Established',
  temporary: 'Temporary watering',
  none: 'Not watered'
}

/** Words of climate and need in the binder. */
export const climateWords = {
  caption: 'Climate, month by month',
  month: 'Month',
  et: 'Reference ET',
  how: 'How it was made',
  off: 'Give or take',
  rain: 'Rain',
  counted: 'Rain that counts',
  byZone: 'by zone',
  unknownOff: '–',
  ways,
  zone: (zone: number) => `zone table, zone ${zone}`,
  daysOnRecord: 'Days on record',
  from: (name: string) => `Figures of: ${name}.`,
  record: (days: number, first: string, last: string) => `Daily record: ${days} days, ${first} to ${last}.`,
  year: (et: string, counted: string) => `The year: ${et} of reference ET, ${counted} of rain that counts.`,
  yearEt: (et: string) => `The year: ${et} of reference ET.`,
  estimate:
    'Give or take is how far an estimate from temperatures alone may be off: too little in wind of more than 3 m/s, too much in humid air.',
  zoneSource:
    'Zone table: California’s map of reference evapotranspiration zones, Department of Water Resources, 1999.',
  madeBy: (cards: string) => `Computed by ${cards}; see How these numbers were made.`,
  lacks: (list: string) => `Not all of the weather is stated (${list}), so temperatures alone are used.`,
  others: (used: string, others: string) => `${used} goes first; ${others} where it has no figure.`,
  lackNames: lacks,
  rainMethods,
  underGlass: 'Under glass no rain counts.',

  needCaption: 'What each zone wants',
  station: 'Station',
  waters: 'Waters',
  factor: 'Factor',
  phase: 'Phases',
  losses: 'Losses',
  interval: 'Longest interval',
  yearNeed: 'Need of the year',
  plantFactor: (factor: string) => `${factor}, plant factor`,
  parts: (factor: string, species: string, density: string, microclimate: string) =>
    `${factor} = species ${species} × density ${density} × microclimate ${microclimate}`,
  phases,
  phaseLine: (name: string, span: string, factor: string) => `${name}${span}${factor === '' ? '' : `: ${factor}`}`,
  span: (from: string | undefined, to: string | undefined): string => {
    if (from !== undefined && to !== undefined) return `, ${from} to ${to}`
    if (from !== undefined) return ` from ${from}`
    return to === undefined ? '' : ` to ${to}`
  },
  phaseFactor: (factor: string) => `factor ${factor}`,
  phasePercent: (percent: string) => `${percent} of the factor`,
  efficiency: (share: string, multiplier: string) => `efficiency ${share}: × ${multiplier}`,
  dulq: (share: string, multiplier: string) => `uniformity ${share}, stated: × ${multiplier}`,
  cans: (share: string, multiplier: string) => `uniformity ${share}, by cans: × ${multiplier}`,
  noLosses: 'none counted: × 1',
  wholeDays: (days: number, month: string) =>
    days === 0 ? `less than a day, ${month}` : `${days} ${days === 1 ? 'day' : 'days'}, ${month}`,
  needNotes: [
    'Factor is the share of reference ET that the plants use. Losses multiply the need: one over the efficiency, or one over 0.4 + 0.6 × the uniformity of the lowest quarter.',
    'Longest interval: whole days that the root zone lasts in the month that uses most, rain left out.'
  ],
  monthsCaption: (unit: string) =>
    `Need of the plants before losses, ${unit}, and the day’s need as a percent of the greatest`,
  monthsNote: 'Computed by phase-need and monthly-percent; zones that want the same share a line.',
  need: 'need',
  percent: '%'
}
