/** Words of the battery section: life, visits, panels, cells, and what to do at a change. */
export const powerWords = {
  visits: {
    'start-up': 'start-up visit',
    'season-end': 'visit that ends the season',
    task: (name: string) => name,
    next: 'next visit',
    own: 'a visit of its own'
  },
  visitOn: (visit: string, on: string) => `${visit}, ${on}`,
  because: {
    'last before due': 'the last regular visit before it is due',
    'none before due': 'no regular visit is left before it is due',
    overdue: 'it is overdue',
    'no date': 'nobody wrote when it was fitted'
  },
  due: {
    by: {
      interval: (span: string, fitted: string, isStated: boolean) =>
        `${span} after ${fitted}${isStated ? '' : ', where none is stated (rule of this project)'}`,
      span: (months: number, days: number) =>
        [counted(months, 'month'), counted(days, 'day')].filter(Boolean).join(' ') || '0 days',
      life: (days: number, fitted: string) => `computed life of ${days} days after ${fitted}`,
      dateCode: (day: string) => `date code of the cells, ${day}`
    },
    doAt: 'Change at',
    whatAt: (what: string, visit: string) => `${what} (change at: ${visit})`,
    note: 'The season never sets a due date. The visit is the last regular one before it: the first or last day of the season, or a task of the maintenance plan.'
  },
  life: {
    heading: 'How long a set lasts',
    lead: 'The earliest of these days is the due date. Drain and pulses come from the product sheet, pulses from the programs as they run over the year; cold is given no credit.',
    controllers: 'Controllers',
    counted: 'Charge counted on',
    standing: 'Drawn all the time',
    pulses: 'Pulses',
    pulsesDrawn: 'Drawn by pulses',
    lost: 'Lost by itself',
    perYear: 'mAh a year',
    inYear: 'a year',
    byCharge: 'Charge lasts until',
    byPulses: 'Stated pulses until',
    byInterval: 'Interval until',
    dateCode: 'Date code',
    due: 'Due by',
    notStated: 'the sheet states neither drain nor pulse',
    beyond: 'more than 20 years',
    capacityNotes: {
      sheet: 'Capacity of the product sheet',
      table: 'Typical capacity of the kind'
    },
    charge: (capacity: string, usable: string, cold: string | undefined) =>
      `${capacity} × ${usable}${cold === undefined ? '' : ` × ${cold}`}`,
    temperature: (mean: string) => `Mean temperature of the year: ${mean}. Heat adds to what is lost.`,
    temperatureNotKnown:
      'The temperature of the place is not known: self-discharge is that of 25 °C, and no month counts as cold.',
    cold: (ids: string, month: string, mean: string, share: string) =>
      `${ids}: in ${month}, at a mean of ${mean}, ${share} of the charge is counted on.`,
    usual:
      'Where a sheet does not say it, 70 % of the capacity is counted on and 3 % a year is lost (common practice, no source).'
  },
  year: {
    title: (ids: string) => `The battery’s year: ${ids}`,
    alt: (ids: string, fitted: string, due: string, pulses: string, visit: string | undefined) =>
      `${ids}: fitted ${fitted}, due ${due}, ${pulses} pulses between${visit === undefined ? '' : `, change at: ${visit}`}.`,
    unit: 'pulses a month',
    season: 'watering season',
    fitted: (on: string) => `fitted ${on}`,
    due: (on: string) => `due ${on}`,
    today: 'data date',
    visit: (visit: string, on: string) => `${visit} ${on}`,
    dateCode: (on: string) => `date code ${on}`,
    caption: (ids: string, because: string, code: string | undefined) =>
      `${ids}: due by ${because}.${code === undefined ? '' : ` Date code of the cells: ${code}.`} Months at either end are counted in part.`
  },
  pulses: {
    caption: 'Pulses of each month, as the programs run over the year',
    year: 'Year',
    note: 'Two for each opening, and two more at each start for a master valve and for a pump relay.'
  },
  solar: {
    heading: 'Solar panels, month by month',
    caption: (ids: string) => `${ids}: what the panel gives against what is drawn, on a mean day`,
    month: 'Month',
    light: 'Light on the panel',
    lightUnit: 'MJ/m²',
    gives: 'Gives',
    drawn: 'Draws',
    unit: 'mAh a day',
    verdict: 'Is that enough',
    verdicts: { enough: 'ENOUGH', 'in doubt': 'IN DOUBT', 'too little': 'TOO LITTLE' },
    by: { measured: 'measured radiation', sunshine: 'the sunshine of the place', overcast: 'every day overcast' },
    stands: (tilt: string, shade: string) => `The panel counts as ${tilt}, with ${shade}.`,
    flat: 'lying flat',
    tilted: (degrees: string) => `tilted ${degrees}°`,
    shadeLost: (share: string) => `${share} of the light lost to shade`,
    shadeNotStated: 'no shade, since none is stated',
    basis: (by: string) => `Light by ${by}.`,
    autonomy: (days: string, stated: string | undefined) =>
      `A full cell lasts ${days} days without light in the month that draws most${stated === undefined ? '' : `; the sheet says ${stated}`}.`,
    autonomyAbsent: (why: string) => `Days without light: not computed, ${why}.`,
    absent: (ids: string, why: string) => `${ids}: not computed, ${why}.`,
    note: 'In doubt means less than twice what is drawn, too little less than it (rules of this project). Dirt, leaves and a growing hedge take more.'
  },
  cells: {
    heading: 'Cells used here',
    kind: 'Kind',
    controllers: 'Controllers',
    volts: 'New, at rest',
    change: 'Change below, under load',
    cold: 'In the cold',
    shelf: 'Keeps on the shelf',
    below: (volts: string) => `${volts}`,
    memory: 'from memory',
    coldSheet: (at: string, share: string) => `${share} at ${at}`,
    coldRule: 'half below 0 °C',
    coldNotKnown: 'not known; better than alkaline',
    shelfText: { alkaline: 'about 5 years', lithium: '10 years or more', zinc: '2 to 3 years' },
    notes: [
      'A spent cell recovers at rest: judge a set by its volts under load, never by its volts at rest.',
      'Half below 0 °C is a rule of this project; shelf life is common practice, no source. The date code comes before both.',
      'Alkaline cells leak when they are spent, mixed or left in a unit that rests. Take them out for the winter if nothing runs.',
      'Rechargeable cells lose far more by themselves and are for units with a panel. Do not put them in place of others.'
    ]
  },
  change: {
    heading: 'At a change of cells',
    open: 'See that no valve is open. Close an open one from the unit, or by hand.',
    settings: 'Have the program card at hand before you take the old cells out.',
    whole: 'Change the whole set at once: one kind, one make, bought together, plus and minus as marked.',
    memory: {
      yes: (ids: string) =>
        `${ids}: the programs are kept while the cells are out. See that they are, and set the clock if it is off.`,
      no: (ids: string) =>
        `${ids}: the programs are lost when the cells are out. Set clock and date, then key in the program card.`,
      time: (ids: string, time: string) =>
        `${ids}: the programs are kept for ${time} without cells. Have the new ones unpacked; if it took longer, set clock and date and key in the program card.`,
      unknown: (ids: string) =>
        `${ids}: the sheet does not say whether the programs are kept. Hold them against the program card afterward, and set the clock.`
    },
    afterLoss: (title: string, how: string) => `${title}, when clock and program are gone: ${how}`,
    low: {
      closes: (ids: string) =>
        `${ids}: by its sheet it closes its valves before the cells are empty. Do not count on it.`,
      'stays as it is': (ids: string) => `${ids}: by its sheet an open valve stays open when the cells run down.`,
      unknown: (ids: string) =>
        `${ids}: the sheet does not say what it does with an open valve when the cells run down. Take it that it stays open.`
    },
    measure: 'Measure the new set under load and write it in the log, with the date code.',
    valves: 'Open and close every valve once and look at each.',
    away: 'Take the spent cells away with you the same day.'
  },
  disposal: 'Where spent cells go'
}

function counted(count: number, noun: string): string {
  return count === 0 ? '' : `${count} ${noun}${count === 1 ? '' : 's'}`
}
