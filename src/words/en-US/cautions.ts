import type { CautionId } from '../../domain/safety/cautions.ts'
import type { Region } from '../../domain/safety/region.ts'
import type { CoverLocation } from '../../reference/nec-300-5.ts'

export interface CautionText {
  readonly title: string
  readonly hazard: string
  readonly consequence: string
  /** Each is a step and starts with a verb. */
  readonly avoidance: readonly string[]
  /** Steps that rest on the rules of one region, `other` for everywhere else; they stand first. */
  readonly local?: Readonly<Partial<Record<Region | 'other', readonly string[]>>>
  /** The box page: what can hurt, and what to do, a sentence each. */
  readonly short: string
  readonly instead: string
  /** Who decides, where this binder does not. */
  readonly deference: string
}

const texts: Readonly<Record<CautionId, CautionText>> = {
  traffic: {
    title: 'Moving traffic beside the work',
    hazard: 'Vehicles pass within reach of the boxes, and drivers do not expect a person there.',
    consequence: 'A vehicle that hits you will kill or seriously injure you.',
    local: {
      US: [
        'Wear high-visibility clothing of ANSI/ISEA 107 class 2 or 3.',
        'Get the traffic-control plan and the permit number before the visit.'
      ],
      other: [
        'Wear high-visibility clothing of the class that the road authority asks for.',
        'Get the road authority’s permit and its traffic-control plan before the visit.'
      ]
    },
    avoidance: [
      'Have trained people set out the signs and cones of that plan; do not improvise.',
      'Take a second person, who watches the traffic.',
      'Park with the flow of traffic, out of the lane, with the beacon on.',
      'Face the traffic while you kneel, and keep tools inside the cones.',
      'Cross on foot only where the plan lets you.'
    ],
    short: 'Traffic passes beside this box.',
    instead: 'Stay inside the traffic control and face the traffic.',
    deference: 'The road authority and the terms of its permit decide.'
  },
  mains: {
    title: 'Mains voltage at an adapter, a pump or its relay',
    hazard: 'An adapter, a pump and a pump-start relay carry mains voltage, though the wires to the valves do not.',
    consequence: 'A live part that you touch will kill or seriously injure you.',
    avoidance: [
      'Leave all mains work to a licensed electrician.',
      'Switch off at the isolator, lock it and hang your tag on it.',
      'Prove the circuit dead with a tester that you try on a live source before and after.',
      'Keep the covers of the adapter, the relay and the pump panel closed.',
      'Stay away from mains parts in a wet or flooded box, and report them.'
    ],
    short: 'Mains voltage is present at this controller.',
    instead: 'Keep the covers closed and call a licensed electrician.',
    deference: 'The local electrical code and a licensed electrician decide.'
  },
  'confined-space': {
    title: 'A pit or vault that a person can climb into',
    hazard:
      'The air in a pit may lack oxygen or hold gas, and water may rise. A valve box that you only reach into is not such a space.',
    consequence: 'Bad air gives no sign and will kill whoever climbs in, and often the rescuer too.',
    local: {
      US: [
        'Treat every pit that you climb into as a permit space until a qualified person says otherwise.',
        'Test the air first: 19.5 to 23.5 percent oxygen, flammable gas not over 10 percent of its lower limit.'
      ],
      other: ['Have a qualified person judge the pit and test its air before anybody climbs in.']
    },
    avoidance: [
      'Work from outside with a long key wherever it can be done.',
      'Keep your head above the rim when you only reach in.',
      'Keep a trained person outside who can pull you out without climbing in.',
      'Call the rescue service, and do not climb in after somebody.'
    ],
    short: 'The air in a pit can kill without a sign.',
    instead: 'Work from outside; do not climb in.',
    deference: 'The entry permit and the local safety authority decide.'
  },
  'fall-edge': {
    title: 'A fall from the roof',
    hazard: 'The roof edge, a skylight or a hatch is a few steps from the work.',
    consequence: 'A fall from the roof will kill or seriously injure you.',
    local: {
      US: [
        'Use a guardrail, a net or personal fall arrest within 6 ft (1.8 m) of the edge.',
        'Mark a designated area for short, rare work between 6 ft and 15 ft (4.6 m) from the edge.',
        'Follow the employer’s work rule farther in.'
      ],
      other: [
        'Use a guardrail or fall arrest wherever a fall is possible.',
        'Ask how far from the edge the local rules let you work without them.'
      ]
    },
    avoidance: [
      'Get the building owner’s roof permit and the plan of anchors before the visit.',
      'Tie off only to an anchor whose test is in date.',
      'Cover or fence skylights and hatches, and do not step on them.',
      'Tie tools and box lids so that nothing falls on people below.',
      'Leave the roof in strong wind, ice or thunder.'
    ],
    short: 'The roof edge is near.',
    instead: 'Tie off, or stay well inside the edge.',
    deference: 'The local fall-protection rules and the building owner’s permit decide.'
  },
  'buried-utilities': {
    title: 'Power, gas and other lines in the ground',
    hazard: 'Power, gas, water and data lines may cross wherever you dig, at any depth.',
    consequence: 'A spade in a power or gas line could kill you or the people nearby.',
    local: {
      US: [
        'Call 811 before you dig; the law of each state sets how many business days before.',
        'Dig by hand within the distance of a mark that the state sets; many say 24 in (600 mm).'
      ],
      GB: ['Ask every utility for its plans, then trace its lines with a cable locator.'],
      AU: ['Make the national before-you-dig enquiry at least two full business days before.'],
      NZ: ['Make the national before-you-dig enquiry and wait for the plans.'],
      other: ['Ask the one-call or utility enquiry service of the place to locate its lines; in the US that is 811.']
    },
    avoidance: [
      'Mark the area in white before the locator comes.',
      'Wait until every utility has answered.',
      'Find private lines yourself: nobody marks irrigation, lighting or gate wires for you.',
      'Dig by hand near a mark.',
      'Stop, keep people back and call the utility when you meet an unmarked line.'
    ],
    short: 'Power or gas lines may lie near this box.',
    instead: 'Have utilities located before you dig, even by hand.',
    deference: 'The utility owners and the local dig law decide.'
  },
  trench: {
    title: 'A trench or pit that caves in',
    hazard: 'The wall of a trench or pit can fall in without a sign.',
    consequence: 'Soil that falls on you could crush or smother you and cause death.',
    local: {
      US: [
        'Shore, shield or slope a trench 5 ft (1.52 m) deep or more, unless it is all stable rock.',
        'Do the same in a shallower one, unless a competent person examined it and saw no sign of a cave-in.',
        'Set a ladder or ramp within 25 ft (7.6 m) of everybody in a trench 4 ft (1.22 m) deep or more.',
        'Keep spoil and equipment 2 ft (0.6 m) or more from the edge.',
        'Test the air below 4 ft (1.22 m) where it may be bad.'
      ],
      other: [
        'Shore, shield or slope the sides unless a competent person finds them safe.',
        'Set a ladder close to everybody who works below ground.',
        'Keep spoil and equipment back from the edge.'
      ]
    },
    avoidance: [
      'Have a competent person examine the ground every day, and again after rain.',
      'Keep out of the hole when nobody stands beside it.',
      'Fence or cover the hole before you leave it.'
    ],
    short: 'The wall of a deep hole can fall in.',
    instead: 'Stay out until a competent person has examined it.',
    deference: 'A competent person on the site and the local safety authority decide.'
  },
  'blow-out': {
    title: 'Blowing out lines with compressed air',
    hazard: 'Air under pressure stores far more energy than water, and a part can burst or fly off.',
    consequence: 'A part thrown by air could blind or kill you.',
    avoidance: [
      'Set the regulator no higher than the lowest-rated part on the line.',
      'Stay below 50 psi (3.4 bar) on polyethylene and 80 psi (5.5 bar) on rigid PVC, by common practice, no source.',
      'Stay near 30 psi (2 bar) on drip, by common practice, no source.',
      'Open a valve first, so that the air always has a way out.',
      'Do not blow through a backflow assembly, a pump or a meter.',
      'Wear eye protection and keep everybody away from heads and open boxes.',
      'Stop when no more water comes: running dry heats the parts.'
    ],
    short: 'Air under pressure can throw parts.',
    instead: 'Stand clear, wear eye protection and keep the regulator low.',
    deference: 'The ratings marked on the parts and a trained operator decide.'
  },
  'chemical-injection': {
    title: 'Fertilizer or chemical in the water',
    hazard: 'The tank, the injector and the line hold concentrate, and it can run back toward drinking water.',
    consequence:
      'Concentrate could seriously injure your eyes and skin, and could poison whoever drinks from the main.',
    avoidance: [
      'Read the label and the safety data sheet before you open anything.',
      'Wear the gloves and the eye protection that the label names.',
      'Stop the injector and let its pressure off before you open the line.',
      'Check that a backflow assembly for high hazard is fitted and its test is in date.',
      'Do not drink from any outlet beyond the injector, and mark each one.',
      'Keep people out for as long as the label says.'
    ],
    short: 'The water here may carry fertilizer or chemical.',
    instead: 'Stop the injector first and wear gloves and eye protection.',
    deference: 'The product label, the water supplier and a certified backflow tester decide.'
  },
  backflow: {
    title: 'Irrigation water running back into drinking water',
    hazard: 'When the pressure in the main drops, soil, fertilizer and standing water can be drawn into it.',
    consequence: 'People who drink that water could fall seriously ill.',
    avoidance: [
      'Leave the backflow assembly in service: do not bypass, shut or remove it.',
      'Have a certified tester test it when it is fitted, moved or repaired, and at the site’s interval.',
      'File each test report in this binder, with serial number, date and tester.',
      'Report an assembly that leaks, is missing or is overdue.',
      'Protect it from frost and drain it for winter.'
    ],
    short: 'Dirty water can run back into the drinking main.',
    instead: 'Leave the backflow assembly in service.',
    deference: 'The water supplier and a certified backflow tester decide.'
  },
  lightning: {
    title: 'Lightning',
    hazard: 'Field wires, pipes and fences carry a strike a long way, and open ground draws one.',
    consequence: 'A strike, even one far along the wire, could kill you.',
    avoidance: [
      'Stop at the first thunder and go into a building or a closed vehicle.',
      'Wait 30 minutes after the last thunder.',
      'Keep off wires, pipes and fences, and leave splices until the storm has passed.'
    ],
    short: 'Field wires carry lightning a long way.',
    instead: 'Stop at the first thunder and wait 30 minutes after the last.',
    deference: 'The employer’s weather rule decides.'
  },
  heat: {
    title: 'Heat',
    hazard: 'Sun, roofs, pavement and glass heat the body faster than it can cool.',
    consequence: 'Heat stroke could kill within hours.',
    avoidance: [
      'Drink a cup of water every 15 to 20 minutes, and no more than six cups an hour.',
      'Rest in shade, and more often as the day gets hotter.',
      'Give a new worker 20 percent of a full day on the first day, and build up.',
      'Watch each other for confusion, cramps and hot, dry skin.',
      'Call the emergency number and cool a confused person at once with water and shade.'
    ],
    short: 'Heat can overcome you while you work.',
    instead: 'Drink often and rest in shade.',
    deference: 'The employer’s heat plan and the local labor rules decide.'
  },
  'reclaimed-water': {
    title: 'Reclaimed water: do not drink',
    hazard: 'The water is reclaimed, is not drinking water, and may carry germs.',
    consequence: 'Water that you swallow, or get in a cut or an eye, could make you ill.',
    avoidance: [
      'Do not drink it, wash in it or fill a bottle from it.',
      'Wear gloves, and eye protection where it sprays.',
      'Wash your hands in clean water before you eat, drink or smoke.',
      'Keep spray and runoff off people, dwellings and places where people eat.',
      'Keep the signs and the purple marks in place and readable.',
      'Do not join these pipes to drinking water, not even for a test.'
    ],
    short: 'Reclaimed water: do not drink.',
    instead: 'Wear gloves and wash before you eat or drink.',
    deference: 'The reclaimed-water permit and the local health authority decide.'
  },
  'box-animals': {
    title: 'What lives in boxes',
    hazard: 'Spiders, wasps, ants, snakes, broken glass and sharp wire ends sit in valve boxes.',
    consequence: 'A bite, a sting or a cut could hurt you and need treatment.',
    avoidance: [
      'Lift the lid by its far edge with a tool, so that it stands between you and the box.',
      'Look in with a light before you reach in.',
      'Wear thick gloves, with the cuffs over your sleeves.',
      'Leave a nest or a snake alone, close the lid and report it.',
      'Get medical help for a bite, or for any swelling away from a sting.'
    ],
    short: 'Spiders, wasps, snakes, glass or wire ends may be inside.',
    instead: 'Look in with a light first, and wear gloves.',
    deference: 'First-aid advice and the local pest rules decide.'
  },
  'stored-pressure': {
    title: 'Pressure that is let out by hand',
    hazard: 'A bleed screw, a loosened solenoid or a lifted bonnet lets water out under pressure.',
    consequence: 'A jet or a loose part could bruise you, cut you or hurt an eye.',
    avoidance: [
      'Close the shut-off and let the pressure out downstream before you take a valve apart.',
      'Turn a bleed or a solenoid slowly, a quarter turn at a time.',
      'Keep your face to one side and wear eye protection.',
      'Close it by hand again and see the water stop.'
    ],
    short: 'A valve that is opened by hand lets water out under pressure.',
    instead: 'Turn it slowly, with your face to one side.',
    deference: 'The valve’s own instructions and a qualified person decide.'
  },
  lids: {
    title: 'Heavy lids and open boxes',
    hazard: 'A lid is heavy and slips, and an open box is a hole that people step into.',
    consequence: 'A lid could crush a finger or strain your back, and a step into the box could sprain an ankle.',
    avoidance: [
      'Lift with a lid hook, knees bent, fingers out of the gap.',
      'Use two people for a large lid.',
      'Lay the lid flat and away from the rim.',
      'Stay with an open box, or guard it.',
      'Seat the lid flush, lock it, and report a cracked one.'
    ],
    short: 'The lid is heavy and the open box is a hole.',
    instead: 'Use a lid hook, and stay with the open box.',
    deference: 'The local rules for lifting and the owner of the ground decide.'
  },
  'battery-handling': {
    title: 'Handling batteries',
    hazard: 'A shorted, mixed or backward cell heats up, and a spent one leaks caustic liquid.',
    consequence: 'A hot cell or its liquid could burn skin or irritate an eye.',
    avoidance: [
      'Change all cells of a controller at once, for new ones of one kind and make.',
      'Match plus and minus to the marks.',
      'Keep spare cells in their pack, away from keys, tools and coins.',
      'Do not charge, open or crush a primary cell, or put one in a fire.',
      'Take out spent cells, and all cells of a controller that rests for long.',
      'Wear gloves for a leaking cell, and rinse skin or eyes with plenty of water.'
    ],
    short: 'Shorted or leaking cells burn.',
    instead: 'Match plus and minus, and wear gloves for a leaking cell.',
    deference: 'The marks on the battery and the controller’s product sheet decide.'
  },
  'valve-stays-open': {
    title: 'A latching valve stays open when the battery goes flat',
    hazard: 'A latching valve needs no power to stay as it is. A weak pulse can open one and then fail to close it.',
    consequence: 'Water runs until somebody stops it: flooded beds, washed-out soil and a large water bill.',
    avoidance: [
      'Change batteries on the due date, before they are weak.',
      'Watch each valve open and close after every change.',
      'Close a stuck valve by hand, or close the shut-off.',
      'See the meter stand still before you leave.',
      'Do not count on a controller that shuts its valves as the battery fades.'
    ],
    short: 'A flat battery leaves an open valve open.',
    instead: 'Close it by hand, or close the shut-off.',
    deference: 'The controller’s product sheet decides how it acts on a weak battery.'
  },
  'ac-on-latching': {
    title: 'DC latching coils and 24 V AC',
    hazard: 'A DC latching coil is made for a pulse of thousandths of a second, not for steady current.',
    consequence: 'Steady 24 V AC, or a battery held on, overheats the coil and ruins it.',
    avoidance: [
      'Connect these coils only to a controller that pulses DC.',
      'Read the marking on a coil before you fit it: ohms alone do not tell the kinds apart.',
      'Test a coil with a touch of its rated battery, no longer than a pulse.',
      'Do not connect a transformer to the pair, not even for a moment.'
    ],
    short: 'DC latching coils: 24 V AC ruins them.',
    instead: 'Connect them only to a controller that pulses DC.',
    deference: 'The product sheets of the coil and the controller decide.'
  },
  polarity: {
    title: 'Reversed polarity',
    hazard: 'With its two leads swapped, a valve shuts at the opening pulse and opens at the closing pulse.',
    consequence: 'The valve stands open at all times but its own program, and water runs all night.',
    avoidance: [
      'Watch each valve open and close under pressure after any work on its wires.',
      'Swap the two leads at the splice where a valve works backward, and watch it twice.',
      'Match the polarity where two coils hang on one output.',
      'Record which color goes to which lead.'
    ],
    short: 'Swapped leads make a valve work backward.',
    instead: 'Watch the valve open and close before you leave.',
    deference: 'The product sheets of the coil and the controller decide.'
  },
  'cable-cover': {
    title: 'Control cable in the ground',
    hazard: 'Spades, aerators and edgers reach a cable that lies too shallow.',
    consequence: 'A cut cable leaves its valve as it stands, open or shut, and a nicked one corrodes until it fails.',
    avoidance: [
      'Measure cover from the top of the cable to finished grade.',
      'Lay cable no shallower than the table of least cover for the place.',
      'Trace the cable before you dig, aerate or edge.',
      'Make splices in a box, with connectors that are listed for wet places.',
      'Record the depth at each crossing of a path or a road.'
    ],
    short: 'Control cable may lie a spade’s depth down.',
    instead: 'Trace it before you dig.',
    deference: 'The local electrical code, the road authority and the permit come before the table.'
  },
  'battery-disposal': {
    title: 'Getting rid of spent batteries',
    hazard: 'Spent cells count as separate waste in many places, and as hazardous waste in some.',
    consequence: 'Cells in the trash break the waste rules of many places and foul the ground.',
    local: {
      US: [
        'Ask the state and the county: California treats all discarded batteries as hazardous waste and bars them from the trash.'
      ],
      GB: ['Hand them in at a battery collection point, and keep them out of general waste.'],
      EU: ['Hand them in separately, as the law of the Union asks of whoever used them.'],
      other: ['Ask the local authority where it takes spent batteries.']
    },
    avoidance: [
      'Take every spent cell off the site the same day.',
      'Tape the terminals of 9 V and lithium cells, and bag each one.',
      'Keep spent cells apart from new ones and from metal.'
    ],
    short: 'Spent batteries are not trash.',
    instead: 'Take them with you to a collection point.',
    deference: 'The waste rules of the state or the local authority decide.'
  }
}

/** Words of the cautions: their sentences, and what binds them to a site. */
export const cautionWords = {
  texts,
  /** The signal words, by the name that the cards of the cautions give them. */
  signals: { DANGER: 'DANGER', WARNING: 'WARNING', CAUTION: 'CAUTION', NOTICE: 'NOTICE' },
  /** How a source is known, after its name. The name itself stays as it was published. */
  sources: {
    'Product sheet as submitted for the site': 'Product sheet as submitted for the site',
    'The site file': 'The site file',
    'common practice, no source': 'common practice, no source',
    'rule of this project': 'rule of this project',
    'from memory': 'from memory',
    'read in a copy': 'read in a copy'
  },
  /** Ends the deference of every caution. */
  closing: 'Local rules and the authority having jurisdiction come first.',
  editionExample: (cited: string) => `${cited}. US rules as an example: check the local equivalent.`,
  edition: (cited: string) => `${cited.charAt(0).toUpperCase()}${cited.slice(1)}.`,
  steps: {
    closureHours: (hours: string) => `Work only in the stated closure hours, ${hours}.`,
    trafficPlan: (plan: string) => `Follow traffic-control plan or permit ${plan}.`,
    parapet: (height: string, guard: string) =>
      `Treat the parapet of ${height} as no guard: a guardrail is at least ${guard} high.`,
    guard: '39 in (0.99 m)',
    anchors: (names: string) => `Tie off to the anchors that the site file names: ${names}.`,
    isolation: (where: string) => `Switch the mains off here: ${where}.`,
    airPressure: (pressure: string) => `Set the regulator no higher than ${pressure}, the rating of the weakest part.`
  },
  hazardLine: {
    road: 'TRAFFIC: stay inside the traffic control.',
    roof: 'ROOF EDGE: tie off, or stay well inside.',
    reclaimed: 'RECLAIMED WATER: do not drink.'
  },
  box: {
    noted: (hazards: string) => `Noted in this box: ${hazards}.`
  },
  reasons: {
    caption: 'Why each caution stands here',
    caution: 'Caution',
    because: 'Because',
    graded: (cited: string) => `Signal words are graded after ${cited}.`
  },
  cover: {
    caption: 'Least cover over irrigation control cable of 30 V or less',
    where: 'Where the cable lies',
    cover: 'Cover',
    orInRaceway: (direct: string, raceway: string) => `${direct} direct, ${raceway} in raceway`,
    locations: {
      'open ground': 'Planting, lawn and other open ground',
      'trench under 2 in concrete': 'Trench below 2 in (50 mm) of concrete',
      'under a building': 'Under a building, in raceway',
      'under a 4 in slab without vehicles': 'Under a 4 in (100 mm) slab without vehicles',
      'street, road, driveway or parking lot': 'Street, road, alley, driveway or parking lot',
      'one- or two-family driveway': 'Driveway of a one- or two-family dwelling',
      'airport runway': 'Airport runway and beside it'
    } satisfies Record<CoverLocation, string>,
    edition: (cited: string) => `From ${cited}. Column 5.`,
    first: 'The local electrical code, the road authority and the permit come first, and may ask for more.',
    toTheTop: 'Cover counts from the top of the cable to finished grade, so the trench is deeper.',
    limit: 'The column ends at 30 V; above that, another column holds.',
    floor: 'Spades and aerators reach 6 in (150 mm): lay it deeper where you can (common practice, no source).',
    example: 'This is a code of the United States and stands here as an example: check the local equivalent.'
  }
}

export type CautionWords = typeof cautionWords
