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
  foot: (day: string, revision: string) => `Datos del ${day} · revisión ${revision}`,
  reach: (distance: string) => `Un teléfono lee los códigos grandes hasta a ${distance}.`,
  moreStations: (count: number) =>
    count === 1 ? '1 estación más: en su página' : `${count} estaciones más: en la página`,
  /** The zone plan as plain text in a code, a line each. */
  plan: {
    title: '¿Sin red? Este código lleva el plan en palabras:',
    head: (site: string, box: string, tag: string) => `${site}, arqueta ${box}, ${tag}`,
    program: (controller: string, program: string, days: string, starts: string) =>
      `${controller} programa ${program}: ${days}, ${starts}`,
    noProgram: 'en ningún programa',
    percent: (months: string) => `% por mes: ${months}`,
    battery: (controller: string, due: string) => `Batería ${controller}: cambiar antes del ${due}`,
    noDate: 'sin fecha',
    asOf: (day: string) => `Datos del ${day}`,
    more: 'Más en la página'
  }
}
