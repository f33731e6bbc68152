/** Words of the section on programs that would meet the need. */
export const adviceWords = {
  title: 'Programas que cubrirían la necesidad',
  lead: 'Se obtienen de la misma necesidad que las tablas de agua: tiempos de riego para el mes en que un riego debe dar más, cada ciclo redondeado hacia arriba al paso del programador, dentro de las horas y los días permitidos, junto a las demás estaciones y programadores. Tan cerca de lo programado como eso permite. Los meses en que no se programa nada quedan secos.',
  heading: (controllers: string) => `${controllers}: programa que hay que introducir`,
  asSetMeets: (controllers: string) =>
    `${controllers}: lo programado cubre la necesidad, con un margen de un paso o de una décima en cada mes, y cumple las normas.`,
  notKnown: (controllers: string) =>
    `${controllers}: no se conoce la necesidad de sus zonas, así que no se aconseja nada.`,
  cannot: (controllers: string) =>
    `${controllers}: ningún ajuste posible cubre la necesidad dentro de las normas. Lo que lo impide:`,
  asSet: (program: string) => `Programado: ${program}`,
  wouldMeet: (program: string) => `Lo que cubriría la necesidad: ${program}`,
  program: (controllers: string, program: string) => `${controllers}, programa ${program}`,
  stays: (programs: string) => `Queda como está: programa ${programs}.`,
  notJudged: (station: string, reason: string) => `${station} queda como está: ${reason}.`,
  hours: (need: string, allowed: string, short: string) =>
    `Necesita ${need} por noche; las normas permiten ${allowed} seguidos: faltan ${short}.`,
  hoursDay: (need: string, allowed: string, short: string) =>
    `Necesita ${need} por noche; las normas permiten ${allowed}: faltan ${short}.`,
  supply: (need: string, free: string, short: string) =>
    `Necesita ${need} por noche; junto a los demás de su toma quedan libres ${free} en las horas permitidas: faltan ${short}.`,
  reservoir: (zone: string, month: string, need: string, holds: string, over: string) =>
    `${zone}, ${month.toLowerCase()}: con tantos riegos como permiten las normas, cada uno debe aportar ${need}; la zona radicular retiene ${holds}: ${over} se pierden por drenaje.`,
  interval: (zone: string, month: string, gap: number, lasts: number) =>
    `${zone}, ${month.toLowerCase()}: la zona radicular aguanta ${days(lasts)}; los días permitidos dejan ${days(gap)} entre riegos: sobran ${days(gap - lasts)}.`,
  intake: (zone: string, least: string, longest: string, over: string) =>
    `${zone}: el agua escurre a partir de ${longest}; el ciclo más corto que se puede fijar es de ${least}: sobran ${over}.`,
  cap: (zone: string, month: string, need: string, allowed: string, over: string) =>
    `${zone}, ${month.toLowerCase()}: con tantos riegos como permiten las normas, un día debe darle ${need}; una norma permite ${allowed} al día: sobran ${over}.`,
  cycleStarts: (zone: string, wanted: number, takes: number) =>
    `${zone}: no admite ciclos con pausa, y en su lugar harían falta ${wanted} inicios al día; admite ${takes}.`,
  startsADay: (wanted: number, makes: number) =>
    `Cada uno de sus ${wanted} programas pide un inicio; hace ${makes} al día: sobran ${wanted - makes}.`,
  noPercent: 'ninguno: introduzca los minutos de cada mes',
  byMonth: (program: string) => `${program}: minutos que hay que introducir, cada mes, por ciclo`,
  programs: (wanted: number, holds: number) =>
    `Hacen falta ${wanted} programas de fechas distintas; admite ${holds}: sobran ${wanted - holds}.`,
  days: (rule: string, date: string) =>
    `Ningún ajuste de sus días respeta los días permitidos: «${rule}» se sale de ellos el ${date}. Reinicie la cuenta antes de esa fecha, cada vez, o monte un programador que admita fechas.`,
  noDays: (rule: string) => `Ningún ajuste de sus días respeta los días permitidos; «${rule}» tampoco.`,
  given: 'Necesario y aportado, mes a mes',
  givenLead:
    'Lámina sobre toda la superficie. Necesario: lo que falta a las plantas después de la lluvia, con las pérdidas de la zona compensadas. Aportado: minutos programados por la tasa de aplicación.',
  figureTitle: (station: string) => `${station}: necesario y aportado`,
  figureCaption: (station: string, need: string, given: string) =>
    `${station}: ${need} necesarios en el año, ${given} aportados.`,
  figureCaptionUnknown: (station: string, given: string, why: string) =>
    `${station}: ${given} aportados en el año. Necesidad sin calcular: ${why}.`,
  needed: 'necesario',
  givenShort: 'según programa',
  table: (unit: string) => `Lámina necesaria y aportada, ${unit}`,
  station: 'Estación',
  waters: 'Riega',
  year: 'Año',
  rowWhat: 'Qué',
  rowNeeded: 'necesario',
  rowSet: 'programado',
  rowAdvised: 'aconsejado'
}

function days(count: number): string {
  return count === 1 ? '1 día' : `${count} días`
}
