import type { CautionId } from '../../domain/safety/cautions.ts'

/** Words of fault finding: the same steps in the binder and, shorter, on the box page. */
interface StepWords {
  readonly title: string
  /** Test equipment; empty where eyes are enough. */
  readonly needs: string
  readonly why: string
  readonly todo: readonly string[]
  readonly seen: readonly (readonly [sign: string, means: string])[]
  /** The same for a phone, where every letter weighs: cautions first, then what to do, then the signs. */
  readonly brief: {
    readonly cautions: readonly (readonly [id: CautionId, text: string])[]
    readonly todo: readonly string[]
    readonly seen: readonly string[]
  }
}

const steps = {
  'by-hand': {
    title: 'Open the valve by hand',
    needs: 'valve key, eye protection',
    why: 'Tells a fault of the water from a fault of the wires before a meter comes out.',
    todo: [
      'See that water reaches the box: shut-off, meter, backflow assembly, filter and any main valve ahead are open.',
      'Open the valve slowly, by its bleed or a quarter turn of the coil, and close it again by hand.'
    ],
    seen: [
      ['Runs and stops by hand', 'The water side is sound. Go on.'],
      [
        'Does not open',
        'Shut isolation valve, no pressure, flow control screwed down, blocked port, or the valve is fitted backward.'
      ],
      [
        'Opens and does not stop',
        'Close the shut-off. Then: grit or a torn diaphragm, an open bleed, dirt under the plunger, a valve fitted backward, or less flow than the valve needs to close (drip).'
      ]
    ],
    brief: {
      cautions: [['stored-pressure', 'Water comes out under pressure. Turn slowly, face to one side.']],
      todo: [],
      seen: [
        'Runs and stops by hand: the water side is sound, go on.',
        'Stays shut: no pressure, flow control down, blocked port, fitted backward.',
        'Does not stop: close the shut-off. Grit, torn diaphragm, open bleed, too little flow.'
      ]
    }
  },
  battery: {
    title: 'Battery under load',
    needs: 'voltmeter that holds the lowest reading, or a fixed test load as the product sheet gives it',
    why: 'A tired battery looks fair at rest and gives way at the pulse.',
    todo: [
      'Measure across the battery terminals at rest.',
      'Measure again under the test load, or hold the lowest reading while a station starts: an ordinary meter misses a pulse of some hundredths of a second.',
      'After a change, see every valve open and close.'
    ],
    seen: [
      ['Good at rest, sags under load', 'Weak battery, corroded contact, cold, or the wrong chemistry.'],
      [
        'Fair at the first visit of a season',
        'Fit a new set all the same: alkaline cells give less in the cold (from memory).'
      ]
    ],
    brief: {
      cautions: [['battery-handling', 'Shorted or leaking cells burn. Match plus and minus.']],
      todo: ['Measure at rest, then under a test load or with a meter that holds the lowest reading.'],
      seen: ['Sags under load: weak set, corroded contact, cold, wrong kind.']
    }
  },
  coil: {
    title: 'The right coil, and whole',
    needs: 'ohmmeter',
    why: 'A coil for AC cannot latch, and a broken or shorted one cannot move.',
    todo: [
      'Take both leads of the coil off and measure across them.',
      'Read the marking as well: ohms alone do not always tell the kinds apart.'
    ],
    seen: [
      ['Within the band for this station', 'The coil is whole. Go on.'],
      [
        '20 to 60 Ω',
        'What a good 24 V AC coil reads (common practice, no source). If it is marked AC, fit a DC latching coil.'
      ],
      [
        'About 2 to 10 Ω',
        'Usual for two-wire latching coils of the 9 V class; some of the 12 V class read 10 to 40 Ω (from memory).'
      ],
      ['0 to 1 Ω, or no reading', 'Shorted coil or leads that touch; broken coil or lead (common practice, no source).']
    ],
    brief: {
      cautions: [],
      todo: ['Take both leads off, measure across the coil, read its marking.'],
      seen: [
        '20 to 60 Ω and marked AC: wrong coil (common practice, no source).',
        '0 to 1 Ω: shorted. No reading: broken.'
      ]
    }
  },
  pulse: {
    title: 'Pulse test at the coil',
    needs: 'a good battery of the coil’s rated volts',
    why: 'Shows whether coil and plunger move, with the controller and the long wires left out.',
    todo: [
      'Take the pair off the controller first.',
      'Stand clear: the valve may open.',
      'Touch the coil’s leads to the battery for a moment, about a tenth of a second (common practice, no source), and let go. Then swap the leads and touch again.',
      'Never hold a battery on the coil and never put AC on it: it is not made for steady current.',
      'Leave the valve closed, and put the pair back as it was.'
    ],
    seen: [
      ['Clicks both ways', 'One way opens, the other closes. The coil is good. Go on.'],
      [
        'Clicks one way only',
        'It may have stood that way already: try both again. Else a weak battery, a stuck plunger or a tired magnet.'
      ],
      ['No click', 'The coil or the plunger is dead: change it.']
    ],
    brief: {
      cautions: [
        ['stored-pressure', 'The valve may open under pressure. Take the pair off the controller, then stand clear.'],
        ['ac-on-latching', 'Never hold a battery on the coil and never put AC on it: both burn it out.']
      ],
      todo: [
        'Touch a battery of the coil’s volts to it for about a tenth of a second (common practice, no source), then with the leads swapped.'
      ],
      seen: ['Clicks both ways: good. One way: try again; stuck plunger. None: dead.', 'Leave the valve closed.']
    }
  },
  loop: {
    title: 'From the controller end',
    needs: 'ohmmeter, record drawing',
    why: 'One reading holds the coil, both wires and every splice.',
    todo: [
      'Ask what has been dug lately, and follow the route on the record drawing.',
      'Take the pair off the controller and measure across it.',
      'Measure each lead to ground: no reading, or a very high one, is expected (from memory).'
    ],
    seen: [
      ['Within the band for this station', 'Coil, wires and splices are sound.'],
      ['Much higher', 'Bad splice, nicked wire, or moisture in either. Make the splice again.'],
      ['Much lower', 'Wires that touch, or two coils side by side.'],
      [
        'Wires twisted together at the valve read as wires alone',
        'The wires are good: the fault is the coil or its connector.'
      ],
      [
        'Right ohms, yet it works only at the box',
        'Wire too long or too thin: a thicker wire, or a nearer controller.'
      ],
      ['Good at closeout, bad a season later', 'A wet splice: direct current corrodes it fast (from memory).']
    ],
    brief: {
      cautions: [],
      todo: ['Take the pair off the controller and measure across it.'],
      seen: [
        'Higher: bad or wet splice, nicked wire. Lower: wires touch, or two coils side by side.',
        'Right, yet it works only at the box: wire too long or too thin.'
      ]
    }
  },
  polarity: {
    title: 'Polarity',
    needs: '',
    why: 'With its leads swapped a valve closes at the opening pulse and opens at the closing one.',
    todo: ['Start the station at the controller, stop it, and watch the valve.'],
    seen: [
      [
        'Closes when it should open, or waters at all times but its own',
        'Swap the two leads at the splice, then see it open and close twice.'
      ]
    ],
    brief: {
      cautions: [],
      todo: [],
      seen: ['Closes when it should open: swap the two leads at the splice, then see it open and close twice.']
    }
  },
  program: {
    title: 'Program',
    needs: 'program card',
    why: 'A sound valve does what a wrong program tells it.',
    todo: ['Hold clock, days, start times and run times against the program card.'],
    seen: [
      ['Runs at the wrong hour', 'Clock, a.m. for p.m., a clock that drifted, or daylight saving.'],
      ['Runs twice', 'A second start time, or two programs for one station.'],
      [
        'Runs on a day that is not allowed',
        'The program counts days where odd or even dates are the rule, or the 31st came between.'
      ],
      ['Does not run at all', 'Off, rain or season setting.']
    ],
    brief: {
      cautions: [],
      todo: ['Hold clock and settings against the program card.'],
      seen: ['Wrong hour: clock, a.m. or p.m., daylight saving. Twice: a second start time. Wrong day: it counts days.']
    }
  },
  flow: {
    title: 'The valve opens, the flow is weak',
    needs: 'water meter and watch',
    why: 'The wires have done their part: what is left is water.',
    todo: ['Run the station alone, time the meter, and hold the flow against the normal one.'],
    seen: [
      [
        'Less than normal',
        'Clogged filter or emitters, pressure regulator, flow control partly shut, or two controllers open at once on a small supply.'
      ],
      ['Normal or more, yet the plants are dry', 'A leak between the valve and the emitters.']
    ],
    brief: {
      cautions: [],
      todo: ['Run the station alone and time the meter.'],
      seen: ['Low: filter, emitters, regulator, flow control, two controllers at once. Normal, yet dry: a leak.']
    }
  }
} satisfies Record<string, StepWords>

export type FaultStepId = keyof typeof steps

export const faultWords = {
  lead: 'Look up the symptom, then work through the steps in their order; stop at the one that shows the fault. Each says what to do, why, and what the signs mean.',
  first:
    'The product sheet and the closeout readings of this site come before every general figure here. Read Safety first before you open a box.',
  symptom: 'Symptom',
  lookFirst: 'Look first',
  then: 'Then',
  symptoms: [
    [
      'No station waters',
      'Battery under load (2); clock, off and rain setting (7)',
      'Pulse at the controller; the common wire (5)'
    ],
    [
      'One station is dead',
      'Ohms at the controller (5), then at the valve (3)',
      'Splices, kind of coil, size and length of wire'
    ],
    [
      'A valve does not close',
      'Close it by hand or close the shut-off (1); grit',
      'Battery at the closing pulse (2), polarity (6), least flow of the valve'
    ],
    [
      'A valve opens by itself',
      'Polarity (6), a second start time (7)',
      'A wire shared by two stations, damage by a surge'
    ],
    ['Works near, fails far away', 'Loop ohms against the table (5)', 'Size of wire, length, coils side by side'],
    [
      'Battery is flat too early',
      'Pulses a day (7), leakage in a wet splice (5)',
      'Wrong kind of cell (2), shorted coil (3)'
    ],
    [
      'Odd readings after rain only',
      'Leads to ground (5), water in the box',
      'Make the splice again, above the gravel'
    ],
    ['Waters, but weakly', 'Flow against normal (8)', 'Filter, regulator, other stations open at once']
  ] satisfies readonly (readonly [string, string, string])[],
  symptomNote: 'Numbers in parentheses are the steps below. Order of the checks: common practice, no source.',
  stepTitle: (number: number, title: string) => `${number} · ${title}`,
  why: (why: string, needs: string) => `Why: ${why}${needs ? ` You need: ${needs}.` : ''}`,
  briefCaution: (signal: string, text: string) => `${signal}: ${text}`,
  caution: (signal: string, hazard: string, instead: string) => `${signal}: ${hazard} ${instead}`,
  doLead: 'Do',
  signs: 'Look for',
  signLine: (sign: string, means: string) => `${sign}: ${means.charAt(0).toLowerCase()}${means.slice(1)}`,
  steps,
  battery: {
    caption: 'Volts of the sets on this site',
    set: 'Battery',
    newRest: 'New, at rest',
    change: 'Change below, under load',
    failed: 'Failed near',
    controllers: 'Controllers',
    kindUnknown: 'kind not on file',
    each: (kind: string) => `${kind}, each one by itself`,
    range: (least: string, most: string) => `${least} to ${most} V`,
    below: (volts: string) => `about ${volts} V`,
    noFigure: 'see product sheet',
    note: 'No published figure was found for what is from memory; a product sheet comes before it.',
    line: (set: string, newRest: string, change: string, failed: string) =>
      `${set}: new ${newRest} at rest; change below ${change} under load${failed ? `; failed near ${failed}` : ''} (from memory; product sheet first).`,
    bySheet: (set: string, change: string, newRest: string, failed: string) => {
      const usual = [newRest && `new ${newRest} at rest`, failed && `failed near ${failed}`].filter(Boolean).join('; ')
      return `${set}: change below ${change} under load (product sheet)${usual ? `; ${usual} (from memory)` : ''}.`
    },
    unknown: (set: string) => `${set}: take the volts to change it at from the product sheet.`,
    pulse: (controllers: string, volts: string) =>
      `${controllers}: ${volts} at the terminals during the pulse (product sheet).`
  },
  readings: {
    caption: 'What a meter should show on this site',
    station: 'Station',
    zone: 'Zone',
    wires: 'Wires alone',
    controller: 'At the controller',
    valve: 'At the valve',
    band: 'Band',
    flow: 'Normal flow',
    range: (least: string, most: string) => `${least}\u00a0to\u00a0${most}`,
    around: (day: string) => `closeout ${day}`,
    bandNote: (cold: string, warm: string) =>
      `Band: around the closeout reading 20 % either way where one is on file; else coil 20 % either way and copper at ${cold} to ${warm}. The 20 % is a rule of this project.`,
    offNote: (names: string) =>
      `${names}: the reading on file is outside what coil and wire can give, so the band is not around it. Look at this one first.`,
    coilsNote: (names: string) => `${names}: ohms are of the coils together. One coil alone reads more.`,
    none: 'No station is on file, so there are no readings to expect.',
    line: (band: string) => `${band} is good.`,
    unknown: (why: string) => `not computed, ${why}.`,
    off: 'Closeout reading off: look here first.'
  },
  threeLeads:
    'Three leads are two windings with a common. Measure the common to each; the two need not be equal (from memory).',
  programLine: (controllers: string, text: string) => `${controllers}: ${text}.`
}
