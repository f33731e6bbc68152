/** Words of what an owner's representative looks for at closeout, and of the package that is handed over. */
export const handoverWords = {
  sections: {
    installed: 'As installed',
    calendar: 'Maintenance calendar',
    binderSet: 'Ring binder and digital copies'
  },
  contacts: {
    contractor: 'Contractor information',
    company: 'Company',
    suppliers: 'Suppliers and sources of spare parts',
    responsible: 'Responsible for maintenance',
    shutOff: 'Shut-off'
  },
  safety: {
    words: 'What the words and signs mean',
    danger: 'will kill or badly injure, if it is not avoided',
    warning: 'could kill or badly injure',
    caution: 'could injure, lightly or moderately',
    notice: 'is about damage only, and carries no alert symbol',
    symbol: 'The alert symbol',
    symbolText: 'a triangle with an exclamation mark, beside every word that tells of harm to people',
    signs: 'Signs on site',
    signsText: 'triangle: warning; ring with a bar: must not be done; disc: must be done',
    place: 'Where they stand',
    placeText: 'collected here, and again in the step that they belong to',
    tags: 'Danger tags',
    tagsText: 'two levels at least, DANGER and CAUTION, readable at 5 ft (1.5 m)',
    road: 'Work in the road',
    roadText: 'the signs and cones are set out by trained people by a plan; never by guess',
    roadNone: 'none here: nobody works in a road',
    posted: 'Instructions posted beside equipment'
  },
  installed: {
    lead: 'What was really built in, and where. What is not written here must be looked for on the record drawing.',
    things: 'What the drawing must show',
    wiring: 'Wires in the ground',
    tags: 'Tags and stickers',
    inventory: 'Inventory of installed parts',
    source: 'Water source',
    shutOff: 'Emergency shut-off',
    backflow: 'Backflow assembly',
    valves: 'Valves',
    splices: 'Splices',
    paths: 'Wire paths',
    pathless: (zones: string) => `${zones}: not on file`,
    controllers: 'Controllers',
    sensors: 'Sensors',
    mains: 'Main line',
    laterals: 'Laterals',
    filters: 'Filters',
    pumps: 'Pumps',
    quickCouplers: 'Quick couplers',
    grounding: 'Grounding',
    designPressure: 'Design pressure',
    conduit: 'Conduits and their sizes',
    spareWires: 'Spare wires',
    wireSlack: 'Slack',
    samples: 'Samples of wire colors and splices',
    shutOffTag: 'Tag at the shut-off',
    boxTags: 'Name tags of boxes',
    valveList: (zone: string, size: string, box: string) => [zone, size, box].filter(Boolean).join(', '),
    none: 'none',
    columns: ['Part', 'Maker and model', 'Size or nozzle', 'Installed', 'Where'],
    controller: 'controller',
    valve: 'valve',
    masterValve: 'master valve',
    spaced: (text: string) => `${text} apart`
  },
  zones: {
    title: 'Zone record',
    columns: [
      'Station',
      'Plants',
      'Exposure',
      'Slope',
      'Uniformity',
      'Devices',
      'Nozzle',
      'Spacing',
      'Pressure at the valve',
      'Measured flow',
      'Valve model'
    ],
    exposure: (factor: string) => `${factor} microclimate`,
    average: 'as the record of weather'
  },
  phases: {
    title: 'Establishment and after',
    establishment: 'Establishment',
    established: 'Established landscape',
    temporary: 'Temporary areas',
    weaning: 'Weaning: change the programs',
    asProgrammed: 'the programs of this binder',
    all: 'all zones',
    span: (from: string | undefined, to: string | undefined) =>
      [from ? `from ${from}` : '', to ? `to ${to}` : ''].filter(Boolean).join(' '),
    weaned: (of: string, day: string) => `${of} on ${day}`
  },
  backflow: {
    title: 'Backflow register',
    columns: [
      'Supply',
      'Kind',
      'Size',
      'Maker and model',
      'Serial number',
      'Where',
      'Fitted',
      'Tested',
      'By',
      'License'
    ],
    tag: 'The tag on the assembly shows these',
    rule: 'Tested when it is fitted, moved or repaired, and then every year, unless the authority asks for more; a copy of each report goes to the water supplier.'
  },
  drawings: {
    delivered: 'Delivered to the owner',
    base: 'Measured from',
    tiedEvery: 'Pipes and wires tied at least every',
    markedUp: 'Marked up',
    label:
      'Each sheet is marked RECORD DRAWING, dated and signed, shows scale, north and a legend, and is sent with a letter that lists it.',
    later: 'Changes since',
    laterNone: 'no visit asks for a change of the drawing',
    schedulePosted: 'Schedule in force is posted',
    sticker: 'Sticker at the controller',
    chartNote:
      'Three of each: one at the controller, two for the owner; sealed in plastic, renewed when anything changes. Zones are told apart by pattern and name, never by color alone.'
  },
  calendar: {
    lead: 'What is due month by month for a year from the data date, with the time it takes. Spread the work evenly; the dates are the latest.',
    months: 'Month by month',
    monthColumns: ['Month', 'What is due', 'Minutes'],
    tasks: 'Tasks, tools and cautions',
    taskColumns: ['Task', 'How often', 'Last done', 'Minutes', 'Tools and parts', 'Next'],
    nothing: '–',
    labor: 'Labor in the year',
    perWeek: 'A week, on average',
    perMonth: 'A month, on average',
    perYear: 'In the year',
    perDay: 'A day of work, at most',
    minutes: (count: number) => `${count} min`,
    once: 'once',
    routine:
      'Every task begins with the cautions at the front: shut the water off where a part is opened, look before you reach in. Inspection, adjustment and repair come with what the plants need: mulch, weeds and roots away from heads and drippers.',
    log: 'Log of preventive maintenance, to be filled in',
    logAt: (section: string) => `The log of it stands under ${section}.`,
    logColumns: ['Date', 'Task', 'Found', 'Done', 'Time', 'By'],
    inspection: 'Monthly inspection'
  },
  visits: {
    service: 'Service record, to be filled in',
    serviceColumns: ['Part, serial, place', 'Called', 'Fault', 'People', 'Instructions', 'Material', 'Began', 'Ended'],
    programs: 'Program log: every change of a program, reported to the owner at once',
    programColumns: ['Date', 'Controller', 'Program', 'From', 'To', 'Why', 'Reported to', 'By'],
    stay: (from: string, to: string) => `${from} to ${to}`,
    photographs: 'Photographs of the visits',
    photographColumns: { date: 'Date', shows: 'Shows', file: 'File' },
    photographsShown: (shown: number, all: number) =>
      `The newest ${shown} of ${all} are shown below; all are in the folder photos of the site.`,
    photographOf: (day: string) => `Photograph of the visit of ${day}`
  },
  spares: {
    share: 'Agreed share of spare heads: 10 % of those installed, of each model, unless the contract says otherwise.',
    keys: 'Keys'
  },
  warranty: {
    item: 'Item',
    model: 'Model',
    serial: 'Serial number',
    where: 'Where',
    maker: 'Maker or supplier',
    spareParts: 'Spare parts from',
    certificate: 'Certificate',
    term: 'Start and end',
    span: (from: string, to: string) => `${from} to ${to}`,
    terms: 'Terms',
    upkeep: 'Upkeep that keeps it in force',
    manual: 'Operating instructions',
    contact: 'Who to call',
    response: 'Response time',
    inspections: 'Inspections under the warranty',
    inspection: (day: string, after: string) => `${day} (${after})`,
    tagged: 'Warranty tag on the equipment',
    repairs: 'Guarantee on repairs',
    note: 'Do what keeps a warranty in force, and write it in the visits: without the record it may lapse.'
  },
  training: {
    reviewer: 'Watched, and the binder read, for the owner by',
    walk: 'Final walk-through with the owner'
  },
  tests: {
    independent: 'Independent',
    meter: 'Instrument',
    baseline: 'Wire and coil readings at closeout',
    baselineColumns: ['Station', 'Date', 'Coil', 'Loop', 'Temperature', 'By'],
    hint: 'The auditor neither designed nor installed the system. Catch-can test: 24 cans or more, wind at most 5 mph (2.2 m/s).',
    pointPressure: 'Static pressure at the point of connection',
    emitterPressure: 'Pressure at the valves while each zone runs'
  },
  signOffs: {
    statement: "Installer's statement",
    statementText:
      'I have tested this system, adjusted it, and found it installed as the record drawing shows and as the rules named in this binder ask.',
    refusal: 'Refused on (day and time), and why',
    original:
      'The owner keeps the signed original, the installer a copy; copies of the certificate go to the water supplier and the owner.',
    keys: 'Coded keys are not copied; all keys are returned when the contract ends.'
  },
  photographs: { wanted: 'What is shown' },
  binderSet: {
    lead: 'How this binder is put together on paper and as files. It is written for those who look after the water: short, complete, in the words that stand on tags, labels and drawings.',
    paper: 'On paper',
    cover: 'Front',
    spine: 'Spine',
    spineText: (title: string, year: string, volume: string) => `${title} · irrigation · ${year} · ${volume}`,
    volume: 'Volume',
    volumeText: '1 of 1',
    contract: 'Contract',
    kind: 'Binder',
    kindText: (paper: string) =>
      `heavy-duty, three rings, ${paper}, spine of 3 in (75 mm) at most, pockets for loose sheets`,
    tabs: 'Tabs',
    tabColumns: ['Tab', 'Sections'],
    files: 'As files',
    manual: 'This binder',
    drawings: 'Record drawings',
    markUps: 'Mark-ups',
    geodata: 'Positions for a map',
    data: 'Data for other programs',
    dataText: 'JSON of the site, CSV of wires and zones, calendar of what is due, GeoJSON of the boxes',
    page: 'Box pages',
    pageText: 'readable at 320 px width, contrast 7 to 1, buttons of 44 px, without script',
    organization: 'Order',
    manualText: 'PDF with bookmarks, printed with this set',
    organizationText: 'by section, with bookmarks, running page numbers, an index and the list of what is not supplied',
    tabNames: {
      safety: 'Safety and contacts',
      system: 'The system',
      water: 'Water and programs',
      upkeep: 'Upkeep',
      closeout: 'Closeout',
      back: 'Sign-offs, numbers, index'
    }
  },
  package: {
    openItems: 'What was open on the day of handover',
    lead: (site: string, on: string) =>
      `${site}, on ${on}. What was open on this day is listed; both sides sign for it.`,
    none: 'Nothing was open.',
    sign: 'Signed',
    signatures: ['Installer', 'Owner or representative', 'Maintainer'],
    line: (role: string) => `${role}: ______________________________  Date: ______________`,
    missing: 'What is not supplied',
    refused: (site: string, count: number) =>
      `${site} is not handed over: ${count === 1 ? 'one error is' : `${count} errors are`} open.`,
    refusedFix: 'Mend them, or hand over with --as-is, which lists them inside.',
    written: (path: string, files: number) => `Written: ${path} (${files} files).`,
    pages: 'Pages, without a network',
    pagesNote: 'the site, its boxes, what is due',
    handedOver: (on: string) =>
      `Handed over on ${on}. Everything opens from this folder; README.txt says what lies where.`,
    count: (count: number) => (count === 0 ? 'nothing' : count === 1 ? 'one item' : `${count} items`),
    readme: (title: string, on: string, site: string) =>
      [
        `${title}, handed over on ${on}`,
        '',
        'index.html            where to start, without a network',
        `print/                the binder and the lid labels as PDF`,
        `office/${site}/  pages, attachments and photographs`,
        'public/               the pages behind the codes',
        'data/                 site file, visits, JSON, CSV of wires and zones, places of the boxes',
        'open-items.txt        what was open on the day, to be signed',
        '',
        'To see that nothing was changed: sha256sum -c MANIFEST-SHA256.txt',
        'On Windows, for one file: certutil -hashfile FILE SHA256, and compare with its line there',
        ''
      ].join('\n')
  }
} as const
