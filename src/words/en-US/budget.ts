/** Words of the water budget. */
export const budgetWords = {
  title: 'Water budget',
  lead: 'What the site may use in a year, what its zones are estimated to use, what the programs give as they stand, and what the meter counted. The authority decides what counts.',
  none: 'The allowance of the site, and meter readings against it',
  facts: 'Allowance and use of a year',
  form: 'Form',
  forms: {
    'ordinance 2015':
      'Model water efficient landscape ordinance, 2015: (ETo) × 0.62 × [adjustment × area + (1 − adjustment) × special area]',
    'annual volume': 'A volume of the year'
  },
  authority: 'Set by',
  et: 'Reference evapotranspiration of the year',
  area: 'Landscape area',
  specialArea: 'of it counted in full',
  adjustment: 'Evapotranspiration adjustment',
  allowance: 'Allowance',
  estimated: 'Estimated use',
  programmed: 'As programmed',
  within: 'WITHIN',
  over: 'OVER',
  months: (year: number) => `Month by month, ${year}`,
  month: 'Month',
  yearRow: 'Year',
  monthsNotes: {
    shares:
      'The allowance of a year falls on the months as their reference evapotranspiration does (rule of this project).',
    ordinance:
      'The estimate is that of the ordinance: evapotranspiration × factor ÷ efficiency × area, the whole year, without rain.',
    need: 'The estimate is what the plants lack over the days that are watered, after the rain that counts, with the losses on file.',
    flows: (stations: string) => `What ${stations} draws is not in the programmed water: no flow is stated.`
  },
  figureTitle: 'Water estimated and programmed by month',
  figureCaption:
    'What the zones are estimated to use beside what the programs give, month by month. The same figures stand in the table.',
  zones: 'Zones as the ordinance counts them',
  station: 'Station',
  waters: 'Waters',
  factor: 'Plant factor',
  efficiency: 'Efficiency',
  zoneArea: 'Area',
  use: 'Estimated use',
  special: 'counted in full',
  efficiencyNote: 'Efficiency where none is on file: overhead 75 %, drip 81 %, as the ordinance counts them.',
  meter: 'Meter readings from visits',
  supply: 'Supply',
  from: 'From',
  to: 'To',
  metered: 'Metered',
  ofProgram: 'Of programmed',
  allowed: 'Allowance of those days',
  backward: 'the later reading is lower',
  meterNotes: [
    'Programmed: by the programs as they stand now, from noon of the first day to noon of the last.',
    'More than a quarter over points to a leak or a run-on, more than a quarter under to a closed valve or a sensor that held back (common practice, no source).'
  ]
}
