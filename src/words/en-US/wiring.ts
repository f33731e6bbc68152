/** Words of the wiring drawing and of the table beside it. */
export const wiringWords = {
  heading: 'Wiring of each controller',
  title: (controller: string) => `Wiring, controller ${controller}`,
  titleAlike: (controllers: string) => `Wiring, controllers ${controllers}, one station each`,
  caption: (controller: string) =>
    `Terminals of ${controller}, not to scale. A diamond is a splice; where it lies is on the record drawing. The same stands in the table.`,
  captionAlike: (controllers: string) => `Drawn for one of ${controllers}; lengths stand in the wire schedule.`,
  alt: (controller: string, rows: readonly string[], common: string) =>
    `Controller ${controller}. ${rows.join('; ')}.${common ? ` ${common}.` : ''}`,
  altRow: (terminal: string, to: string, wires: string, splices: number) =>
    `terminal ${terminal} to ${to}${wires ? `, ${wires}` : ''}${splices > 0 ? `, ${splices === 1 ? 'one splice' : `${splices} splices`}` : ''}`,
  altCommon: (label: string, sensors: readonly string[]) =>
    `All stations share the ${label}${sensors.length > 0 ? `, with ${sensors.join(' and ')} in it` : ''}`,
  master: 'MV',
  masterName: 'Master valve',
  pump: 'P',
  pumpName: 'Pump relay',
  mains: 'MAINS BEYOND',
  common: 'C',
  commonLabel: (colour: string) => (colour ? `common: ${colour}` : 'common'),
  noColour: 'color not supplied',
  wires: (colour: string, runs: string) => [colour, runs].filter(Boolean).join(' · '),
  run: (size: string, length: string) => `${size} ${length}`,
  coils: (count: number, ohm: string) => `${count} coils${ohm ? `, ${ohm}` : ''}`,
  halves: (open: string, close: string) => `open ${open}, close ${close}`,
  contactUnknown: 'contact not on file',
  contact: { closed: 'contact closed', open: 'contact open' },
  terminal: 'Terminal',
  to: 'To',
  box: 'Box',
  colours: 'Colors',
  size: 'Size and one-way length',
  splices: 'Splices',
  reads: 'At the controller',
  none: '–',
  threeLeads:
    'Three leads: open, close and common. The controller pulses the common with one of the two; the leads are never swapped to reverse it. First figure: common to open; second: common to close.',
  closedInCommon: (names: string) =>
    `${names}: normally closed, in the common. While it is open no station of this controller gets a pulse, though the program runs on.`
}
