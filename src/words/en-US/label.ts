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
  foot: (day: string, revision: string) => `Data of ${day} · revision ${revision}`
}
