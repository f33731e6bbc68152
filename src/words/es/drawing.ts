/** Words of the record drawing and of the controller charts. */
export const drawingWords = {
  places: {
    box: 'Arqueta de válvulas',
    controller: 'Programador',
    'shut-off': 'Llave de corte',
    meter: 'Contador',
    backflow: 'Dispositivo antirreflujo',
    sensor: 'Sensor',
    splice: 'Empalme',
    filter: 'Filtro',
    pump: 'Bomba',
    'quick coupler': 'Boca de riego',
    drain: 'Desagüe',
    'ground rod': 'Pica de tierra',
    other: 'Otro'
  },
  /** Beside the sign of a thing, after the name of what it is of. */
  short: {
    'shut-off': 'corte',
    meter: 'contador',
    backflow: 'antirreflujo',
    sensor: 'sensor',
    splice: 'empalme',
    filter: 'filtro',
    pump: 'bomba',
    'quick coupler': 'boca',
    drain: 'desagüe',
    'ground rod': 'pica',
    box: 'arqueta',
    controller: 'programador',
    other: ''
  },
  valveBox: 'Arqueta con válvulas',
  valve: 'Válvula',
  point: 'Punto permanente desde el que se mide',
  tie: 'Medida de referencia',
  aside: 'Lugar real de un símbolo',
  lines: {
    curb: 'Bordillo',
    'road edge': 'Borde de la calzada',
    wall: 'Muro',
    building: 'Edificio',
    walk: 'Borde de un camino',
    fence: 'Valla',
    main: 'Tubería general',
    lateral: 'Ramal',
    wire: 'Trazado de cable',
    sleeve: 'Pasatubos',
    other: 'Otra cosa, por su nombre'
  },
  north: 'N',
  master: 'VM',
  splices: (count: number) => (count === 1 ? '1 empalme' : `${count} empalmes`),
  zone: (zone: string, station: string) => (zone === station ? station : `${zone}, ${station}`),
  scale: (ratio: number) => `1:${ratio}`,
  scaleFeet: (feet: number, ratio: number) => `1 in = ${feet} ft (1:${ratio})`,
  heading: 'PLANO DE OBRA EJECUTADA',
  ownNote: (own: string, signed: string) =>
    `${own}, el plano de esta carpeta, se dibuja a partir del archivo del sitio a una escala propia. No sustituye a ${signed}.`,
  caption: (scale: string) =>
    `Tal como se instaló, ${scale} impreso a tamaño completo. Si no, mida con la barra de escala.`,
  title: (site: string) => `Plano de obra ejecutada, ${site}`,
  alt: (scale: string, things: readonly string[], zones: readonly string[]) =>
    `Planta a ${scale}, con el norte arriba. Dibujado: ${things.join(', ')}.${zones.length > 0 ? ` Zonas por trama: ${zones.join(', ')}.` : ''} Posiciones y medidas de referencia figuran en la tabla siguiente.`,
  block: {
    site: 'Emplazamiento',
    sheet: 'Plano',
    ownSheet: (own: string, signed: string) => (signed === '' ? own : `${own}; firmado: ${signed}`),
    dated: 'Fecha',
    revision: 'Revisión',
    scale: 'Escala',
    tolerance: 'Posiciones',
    within: (amount: string) => `con un margen de ${amount}`,
    pressure: 'Presión',
    static: (pressures: string) => `${pressures} estática`,
    by: 'Dibujado para',
    notSupplied: 'sin facilitar'
  },
  notes: {
    unplaced: (names: readonly string[]) => `No están en este plano: ${names.join(', ')}`
  },
  table: {
    caption: 'Posiciones en el plano',
    thing: 'Elemento',
    where: 'Dónde',
    ties: 'Medidas de referencia',
    east: 'Este',
    north: 'Norte',
    by: 'Según',
    how: { measured: 'medido', degrees: 'grados', ties: 'dos medidas' },
    origin: 'Este y norte se cuentan desde el origen del plano; oeste y sur son negativos.'
  },
  unplaced: {
    caption: 'Sin posición en el plano',
    thing: 'Elemento',
    why: 'Por qué',
    because: {
      nothing: 'no hay ninguna posición escrita',
      'few-ties': 'menos de dos medidas llevan a un punto del plano',
      'no-meeting': 'sus medidas no se cortan',
      'two-spots': 'sus medidas dan dos puntos; no está escrito el lado',
      'no-origin': 'está escrito en grados y el origen del plano no'
    }
  },
  none: {
    text: 'No se conoce ninguna posición, así que no se puede dibujar nada. Escriba en drawing dónde están las arquetas y los puntos de sus medidas.',
    caption: 'Medidas tal como se tomaron',
    box: 'Arqueta',
    where: 'Dónde',
    ties: 'Medidas de referencia'
  },
  find: {
    heading: 'Cómo encontrar cada arqueta',
    title: (box: string) => `Cómo encontrar ${box}`,
    alt: (box: string, ties: readonly string[]) =>
      `Planta del terreno en torno a ${box}, con el norte arriba.${ties.length > 0 ? ` Medidas de referencia: ${ties.join('; ')}.` : ''}`,
    picture: (box: string) => `Arqueta ${box}`
  },
  chart: {
    section: 'Fichas de programador',
    document: 'Fichas de programador',
    heading: (controllers: string, count: number) => `${count === 1 ? 'Programador' : 'Programadores'} ${controllers}`,
    keep: 'GUARDAR JUNTO AL PROGRAMADOR',
    copies:
      'Tres copias: una plastificada junto al programador, dos para el propietario. Imprímalas de nuevo cuando algo cambie.',
    planTitle: (controllers: string) => `Zonas de ${controllers}`,
    planAlt: (controllers: string, zones: readonly string[]) =>
      `Planta de las zonas de ${controllers} por trama, con el norte arriba: ${zones.join(', ')}.`,
    schematic: 'Zonas por trama, sin escala: el archivo del emplazamiento no tiene un plano de su terreno.',
    pattern: 'Trama',
    station: 'Estación',
    zone: 'Zona',
    waters: 'Riega',
    valve: 'Válvula',
    box: 'Arqueta',
    master: 'Válvula maestra',
    minutes: 'Minutos en un día de riego',
    quarters: ['ene–mar', 'abr–jun', 'jul–sep', 'oct–dic'],
    off: 'apagado',
    spread: (low: string, high: string) => (low === high ? low : `${low}–${high}`),
    asOf: (day: string, revision: string) => `Programa a fecha de ${day}, revisión ${revision}`,
    programs: 'Programa',
    program: (id: string, days: string, starts: string) => `${id}: ${days}, inicio ${starts}`,
    established: (zone: string, day: string) =>
      `${zone}: establecida desde el ${day}; los tiempos de arriba siguen el programa, cámbielo ese día`,
    shutOff: 'Llave de corte',
    shutsOff: (supply: string, where: string) => `${supply}, toda el agua de este programador: ${where}`,
    meter: 'Contador',
    backflow: 'Dispositivo antirreflujo',
    installer: 'Instalador',
    warranty: 'Garantía',
    warrantySpan: (item: string, from: string, to: string) => `${item}: del ${from} al ${to}`
  }
}
