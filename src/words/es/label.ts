/** Words of the lid label. */
export const labelWords = {
  title: 'Etiquetas de tapa',
  lead: [
    'Imprima en lámina sintética blanca mate, en negro. Corte por las marcas.',
    'Limpie y seque antes el interior de la tapa. Donde el pegamento no agarre, fije una placa con remaches o bridas.'
  ],
  shutOff: (where: string) => where,
  noShutOff: 'Llave de corte: sin facilitar',
  battery: (count: number, kind: string) => `${count} × ${kind}`,
  noBattery: 'ninguna en esta arqueta',
  coilUnknown: 'tipo de bobina sin indicar',
  coils: (kinds: readonly string[]) => kinds.join(' · '),
  foot: (day: string, revision: string) => `Datos del ${day} · revisión ${revision}`
}
