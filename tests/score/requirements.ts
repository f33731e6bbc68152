/**
 * What an owner's representative looks for in a maintenance binder at closeout, line by line, and what in the finished PDF proves it.
 * `in`: sections by title. `says`: stands in their text on every site ("a|b": one of them); where it does not, the binder is silent and the
 * line scores 0. `gaps`: names under which the list of what is not supplied tells of it; the line then scores 1. `demo`: data of the fully
 * supplied demo site that must be printed. `proved`: lines about form, with the test that proves them.
 */
export interface Requirement {
  readonly n: number
  readonly part: Part
  readonly what: string
  readonly in: readonly string[]
  readonly says: readonly string[]
  readonly gaps?: readonly string[]
  readonly demo?: readonly string[]
  readonly proved?: readonly { readonly file: string; readonly title: string }[]
}

export const PARTS = [
  'Cover and contacts',
  'Record drawing',
  'Controller chart',
  'Zone table',
  'Wire schedule',
  'Water budget and schedule',
  'Battery log',
  'Maintenance calendar',
  'Checklists by season',
  'Troubleshooting',
  'Parts and spares',
  'Warranty',
  'Training record',
  'Test reports',
  'Safety',
  'Sign-offs',
  'Photos',
  'Digital copies'
] as const
export type Part = (typeof PARTS)[number]

const COVER = '(cover)'
const WATER = 'Water: what is needed and what is given'
const DRAWING = 'Record drawing and charts'
const SCHEDULE = 'Month-by-month schedule'
const RING = 'Ring binder and digital copies'
const CALENDAR = 'Maintenance calendar'
const CONTROLLERS = 'Controllers and their programs'
const BOXES = 'Valve boxes and how to find them'
const SUPPLY = 'Water supply and shut-off'
const LISTS = 'Checklists by season'
const FAULTS = 'Fault finding'
const SPARES = 'Spare parts and tools'
const DATES = 'Dates of the work'
const TRAINING = 'Training record'
const TESTS = 'Test reports'
const SAFETY = 'Safety first'
const BUDGET = 'Water budget'
const CHANGES = 'What changed since the last issue'

type Rest = Omit<Requirement, 'n' | 'part' | 'what' | 'in' | 'says'>

/** Numbers run on from the first of a part. */
function part(
  name: Part,
  first: number,
  lines: readonly (readonly [string, readonly string[], readonly string[], Rest?])[]
): Requirement[] {
  return lines.map(([what, where, says, rest = {}], index) => ({
    n: first + index,
    part: name,
    what,
    in: where,
    says,
    ...rest
  }))
}

export const REQUIREMENTS: readonly Requirement[] = [
  ...part('Cover and contacts', 1, [
    [
      'site, place, owner, date',
      [COVER, 'Contacts'],
      ['Address', 'Owner', 'Data of', 'Phone'],
      { demo: ['1 Harbour Steps', 'Port Sable Parks', '555-0110'] }
    ],
    [
      'installer, license, company, telephone',
      ['Contacts'],
      ['License', 'installer'],
      { gaps: ['License', 'Phone (installer)'], demo: ['invented 20-4471', '555-0112'] }
    ],
    [
      'who maintains it, and the shut-off',
      ['Contacts', SUPPLY],
      ['Responsible for maintenance', 'Shut-off'],
      {
        gaps: ['Responsible for maintenance', 'Shut-off'],
        demo: ['M. Example, Example Landscapes', 'gray cabinet at the foot']
      }
    ],
    [
      'suppliers and sources of spare parts',
      ['Contacts'],
      ['Suppliers and sources of spare parts'],
      { gaps: ['Suppliers and sources of spare parts'], demo: ['Sample Parts Depot, 555-0118'] }
    ],
    [
      'ring binder: spine, volume, contract, tabs, pockets',
      [RING],
      ['three rings', 'Spine', 'Volume', 'Contract', 'Tabs', 'pockets'],
      { gaps: ['Contract'], demo: ['PSP-2025-014'] }
    ],
    [
      'short, complete, easy; paper, PDF and data',
      [RING],
      ['short, complete', 'On paper', 'As files', 'Data for other programs']
    ],
    [
      'contractor information apart',
      ['Contacts'],
      ['Contractor information', 'Installed by'],
      { gaps: ['Installed by'], demo: ['Installed by L. Sample'] }
    ]
  ]),
  ...part('Record drawing', 8, [
    [
      'drawing of the site',
      [DRAWING],
      ['The record drawing shows'],
      { gaps: ['the whole section'], demo: ['record-drawing.pdf', 'lower terrace, T1'] }
    ],
    [
      'everything as installed',
      ['As installed'],
      [
        'Emergency shut-off',
        'Water source',
        'Backflow assembly',
        'Valves',
        'Splices',
        'Wire paths',
        'Controllers',
        'Sensors',
        'Grounding',
        'Pumps',
        'Filters',
        'Quick couplers',
        'Main line'
      ],
      {
        gaps: ['Grounding', 'Pumps', 'Filters', 'Quick couplers', 'Main line', 'Wire paths', 'Emergency shut-off'],
        demo: ['120 mesh in HB1', 'along the ramp wall']
      }
    ],
    [
      'every valve tied to permanent objects',
      [BOXES],
      ['Measured ties'],
      { gaps: ['Measured ties'], demo: ['9 ft 4 in from the bench end; 6 ft 2 in'] }
    ],
    [
      'two ties; pipes and wires tied along the way',
      [BOXES, DRAWING],
      ['Measured ties', 'Pipes and wires tied at least every'],
      { gaps: ['Measured ties', 'Pipes and wires tied at least every'], demo: ['tied at least every 50 ft'] }
    ],
    ['marked up daily', [DRAWING], ['Marked up'], { gaps: ['Marked up'], demo: ['daily by the foreman'] }],
    [
      'recorded before cover',
      [DRAWING, 'Photographs'],
      ['Marked up', 'Trench before cover'],
      {
        gaps: ['Marked up', 'Trench before cover'],
        demo: ['before any trench was closed', 'main along the ramp wall, before cover']
      }
    ],
    [
      'maker, product and catalog number',
      ['As installed'],
      ['Maker and model|Inventory of installed parts|Valves'],
      { gaps: ['Maker and model'], demo: ['invented SB-4', 'invented LV-100'] }
    ],
    [
      'scale, north, legend, design pressure, flows',
      [DRAWING, 'As installed', 'Zones'],
      ['Scale|scale, north', 'Design pressure', 'Measured flow'],
      { gaps: ['Design pressure', 'Measured flow', 'the whole section'], demo: ['1 in = 20 ft', '60 psi', '11.4 gpm'] }
    ],
    [
      'marked record drawing, dated, signed, with a letter',
      [DRAWING],
      ['RECORD DRAWING, dated and signed', 'letter that lists it'],
      { gaps: ['the whole section', 'Signed by', 'Sent with', 'Dated'], demo: ['T-14 of 2025-03-18'] }
    ],
    [
      'tolerance of the survey',
      [DRAWING],
      ['Positions within|The record drawing'],
      { gaps: ['the whole section', 'Positions within'], demo: ['±0.1 ft'] }
    ],
    [
      'delivered in time',
      [DRAWING, DATES],
      ['Delivered to the owner', 'Could be used from'],
      { gaps: ['Delivered to the owner', 'Could be used from'], demo: ['Delivered to the owner 2025-03-18'] }
    ],
    [
      'measured from a base',
      [DRAWING],
      ['Measured from'],
      { gaps: ['Measured from'], demo: ['south-west corner of the ticket pavilion'] }
    ],
    [
      'full set to the owner',
      [DRAWING],
      ['Delivered to the owner'],
      { gaps: ['Delivered to the owner', 'Copies'], demo: ['owner; installer, three years'] }
    ],
    [
      'later changes go on the drawing',
      [DRAWING, CHANGES],
      ['Changes since'],
      { demo: ['no visit asks for a change'] }
    ],
    [
      'installer keeps a copy three years',
      [DRAWING],
      ['Delivered to the owner'],
      { gaps: ['the whole section', 'Copies'], demo: ['installer, three years'] }
    ]
  ]),
  ...part('Controller chart', 23, [
    ['zone diagram at the controller', [DRAWING], ['Fixed'], { gaps: ['Fixed'], demo: ['inside the lid of HB1'] }],
    [
      'three charts',
      [DRAWING],
      ['Copies of each', 'Three of each'],
      { gaps: ['Copies of each'], demo: ['Copies of each 3'] }
    ],
    [
      'sealed in plastic, approved, fixed',
      [DRAWING],
      ['Kept from wet by', 'Approved by the owner'],
      { gaps: ['Kept from wet by', 'Approved by the owner'], demo: ['two plastic sheets of 20 mil', '2025-03-19'] }
    ],
    [
      'valve size and station, mains, wire routes',
      [CONTROLLERS, 'Zones', 'Wire schedule', 'As installed'],
      ['Station', 'Valve', 'Main line', 'Wire'],
      { gaps: ['Main line'], demo: ['HB2', '1-1/2 in schedule 40'] }
    ],
    [
      'chart kept current, meter, backflow and size, mains, laterals',
      [DRAWING, 'As installed'],
      ['renewed when anything changes', 'Laterals', 'Backflow assembly'],
      { gaps: ['Laterals', 'Main line'], demo: ['1 in schedule 40; 1-1/4 in'] }
    ],
    [
      'schedule in force posted; when to change',
      [DRAWING, SCHEDULE],
      ['Schedule in force is posted', 'Weaning: change the programs'],
      {
        gaps: ['Schedule in force is posted', 'Weaning: change the programs'],
        demo: ['inside the cabinet door and under', 'T5 on 2026-06-14']
      }
    ],
    [
      'sticker: installer, license, telephone, warranty',
      [DRAWING],
      ['Sticker at the controller'],
      { gaps: ['Sticker at the controller'], demo: ['warranty 2025-03-20 to 2028-03-20'] }
    ],
    [
      'name tags in boxes and on lids',
      ['As installed'],
      ['Name tags of boxes'],
      { gaps: ['Name tags of boxes'], demo: ['inside each box and on each lid'] }
    ],
    [
      'tag at the shut-off',
      ['As installed'],
      ['Tag at the shut-off'],
      { gaps: ['Tag at the shut-off'], demo: ['IRRIGATION S1, closes all terraces'] }
    ],
    [
      'never by color alone',
      [DRAWING],
      ['by pattern and name, never by color alone'],
      {
        proved: [
          {
            file: 'tests/render/blocks.test.ts',
            title: 'with a state have a shape before the word, each state its own'
          }
        ]
      }
    ]
  ]),
  ...part('Zone table', 33, [
    [
      'interval, run time, cycles, monthly amounts, rate, root depth',
      ['Zones', WATER, SCHEDULE, CONTROLLERS],
      ['Application rate|Normal flow', 'Root depth', 'Days|No program|no program'],
      { gaps: ['Root depth'], demo: ['2 x 9 min soak 20 min', '1.18 in/h', 'Minutes in the month'] }
    ],
    [
      'plants, soil, slope, exposure, uniformity',
      ['Zones'],
      ['Plants', 'Soil', 'Slope', 'Exposure', 'Uniformity'],
      { gaps: ['Plants', 'Soil', 'Slope', 'Uniformity'], demo: ['1.2 microclimate', '74 %'] }
    ],
    [
      'meter, backflow, controller, valves and areas',
      ['Zones', 'As installed', SUPPLY],
      ['Area', 'Meter', 'Controllers', 'Valves'],
      { gaps: ['Meter', 'Area', 'Water source'], demo: ['no. 40 512', '1460 ft²'] }
    ],
    [
      'spacing, model, nozzle, pressures with place',
      ['Zones'],
      ['Nozzle', 'Spacing', 'Pressure at the valve', 'Devices'],
      { gaps: ['Nozzle', 'Spacing', 'Pressure at the valve'], demo: ['12 ft, half circle', '42 psi'] }
    ],
    [
      'one name for one thing',
      ['Index of boxes, zones and parts'],
      ['Index of boxes'],
      { demo: ['HB1 valve box', 'T1 zone'] }
    ]
  ]),
  ...part('Wire schedule', 38, [
    [
      'wiring diagram, sizes, conduits, samples',
      ['Wire schedule', 'As installed'],
      ['Wire schedule', 'Conduits and their sizes', 'Samples of wire colors and splices'],
      {
        gaps: ['Conduits and their sizes', 'Samples of wire colors and splices', 'the whole section'],
        demo: ['Wiring, controller H1', '2 in under the ramp', 'card of wire colors']
      }
    ],
    [
      'numbered as installed',
      ['Wire schedule'],
      ['Terminal|Wire schedule'],
      { gaps: ['the whole section'], demo: ['Terminals of H1'] }
    ],
    [
      'splices in boxes',
      ['Wire schedule', 'As installed'],
      ['Splices'],
      { gaps: ['Splices'], demo: ['T3, HB2, east side'] }
    ],
    [
      'gauge by length, colors, spare wires',
      ['Wire schedule', 'As installed'],
      ['Spare wires', 'Wire'],
      { gaps: ['Spare wires', 'Colors'], demo: ['one to each box, orange', 'red / white'] }
    ],
    ['slack', ['As installed'], ['Slack'], { gaps: ['Slack'], demo: ['24 in coil at each valve'] }],
    [
      'loop, coil, volts for each run',
      ['Wire schedule'],
      ['Loop|Wire schedule'],
      { gaps: ['the whole section'], demo: ['10.73 V', '0.73 Ω', '6.20 Ω'] }
    ]
  ]),
  ...part('Water budget and schedule', 44, [
    [
      'establishment, established, temporary',
      [SCHEDULE],
      ['Establishment', 'Established landscape', 'Temporary areas'],
      { gaps: ['Establishment', 'Temporary areas'], demo: ['T5, from 2026-03-09 to 2026-06-14, 120 %'] }
    ],
    [
      'yearly water within the allowance',
      [BUDGET],
      ['Allowance|not supplied'],
      { gaps: ['the whole section', 'Allowance'], demo: ['74120 gal', 'WITHIN'] }
    ],
    [
      'hours of watering',
      ['The site', CONTROLLERS],
      ['Watering window|No watering|Watering days|Watering rule'],
      { gaps: ['Watering window', 'Watering rule'], demo: ['9:00 pm–7:00 am'] }
    ],
    [
      'each season by evapotranspiration, rain and factors',
      [WATER],
      ['evapotranspiration|not supplied'],
      { gaps: ['the whole section'], demo: ['0.8, plant factor', 'No rain is counted'] }
    ],
    [
      'monthly base schedule',
      [SCHEDULE],
      ['Jan|no programs'],
      { gaps: ['the whole section'], demo: ['Minutes on a watering day'] }
    ],
    [
      'cycles by intake',
      [WATER, CONTROLLERS],
      ['cycle|Cycle|run off|soak|evapotranspiration|not supplied'],
      { gaps: ['the whole section'], demo: ['Longest cycle', '25.4 min'] }
    ],
    [
      'both schedules on site',
      [SCHEDULE, DRAWING],
      ['Establishment', 'Schedule in force is posted'],
      { gaps: ['Establishment', 'Schedule in force is posted'], demo: ['T5, from 2026-06-15'] }
    ],
    [
      'monthly tables and weaning',
      [SCHEDULE],
      ['Weaning: change the programs'],
      { gaps: ['Weaning: change the programs', 'the whole section'], demo: ['T5 on 2026-06-14'] }
    ],
    ['changes reported and logged', ['Visits'], ['Program log: every change of a program', 'Reported to']],
    [
      'how long establishment takes',
      [SCHEDULE],
      ['Establishment'],
      { gaps: ['Establishment'], demo: ['to 2026-06-14'] }
    ],
    [
      'metered use against the budget',
      [BUDGET],
      ['meter|not supplied'],
      { gaps: ['Meter readings from visits', 'the whole section'], demo: ['187770|3560 gal', '103 %'] }
    ]
  ]),
  ...part('Battery log', 55, [
    [
      'clock, program and battery once a year',
      ['Battery log', LISTS],
      ['Clock and program seen', 'Set date and time of each controller']
    ],
    ['changed as needed while servicing boxes', ['Battery log'], ['At a change of cells|Log: fill in at every change']],
    [
      'kind, count, fitted, interval, due, volts, who',
      ['Battery log'],
      ['Fitted', 'Due', 'Volts under load', 'Who'],
      { gaps: ['Fitted', 'the whole section'], demo: ['2 × 9 V', '2026-03-09', '9.1 V', '2027-03-09'] }
    ]
  ]),
  ...part('Maintenance calendar', 58, [
    [
      'plan with labor by day, week, month, year',
      [CALENDAR],
      ['Labor in the year', 'A day of work', 'A week', 'A month', 'In the year'],
      { demo: ['60 min'] }
    ],
    [
      'even workload, tools and cautions, log',
      [CALENDAR, 'Visits'],
      [
        'Spread the work evenly',
        'Log of preventive maintenance, to be filled in',
        'Every task begins with the cautions'
      ],
      { gaps: ['Tasks, tools and cautions'], demo: ['lid lifter and gloves', '1 × filter screen'] }
    ],
    [
      'inspection, adjustment, repair, plant care',
      [CALENDAR, LISTS],
      ['Inspection, adjustment and repair', 'Mulch, weeds and plants'],
      { demo: ['mulch, weed, clear drippers'] }
    ],
    [
      'parts that need service, and how often',
      [CALENDAR],
      ['Tasks, tools and cautions'],
      { gaps: ['Tasks, tools and cautions'], demo: ['clean the filter, HB1 6 months'] }
    ],
    [
      'a steady plan to inspect, test and report',
      [CALENDAR, LISTS],
      ['Month by month', 'Report to the owner'],
      { demo: ['Backflow test, S1 (02-18)'] }
    ],
    [
      'start-up and winterizing; handed over in writing',
      [LISTS, DATES],
      ['Start of the season', 'End of the season', 'Maintained by the contractor', 'Handed over by'],
      {
        gaps: ['Maintained by the contractor', 'Handed over by'],
        demo: ['2025-03-20 to 2025-07-18', 'letter of 2025-07-18']
      }
    ],
    [
      'each system inspected monthly',
      [CALENDAR, LISTS],
      ['Each month of the season'],
      { demo: ['Monthly inspection (06-27)'] }
    ]
  ]),
  ...part('Checklists by season', 65, [
    [
      'monthly report',
      [LISTS],
      ['Report to the owner: site, controller, program, start and run times, what needs repair']
    ],
    [
      'routine list',
      [LISTS],
      [
        'Pressure with nothing running',
        'Clean filters',
        'Trip each sensor|Set date and time',
        'closes fully',
        'leaks, blocked or turned heads'
      ]
    ],
    [
      'start-up',
      [LISTS],
      [
        'Close every drain',
        'let the air out at the far end',
        'Open the shut-off slowly',
        'It must stand still',
        'clear nests'
      ]
    ],
    [
      'winterizing',
      [LISTS],
      ['Shut the water off and release the pressure', 'Open every drain|one zone at a time|The lines stay full']
    ],
    ['walk while it runs and flag', [LISTS], ['Walk each zone while it runs and flag leaks, broken or missing heads']],
    [
      'roof: found, to be done, done',
      [LISTS, SAFETY],
      ['Roof, each visit|write what is not in order beside it', 'Remark'],
      { demo: ['Remark'] }
    ]
  ]),
  ...part('Troubleshooting', 71, [
    ['each check: why, what to look for, what is needed', [FAULTS], ['Why:', 'Look for', 'You need:']],
    [
      'repairs with tools, settings and tolerances',
      [FAULTS, 'Battery log'],
      ['You need:', 'Make the splice again', 'Do']
    ],
    ['numbered steps with a lead-in', [FAULTS], ['Look up the symptom, then work through the steps', '1 · ']]
  ]),
  ...part('Parts and spares', 74, [
    [
      'list of spare parts',
      [SPARES],
      ['Spare parts'],
      { gaps: ['the whole section', 'Spare parts'], demo: ['coil, DC latching 2-wire'] }
    ],
    [
      '10 % of each head',
      [SPARES],
      ['10 % of those installed'],
      { gaps: ['Spare parts', 'the whole section'], demo: ['13 %', '10 %'] }
    ],
    ['extra stock', [SPARES], ['Spare parts'], { gaps: ['Spare parts', 'the whole section'], demo: ['filter screen'] }],
    [
      'repairs by the original part or its equal',
      [SPARES],
      ['Repairs use the part that was installed, its equal, or one that uses less water']
    ],
    [
      'inventory of parts',
      ['As installed'],
      ['Inventory of installed parts|Controllers not supplied'],
      { gaps: ['Installed'], demo: ['16', '730'] }
    ],
    [
      'tools and keys',
      [SPARES, 'Contacts'],
      ['Tools'],
      {
        gaps: ['Tools', 'the whole section'],
        demo: ['valve key with T-handle', 'quick-coupler key with swivel', 'set of special tools']
      }
    ]
  ]),
  ...part('Warranty', 80, [
    [
      'table for each item',
      ['Warranty'],
      ['Guarantee on repairs'],
      {
        gaps: [
          'the whole section',
          'Model',
          'Serial number',
          'Certificate',
          'Response time',
          'Start',
          'End',
          'Upkeep that keeps it in force'
        ],
        demo: ['HS-60921', 'W-31', 'two working days', '2028-03-20', 'parts for 36 months']
      }
    ],
    [
      'inspections at 4 and 9 months',
      ['Warranty'],
      ['Inspections under the warranty|not supplied'],
      { gaps: ['Inspections under the warranty', 'the whole section'], demo: ['2025-07-20', '2025-12-20'] }
    ],
    [
      'tags',
      ['Warranty'],
      ['Warranty tag on the equipment|not supplied'],
      { gaps: ['Warranty tag on the equipment', 'the whole section'], demo: ['tag with the end date'] }
    ],
    [
      'guarantee on repairs',
      ['Warranty'],
      ['Guarantee on repairs'],
      { gaps: ['Guarantee on repairs'], demo: ['two years on each repair'] }
    ],
    [
      'what keeps it in force',
      ['Warranty'],
      ['Do what keeps a warranty in force'],
      { gaps: ['Upkeep that keeps it in force', 'the whole section'], demo: ['fresh cells every 12 months'] }
    ]
  ]),
  ...part('Training record', 85, [
    [
      'final walk-through',
      ['Sign-offs'],
      ['Final walk-through'],
      { gaps: ['the whole section', 'Signed by'], demo: ['walk-through.pdf', 'C. Muster owner 2025-03-20'] }
    ],
    [
      'water need changes through the year',
      [TRAINING],
      ['why the schedule changes through the year'],
      { gaps: ['the whole section', 'Topics'], demo: ['why plants need other water through the year'] }
    ],
    [
      'planned, led, with number, time and place',
      [TRAINING],
      ['Training, to be filled in'],
      {
        gaps: ['the whole section', 'Taught by', 'Place', 'Present'],
        demo: ['90 min', 'at HB1 and in the cabinet', 'M. Example; C. Muster; B. Sample']
      }
    ],
    [
      'watched, and the binder read',
      [TRAINING],
      ['Training'],
      {
        gaps: ['the whole section', 'Watched, and the binder read, for the owner by'],
        demo: ['H. Example, Example Audits']
      }
    ]
  ]),
  ...part('Test reports', 89, [
    [
      'pressures at the point of connection and at the heads',
      [TESTS],
      ['Static pressure at the point of connection', 'Pressure at the valves while each zone runs'],
      {
        gaps: [
          'Static pressure at the point of connection',
          'Pressure at the valves while each zone runs',
          'the whole section'
        ],
        demo: ['S1 62 psi', 'T1 42 psi']
      }
    ],
    [
      'pressure test before cover, witnessed',
      [TESTS],
      ['Pressure test'],
      { gaps: ['Pressure test', 'the whole section'], demo: ['100 psi, 30 min', 'pressure-test.pdf', 'all dry'] }
    ],
    [
      'flushing and coverage, witnessed',
      [TESTS],
      ['Flushing', 'Coverage'],
      { gaps: ['Flushing', 'Coverage', 'the whole section'], demo: ['clear after 6 min', 'head to head'] }
    ],
    [
      'audit',
      [TESTS],
      ['Irrigation audit'],
      { gaps: ['Irrigation audit', 'the whole section'], demo: ['no overspray or runoff', 'audit.pdf'] }
    ],
    [
      'catch cans',
      [TESTS],
      ['Catch-can test', '24 cans or more'],
      { gaps: ['Catch-can test', 'the whole section'], demo: ['24 cans', '2 to 4 mph', 'read every 5 min'] }
    ],
    [
      'independent auditor',
      [TESTS],
      ['neither designed nor installed'],
      { gaps: ['Irrigation audit', 'the whole section'], demo: ['Example Audits, independent'] }
    ],
    [
      'backflow tests and register',
      [SUPPLY, TESTS],
      ['Backflow'],
      {
        gaps: [
          'Backflow assembly',
          'Serial number',
          'Size',
          'Maker and model',
          'Where',
          'Fitted',
          'Tested',
          'the whole section'
        ],
        demo: ['RP-3108', '1-1/2 in', 'invented RP-150', '2026-02-18']
      }
    ],
    [
      'tag on the assembly',
      [SUPPLY],
      ['Tag on the assembly|The tag on the assembly shows|Backflow assembly'],
      {
        gaps: ['License', 'By', 'Serial number', 'Backflow assembly'],
        demo: ['invented BT-207', 'The tag on the assembly shows']
      }
    ],
    [
      'inspection log',
      [TESTS],
      ['Inspection log, to be filled in', 'Inspection'],
      { gaps: ['Inspection', 'the whole section'], demo: ['inspection-log.pdf', 'sleeves under the ramp'] }
    ],
    [
      'resistance of every station',
      [TESTS],
      ['Wire and coil readings'],
      { gaps: ['Coil', 'Loop', 'Wire and coil readings at closeout'], demo: ['6.3 Ω', '8.2 Ω'] }
    ],
    [
      'baseline with meter, date, temperature',
      [TESTS],
      ['Wire and coil readings at closeout'],
      {
        gaps: ['Coil', 'Loop', 'Temperature', 'Date', 'Wire and coil readings at closeout'],
        demo: ['multimeter, checked 2025-01', '58 °F']
      }
    ],
    [
      'tests and data in the set',
      [TESTS],
      ['What was tested before acceptance'],
      { gaps: ['the whole section'], demo: ['backflow-test.pdf', 'flush-and-coverage.pdf'] }
    ]
  ]),
  ...part('Safety', 101, [
    ['safety first', [SAFETY], ['Read these before you open a box']],
    [
      'emergency shut-down',
      [SUPPLY, FAULTS, 'As installed'],
      ['Shut-off', 'Emergency shut-off'],
      { gaps: ['Shut-off', 'Emergency shut-off'], demo: ['ball valve, quarter turn'] }
    ],
    [
      'graded signal words',
      [SAFETY],
      [
        'will kill or badly injure, if it is not avoided',
        'could kill or badly injure',
        'could injure, lightly or moderately',
        'carries no alert symbol'
      ]
    ],
    [
      'hazard, consequence, avoidance',
      [SAFETY],
      ['Keep'],
      {
        proved: [
          {
            file: 'tests/domain/safety/caution-words.test.ts',
            title: 'has a title, a hazard, a consequence, steps to avoid it and somebody who decides'
          }
        ]
      }
    ],
    [
      'placed by scope, explained at the front',
      [SAFETY, FAULTS],
      ['collected here, and again in the step', 'What the words and signs mean', 'CAUTION']
    ],
    ['tags readable at 5 ft', [SAFETY], ['readable at 5 ft (1.5 m)', 'two levels at least']],
    ['shapes of signs', [SAFETY], ['triangle: warning; ring with a bar: must not be done; disc: must be done']],
    ['work in the road', [SAFETY], ['Work in the road']],
    ['buried utilities', [SAFETY], ['in the ground|buried|dig']],
    [
      'instructions posted',
      [SAFETY],
      ['Instructions posted beside equipment'],
      { gaps: ['Instructions posted beside equipment'], demo: ['shut-off steps and chart'] }
    ],
    [
      'look before you reach in',
      [SAFETY, LISTS],
      ['Look before you reach into a box|Look in with a light before you reach in', 'gloves']
    ]
  ]),
  ...part('Sign-offs', 112, [
    [
      'checklist signed, or the refusal recorded',
      ['Sign-offs'],
      ['Maintenance checklist', 'Refused on (day and time)', 'The owner keeps the signed original'],
      { gaps: ['the whole section', 'Signed by'], demo: ['Maintenance checklist C. Muster'] }
    ],
    [
      "installer's statement",
      ['Sign-offs'],
      ["Installer's statement", 'I have tested this system'],
      { gaps: ['the whole section', 'Signed by'], demo: ['The system was tested, adjusted and installed'] }
    ],
    [
      'certificate, with record drawings',
      ['Sign-offs'],
      ['Certificate of completion', 'Approval of the record drawing'],
      { gaps: ['the whole section', 'Signed by'], demo: ['certificate.pdf', 'with sheet RD-1'] }
    ],
    [
      'copies to water supplier and owner',
      ['Sign-offs'],
      ['copies of the certificate go to the water supplier and the owner'],
      { gaps: ['the whole section', 'Copies to', 'Signed by'], demo: ['owner, Port Sable Water'] }
    ],
    [
      'unfinished items with value and reason',
      [DATES],
      ['Still to be done|Nothing was listed|Accepted by the owner'],
      { gaps: ['the whole section', 'Worth', 'Reason'], demo: ['240 USD', 'delivery late'] }
    ],
    [
      'keys',
      ['Sign-offs', 'Contacts', SPARES],
      ['Coded keys are not copied; all keys are returned', 'Receipt of spares and keys'],
      { gaps: ['Signed by', 'the whole section'], demo: ['Receipt of spares and keys C. Muster'] }
    ],
    [
      'record of later service',
      ['Visits'],
      ['Service record, to be filled in', 'Called', 'Fault', 'People', 'Instructions', 'Material', 'Began', 'Ended'],
      { demo: ['2025-07-21, 9:00 am to 10:30 am'] }
    ]
  ]),
  ...part('Photos', 119, [
    [
      'completion photographs',
      ['Photographs'],
      ['Finished work'],
      { gaps: ['Finished work', 'the whole section'], demo: ['the terraces from the quay'] }
    ],
    [
      'boxes, trenches, splices, shut-off, meter, zones',
      ['Photographs'],
      ['Box, lid open', 'Trench before cover', 'Splice', 'Shut-off', 'Meter', 'Zone running'],
      {
        gaps: [
          'Box, lid open',
          'Trench before cover',
          'Splice',
          'Shut-off',
          'Meter',
          'Zone running',
          'the whole section'
        ],
        demo: ['HB1; HB2; HB3', 'T1; T2; T4']
      }
    ]
  ]),
  ...part('Digital copies', 121, [
    [
      'format and order of the manual',
      [RING],
      ['This binder', 'Order', 'with bookmarks, running page numbers'],
      { gaps: ['This binder'], demo: ['PDF with bookmarks'] }
    ],
    [
      'drawings as PDF, mark-ups, data for a map',
      [RING],
      ['Record drawings', 'Mark-ups', 'Positions for a map'],
      { gaps: ['Record drawings', 'Mark-ups', 'Positions for a map'], demo: ['GeoJSON of boxes and lines'] }
    ],
    [
      'contrast',
      [RING],
      ['contrast 7 to 1'],
      { proved: [{ file: 'tests/render/contrast.test.ts', title: 'contrast' }] }
    ],
    [
      'size of buttons',
      [RING],
      ['buttons of 44 px'],
      { proved: [{ file: 'tests/page/in-browser.test.ts', title: 'has targets of 44 px and more' }] }
    ],
    [
      '320 px without moving sideways',
      [RING],
      ['readable at 320 px width'],
      {
        proved: [
          {
            file: 'tests/e2e/box-in-hand.test.ts',
            title: 'every page opens, is read at 320 px without scrolling sideways, and knows today'
          }
        ]
      }
    ],
    [
      'complete, short, for a stated reader',
      [RING, 'What is not supplied'],
      ['written for those who look after the water', 'short, complete']
    ]
  ])
]
