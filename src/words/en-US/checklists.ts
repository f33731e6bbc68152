/** Words of the lists that are ticked off through the year, of the glossary and of the index. */
export const checklistWords = {
  section: 'Checklists by season',
  glossary: 'Glossary',
  index: 'Index of boxes, zones and parts',
  indexPlaces: (most: number) => `Each name with the pages that hold it, from the front, ${most} at most.`,
  lead: 'Copy the list, tick each line as it is done, write what is not in order beside it, and keep the copy behind the visits.',
  by: ['Date', 'Arrived', 'Left', 'By', 'Company', 'Signature'],
  runs: 'Each station, run by hand or by the controller',
  runColumns: {
    station: 'Station',
    waters: 'Waters',
    opened: 'Opened',
    closed: 'Closed fully',
    flow: 'Flow',
    pressure: 'Pressure',
    ohms: 'Reading',
    remark: 'Remark'
  },
  expected: (text: string) => `(${text})`,
  /** What is done before any other step, by the place. */
  first: {
    cautions: 'Read the cautions at the front of this binder.',
    traffic:
      'Have the signs and cones set out by trained people, as the traffic-control plan shows, before anyone steps out.',
    edge: 'Put on fall protection before you go near the edge, and stay clipped to the anchor.',
    look: 'Look before you reach into a box: lift the lid with a tool, wear gloves, clear nests, soil and sharp ends.'
  },
  startUp: {
    title: (from: string | undefined) =>
      from === undefined ? 'Start of the season' : `Start of the season, before ${from}`,
    drains: 'Close every drain and test cock.',
    slow: (shutOff: string | undefined) =>
      `Open the shut-off slowly, a quarter turn at first, and let the air out at the far end${shutOff === undefined ? '' : ` (${shutOff})`}.`,
    still:
      'With every valve closed, read the meter twice, ten minutes apart. It must stand still. Readings: ________ and ________',
    backflow: (due: string | undefined) =>
      due === undefined
        ? 'Have the backflow assembly tested by a certified tester, where the authority asks for it.'
        : `Backflow assembly: the next test is due on ${due}, by a certified tester.`,
    batteries: (list: string) =>
      `Fit fresh cells where they fall due: ${list}. Write the day on the cells and in the battery log.`,
    clock:
      'Set date and time of each controller, and hold its program against the program card. Found: ________ Left: ________',
    sensors: 'Trip each sensor and see that watering stops; set it back.',
    filters: 'Clean filters and flush each drip line at its far end until the water runs clear.',
    run: 'Run each station and fill in the table: opens, leaks, blocked or turned heads, spray on paving, closes fully.'
  },
  monthly: {
    title: 'Each month of the season',
    walk: 'Walk each zone while it runs and flag leaks, broken or missing heads and blocked drippers.',
    percent: 'Set the month’s run times by the schedule of this binder. Old: ________ New: ________',
    meter: 'Read the meter: ________ Hold it against the budget.',
    plants: 'Mulch, weeds and plants: nothing stands before a head, lies on a box or shades a panel.',
    soil: 'Dig to root depth in the driest and the wettest place: dry, right or wet? ________',
    report: 'Report to the owner: site, controller, program, start and run times, what needs repair.'
  },
  close: {
    title: 'End of the season',
    by: (day: string) => `End of the season, before ${day}`,
    off: 'Shut the water off and release the pressure by opening one valve by hand, slowly.',
    drain: 'Open every drain, the lowest last, and leave it open.',
    air: (limit: string | undefined) =>
      limit === undefined
        ? 'Blow out one zone at a time, never above what the weakest part is rated for, and stop when it runs dry.'
        : `Blow out one zone at a time at no more than ${limit}, and stop when it runs dry.`,
    none: 'The lines stay full here: frost is not expected. Look at the forecast all the same.',
    valves: 'Leave no valve open: pulse each one closed and see that it is.',
    controller:
      'Set each controller to off. Take the cells out where they leak or freeze, and keep the program card in the box.',
    backflow: 'Drain the backflow assembly and leave its cocks half open.',
    meter: 'Read the meter: ________',
    lids: 'Close and fasten every lid.'
  },
  audit: {
    title: 'Once a year',
    pressure: 'Pressure with nothing running: ________ Pressure at the last head while it runs: ________',
    cans: 'Catch-can test of each spray zone: 24 devices or more, wind at most 5 mph (2.2 m/s), noted every five minutes.',
    ohms: 'Read every coil and loop, with the temperature, and hold them against the readings at closeout.',
    drawing: 'Hold the record drawing against what is there; correct it.',
    lids: 'Tags, labels and lids: readable, whole, level with the ground.'
  },
  roof: {
    title: 'Roof, each visit',
    drains: 'Outlets and overflows are clear and run.',
    damp: 'No damp below the roof, no standing water on it.',
    lines: 'Lines and clips are whole; nothing cuts into the membrane.',
    action: 'Not in order: ________ To be done: ________ Done on: ________'
  },
  terms: [
    ['Allowable depletion', 'The share of the available water that plants may use before they are watered again.'],
    ['Application rate', 'Depth of water put on in a time, in mm/h or in/h.'],
    ['Backflow assembly', 'Keeps irrigation water from flowing back into drinking water.'],
    ['Box page', 'The page that the code under the lid opens.'],
    ['Coil', 'The winding that moves the plunger of a valve.'],
    ['Common wire', 'The wire that the coils of a controller share on their way back.'],
    ['Cycle and soak', 'A run split in parts with rests between, so that the soil takes the water in.'],
    [
      'DC latching',
      'A coil that needs one short pulse to open and one of the other polarity to close, and holds by a magnet between.'
    ],
    ['Distribution uniformity', 'How evenly the water falls: the driest quarter against the mean.'],
    ['Loop resistance', 'Both wires of a run, there and back, without the coil.'],
    ['Monthly percent', 'The share of the set run times that a controller gives in a month.'],
    ['Point of connection', 'Where the irrigation takes its water.'],
    ['Reference evapotranspiration', 'Water that a field of short green grass would use, by the weather.'],
    ['Root depth', 'How deep the roots draw water.'],
    ['Tag', 'The permanent code of a box. It is never given to another.'],
    ['Watering window', 'The hours in which watering is allowed.']
  ] as readonly (readonly [string, string])[],
  kinds: {
    box: 'valve box',
    controller: 'controller',
    station: 'station',
    zone: 'zone',
    supply: 'water supply',
    sensor: 'sensor',
    masterValve: 'master valve',
    part: 'part'
  }
}
