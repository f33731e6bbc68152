/** Words of what a unit is and how a person handles it: how it is set, locks, sensors, pumps, lost memory, keys. */
export const unitWords = {
  panel: (cell: string) => `solar panel${cell ? `, filling ${cell}` : ''}`,
  setBy: 'Set by',
  keys: 'keys on its face',
  radio: (range: string) => `radio, from a phone${range ? `, within ${range}` : ''}`,
  stand: 'Where to stand',
  standNotWritten: 'not written: stand off the road, lid shut',
  mounting: 'Mounting',
  lock: 'Lock',
  lockAndKey: (lock: string, keys: string) => (keys ? `${lock}; key ${keys}` : `${lock}; no key in the register`),
  days: 'Days it can be set to',
  dayRules: {
    weekdays: 'weekdays',
    'every N days': 'every so many days',
    odd: 'odd dates',
    even: 'even dates'
  },
  drift: 'Clock may be off',
  driftText: (amount: string, set: string) => `${amount} a month${set ? `; set right every ${set}` : ''}`,
  startsADay: 'Starts a day, at most',
  notOnIt: 'It has no setting for',
  noPercent: 'percents by month: the minutes of each month are keyed in',
  noCycles: 'cycles with a soak: start times do instead',
  delayFor: 'The delay is for',
  pump: 'Pump start',
  pumpText: (relay: string) => `${relay || 'relay not described'}. MAINS beyond the relay: licensed electrician only`,
  coils: 'Coils',
  twoLeads: 'two leads: reversed to close',
  threeLeads: 'three leads: common, open, close; never reversed',
  suspend: 'To hold it back for days',
  suspendText: (days: string, set: string, shows: string) =>
    [days && `up to ${days} days`, set, shows && `it shows ${shows}`].filter(Boolean).join('; '),
  memory: 'If clock and program are gone',
  sensor: (id: string, kind: string) => `Sensor ${id}, ${kind}`,
  wired: {
    'in the common': 'in the common: stops every station',
    'own terminals': 'on terminals of its own',
    'by radio': 'by radio'
  },
  normally: { closed: 'normally closed', open: 'normally open' },
  contact: 'Contact',
  wiredHead: 'Wired',
  bypass: 'To leave it out for a test',
  register: 'Key register',
  keyMark: 'Mark',
  kind: 'Kind',
  opens: 'Opens',
  count: 'Count',
  heldBy: 'Held by',
  keyNote: 'Where spare keys hang, and codes, stand on the restricted sheet alone.',
  lid: 'Lid, lock, mounting',
  retrofit: 'Valves made for alternating current that carry latching coils',
  was: 'Was',
  adapter: 'Adapter',
  swapped: 'Swapped',
  checked: 'Seen to open and close',
  retrofitNote:
    'A spare for these must fit thread, plunger and adapter as written. The old AC coils do not belong among the spares.',
  none: '–',
  toClose: 'to close',
  trend: {
    caption: 'Readings over the visits',
    loopAt: 'Loop',
    coilAt: 'Coil',
    at20: 'At 20 °C',
    change: 'Change',
    temperature: 'Temp.',
    first: 'first',
    closing: (station: string) => `${station} to close`,
    percent: (text: string) => `${text} %`,
    note: (cold: string, coldPercent: string, warm: string, warmPercent: string) =>
      `Change: against the first reading; both taken to 20 °C where both temperatures are on file, else as they stand. Copper at ${cold} reads ${coldPercent} % against 20 °C, at ${warm} ${warmPercent} %.`,
    base: 'Loops and expected readings are at 20 °C. AWG sizes: formula and 100 % IACS copper; IEC sizes: the greatest that IEC 60228 allows; stranded AWG: NEC chapter 9, table 8, taken from 75 to 20 °C.'
  },
  line: {
    radio: (controller: string, range: string, stand: string) =>
      `${controller} is set by phone${range ? `, within ${range}` : ''}. Stand ${stand}.`,
    sensor: (id: string, kind: string, wired: string) => `${id} (${kind}) is ${wired}.`,
    wiringUnknown: (id: string, kind: string) => `${id} (${kind}): nobody wrote down how it is wired.`,
    stops: (id: string, kind: string, controller: string) =>
      `${id} (${kind}): while its contact is open, no station of ${controller} waters though the program runs.`,
    bypass: (text: string) => `For a test: ${text}`,
    memory: (controller: string, text: string) => `${controller}, clock and program gone: ${text}`,
    held: (controller: string, set: string, shows: string) =>
      `${controller}, held back for days${shows ? `: it shows ${shows}` : ''}${set ? `. Set by: ${set}` : ''}.`,
    pump: (controller: string, relay: string) =>
      `${controller} starts a pump (${relay || 'relay not described'}): hear the relay click and the pump start. MAINS beyond the relay: licensed electrician only.`,
    delay: (controller: string, delay: string, reason: string) =>
      `${controller} waits ${delay} between stations: ${reason}. That is no fault.`,
    toClose: (station: string) => `${station} to close`,
    halves: (names: string) =>
      `${names}: three leads. Measure common to open, then common to close, and hold each against its own band.`
  }
}
