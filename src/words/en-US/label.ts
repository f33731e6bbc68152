/** Words of the lid label. */
export const labelWords = {
  title: 'Lid labels',
  lead: [
    'Print on white matt synthetic sheet, in black. Cut along the marks.',
    'Clean and dry the inside of the lid first. Where glue does not hold, fix a plate with rivets or ties.'
  ],
  shutOff: (where: string) => where,
  noShutOff: 'Shut-off: not supplied',
  battery: (count: number, kind: string) => `${count} × ${kind}`,
  noBattery: 'no battery in this box',
  coilUnknown: 'coil kind not stated',
  coils: (kinds: readonly string[]) => kinds.join(' · '),
  foot: (day: string, revision: string) => `Data of ${day} · revision ${revision}`,
  reach: (distance: string) => `A phone reads the large codes from up to ${distance}.`,
  moreStations: (count: number) =>
    count === 1 ? '1 more station: on its page' : `${count} more stations: on the page`,
  /** The zone plan as plain text in a code, a line each. */
  plan: {
    title: 'No network? This code holds the plan in words:',
    head: (site: string, box: string, tag: string) => `${site}, box ${box}, ${tag}`,
    program: (controller: string, program: string, days: string, starts: string) =>
      `${controller} program ${program}: ${days}, ${starts}`,
    noProgram: 'in no program',
    percent: (months: string) => `% by month: ${months}`,
    battery: (controller: string, due: string) => `Battery ${controller}: change by ${due}`,
    noDate: 'no date',
    asOf: (day: string) => `Data of ${day}`,
    more: 'More on the page'
  }
}
