/** Words that the data of a box page is made from. The labels of its parts stand with the templates' words. */
export const boxPageWords = {
  serves: (what: readonly string[]) =>
    what.length === 0 ? 'No consta nada en esta arqueta.' : `Esta arqueta contiene: ${list(what)}.`,
  shutOff: (id: string, kind: string) => `${id} · ${kind}`,
  noShutOff:
    'No se ha facilitado dónde se corta el agua. Busque el contador o la llave general y avise al propietario.',
  byHandTitle: 'En la válvula',
  byHandSteps: [
    'Cierre la válvula a mano: apriete el control de caudal o gire el solenoide hasta que el agua se detenga.',
    'Una válvula de enclavamiento (latching) no se cierra sola al quitar la batería.'
  ],
  months: [
    'Enero',
    'Febrero',
    'Marzo',
    'Abril',
    'Mayo',
    'Junio',
    'Julio',
    'Agosto',
    'Septiembre',
    'Octubre',
    'Noviembre',
    'Diciembre'
  ],
  asOf: (day: string) => `A fecha de ${day}`,
  noRunToday: 'Sin riego en este día.',
  runToday: (program: string, from: string, to: string) => `Programa ${program}: de ${from} a ${to}`,
  daysLine: (program: string, days: string, starts: string) => `Programa ${program}: ${days}, inicio ${starts}`,
  offSeason: (from: string, to: string) => `Apagado fuera del periodo del ${from} al ${to}.`,
  windowRule: (window: string, authority: string) => `Riego permitido ${window}${authority ? ` (${authority})` : ''}.`,
  laneRule: (window: string) => `Corte de carril ${window}.`,
  noProgram: 'No hay ningún programa registrado para este programador.',
  lastVisit: (day: string, by: string) => `Última visita ${day}${by ? `, por ${by}` : ''}`,
  noVisit: 'No hay ninguna visita registrada.',
  away: (what: string, reason: string) => `${what} está fuera de servicio: ${reason}`,
  twins: (others: readonly string[]) =>
    `Esta matrícula también está en ${list(others)}. Compruebe en qué arqueta está antes de trabajar.`,
  /** What a check found, in its own words. */
  found: (message: string) => `(en inglés) ${message}`,
  openFault: (text: string) => `Pendiente: ${text}`,
  batteryReading: (controller: string, rest: string, load: string) =>
    `Batería de ${controller}: ${[rest && `${rest} en reposo`, load && `${load} en carga`].filter(Boolean).join(', ')}`,
  loopReading: (station: string, loop: string) => `${station}: bucle ${loop}`,
  coilReading: (station: string, coil: string) => `${station}: bobina ${coil}`,
  meterReading: (supply: string, meter: string) => `Contador de ${supply}: ${meter}`,
  quote: (tag: string) => `Indique ${tag}`,
  printedCopy: 'El propietario tiene una carpeta impresa.',
  revision: (revision: string) => `Revisión ${revision}`,
  dataDate: (day: string) => `Datos del ${day}`,
  coil: (kind: string, ohm: string, leads: string) => [kind, ohm && `unos ${ohm}`, leads].filter(Boolean).join(', '),
  baseline: (value: string, day: string) => `${value} el ${day}`,
  coilKinds: {
    'DC latching 2-wire': 'de enclavamiento de CC, 2 hilos',
    'DC latching 3-wire': 'de enclavamiento de CC, 3 hilos',
    '24 V AC': '24 V CA',
    'not known': 'no se conoce'
  },
  roles: {
    owner: 'propietario',
    maintainer: 'mantenimiento',
    installer: 'instalador',
    electrician: 'electricista'
  },
  every: (minutes: string) => `${minutes} min`,
  gone: {
    title: (tag: string) => `Matrícula ${tag}`,
    moved: (box: string, where: string) =>
      `Esta arqueta se trasladó. Era ${box}.${where ? ` Ahora está en ${where}.` : ''}`,
    retired: (box: string) => `Esta arqueta ya no se usa. Era ${box}.`,
    replaced: (box: string) => `Esta matrícula se sustituyó. Era ${box}.`,
    unplaced: (box: string) =>
      `Esta matrícula pertenece a ${box}. No se pudo hacer su página. Llame al propietario e indique la matrícula.`
  }
}

/** "a", "a y b", "a, b y c". */
export function list(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? ''
  const last = items.at(-1) ?? ''
  return `${items.slice(0, -1).join(', ')} ${/^(?:i|hi(?!e))/iu.test(last) ? 'e' : 'y'} ${last}`
}
