/** Words of the printed binder. */
export const binderWords = {
  subtitle: 'Carpeta de mantenimiento',
  contents: 'Índice',
  running: (site: string, revision: string) => `${site} · revisión ${revision}`,
  dataDate: (day: string) => `Datos del ${day}`,
  notSupplied: 'sin facilitar',
  notComputed: 'sin calcular',
  none: 'ninguno',
  cover: {
    place: 'Lugar',
    address: 'Dirección',
    owner: 'Propietario',
    maintainer: 'Mantenimiento a cargo de',
    installer: 'Instalado por',
    season: 'Temporada de riego',
    status: 'Estado',
    boxes: 'Arquetas de válvulas',
    controllers: 'Programadores',
    stations: 'Estaciones',
    supplies: 'Tomas de agua',
    open: (errors: number, warnings: number, notes: number) =>
      errors + warnings + notes === 0
        ? 'Sin puntos pendientes.'
        : `Puntos pendientes: ${count(errors, 'error', 'errores')}, ${count(warnings, 'advertencia')}, ${count(notes, 'nota')}. Se enumeran en Puntos pendientes.`
  },
  places: {
    roundabout: 'Rotonda',
    median: 'Mediana',
    verge: 'Margen de la vía',
    planter: 'Jardineras',
    roof: 'Cubierta',
    nursery: 'Vivero',
    glasshouse: 'Invernadero',
    park: 'Parque',
    slope: 'Talud',
    temporary: 'Plantación temporal',
    other: 'Otro'
  },
  statuses: {
    planned: 'En proyecto',
    'in-service': 'En servicio',
    'out-of-service': 'Fuera de servicio',
    'closed-out': 'Recibido',
    removed: 'Retirado'
  },
  season: (from: string, to: string) => `del ${from} al ${to}`,
  allYear: 'Todo el año',
  sections: {
    safety: 'Primero, la seguridad',
    contacts: 'Contactos',
    site: 'El emplazamiento',
    supplies: 'Toma de agua y llave de corte',
    boxes: 'Arquetas de válvulas y cómo encontrarlas',
    controllers: 'Programadores y sus programas',
    zones: 'Zonas',
    wires: 'Cuadro de cables',
    schedule: 'Calendario de riego mes a mes',
    batteries: 'Registro de baterías',
    faults: 'Búsqueda de averías',
    visits: 'Visitas',
    warranty: 'Garantía',
    open: 'Puntos pendientes',
    missing: 'Lo que no se ha facilitado',
    signOffs: 'Firmas',
    numbers: 'Cómo se obtuvieron estas cifras'
  },
  safety: {
    lead: 'Lea esto antes de abrir una arqueta. PELIGRO causa la muerte o lesiones graves, ADVERTENCIA puede causarlas, PRECAUCIÓN puede causar lesiones, AVISO se refiere solo a daños materiales.',
    chosen:
      'Estas indicaciones se eligieron por lo que el archivo del emplazamiento dice de este lugar. Donde no dice nada de calzada, borde de cubierta o profundidad, la indicación se mantiene.',
    coverHeading: 'Profundidad de los cables enterrados'
  },
  contacts: {
    role: 'Función',
    name: 'Nombre',
    company: 'Empresa',
    phone: 'Teléfono',
    licence: 'Licencia',
    private:
      'Los números privados, las claves y el lugar de las llaves figuran en la hoja reservada, que se imprime aparte de esta carpeta.',
    withheld: 'en la hoja reservada'
  },
  site: {
    facts: 'Lugar y normas',
    coordinates: 'Coordenadas',
    elevation: 'Altitud',
    timeZone: 'Huso horario',
    country: 'País',
    windows: 'Horario de riego permitido',
    barred: 'Sin riego',
    days: 'Días de riego',
    authority: 'Establecido por',
    rule: 'Norma de riego',
    laneClosure: 'Corte de carril',
    plan: 'Plan de señalización',
    sensors: 'Sensores',
    sensor: 'Sensor',
    kind: 'Tipo',
    where: 'Dónde',
    notes: 'Notas',
    workNote: 'Al trabajar aquí',
    referenceEt: 'Evapotranspiración de referencia por mes, según lo facilitado',
    month: 'Mes'
  },
  supplies: {
    supply: 'Toma de agua',
    kind: 'Tipo',
    shutOff: 'Llave de corte',
    limit: 'Caudal máximo',
    pressure: 'Presión estática',
    meter: 'Contador',
    backflow: 'Dispositivo antirreflujo',
    notFitted: 'sin montar',
    serial: 'Número de serie',
    tested: 'Último ensayo',
    due: 'Próximo ensayo',
    tester: 'Ensayado por',
    reason: 'Motivo'
  },
  boxes: {
    box: 'Arqueta',
    tag: 'Matrícula',
    where: 'Dónde',
    ties: 'Medidas de referencia',
    holds: 'Contiene',
    load: 'Clase de carga',
    scan: 'Lea el código o escriba la matrícula en',
    pictures: 'Imágenes',
    pictureOf: (box: string) => `Arqueta ${box}, con la tapa abierta`,
    controller: (id: string) => `programador ${id}`,
    valve: (zone: string) => `válvula ${zone}`,
    masterValve: (id: string) => `válvula maestra de ${id}`,
    allOf: (id: string) => `todas las zonas de ${id}`,
    away: (status: string) => `fuera de servicio: ${status}`
  },
  controllers: {
    box: 'Arqueta',
    sheet: 'Ficha técnica',
    serial: 'Número de serie',
    battery: 'Batería',
    clock: 'Horario de verano',
    delay: 'Retardo entre estaciones',
    stations: 'Salidas',
    pulse: 'Impulso en los bornes',
    master: 'Válvula maestra',
    pump: 'Arranque de bomba',
    supply: 'Toma de agua',
    clocks: {
      'by itself': 'el reloj cambia solo',
      'moved by hand': 'el reloj se cambia a mano',
      'not followed': 'el reloj sigue en horario de invierno'
    },
    movedBy: (who: string) => `por ${who}`,
    outOfService: 'Fuera de servicio',
    noProgram: 'No hay ningún programa escrito para este programador.',
    alike: 'Programadores con el mismo ajuste',
    controller: 'Programador',
    fitted: 'Montada',
    programTitle: (controller: string, program: string, name: string) =>
      `${controller} · programa ${program}${name ? ` · ${name}` : ''}`,
    days: 'Días',
    starts: 'Horas de inicio',
    percent: 'Porcentaje mensual',
    fromTo: 'En vigor',
    ends: 'Fin de la última estación',
    from: (day: string) => `desde el ${day}`,
    to: (day: string) => `hasta el ${day}`,
    window: 'horario'
  },
  zones: {
    station: 'Estación',
    zone: 'Zona',
    waters: 'Riega',
    devices: 'Emisores',
    area: 'Superficie',
    flow: 'Caudal normal',
    rate: 'Tasa de aplicación',
    noRate: 'falta el caudal o la superficie',
    valve: 'Válvula',
    valveBox: 'Arqueta',
    plants: 'Coeficiente de planta',
    soil: 'Suelo',
    roots: 'Profundidad radicular'
  },
  wires: {
    lead: 'Longitudes de un solo sentido. El bucle son los dos hilos a 20 °C. El límite indicado es el que manda.',
    station: 'Estación',
    zone: 'Zona',
    wire: 'Cable',
    colour: 'Colores',
    length: 'Un sentido',
    loop: 'Bucle',
    coil: 'Bobina',
    expected: 'Esperado en el programador',
    volts: 'Voltios en la bobina',
    limit: 'Límite',
    longest: 'Tendido máximo',
    verdict: 'Resultado',
    passes: 'CUMPLE',
    fails: 'NO CUMPLE',
    unknown: 'SIN LÍMITE INDICADO',
    open: 'SIN CALCULAR',
    baseline: 'Lectura inicial',
    figureTitle: (station: string) => `Tendido de cable, estación ${station}`,
    figureCaption: (station: string, verdict: string) => `Tendido de la estación ${station}: ${verdict}.`,
    limitLength: (length: string, size: string) => `${length}${size ? ` con ${size}` : ''}`,
    limitLoop: (ohm: string) => `bucle ${ohm}`,
    limitVolts: (volts: string) => `${volts} en la bobina`,
    splices: 'Empalmes',
    spliceLine: (station: string, where: string, kind: string) => `${station}: ${where}${kind ? `, ${kind}` : ''}`,
    readings: 'Lecturas registradas',
    on: 'Fecha',
    by: 'Por'
  },
  schedule: {
    lead: (year: number) =>
      `Hecho con los programas tal como están, para ${year}. Los minutos son de válvula abierta en un día de riego. Los días son la media del mes: días del mes × días de riego por semana ÷ 7; las fechas pares e impares se cuentan.`,
    station: 'Estación',
    waters: 'Riega',
    year: 'Año',
    minutesPerDay: 'Minutos en un día de riego',
    days: 'Días de riego',
    minutes: 'Minutos en el mes',
    volume: 'Agua en el mes',
    percent: 'Porcentaje mensual',
    figureTitle: 'Minutos de riego por mes, todas las estaciones',
    figureCaption:
      'Minutos de válvula abierta de todo el emplazamiento, mes a mes. Las mismas cifras figuran en la tabla.',
    volumeFigureTitle: 'Agua aportada por mes',
    volumeFigureCaption:
      'Agua aportada por los programas tal como están, mes a mes, en las estaciones con caudal indicado.',
    noFlow: 'Las estaciones sin caudal indicado no entran en el volumen.',
    program: (controller: string, program: string) => `${controller}, programa ${program}`,
    outOfSeason: (from: string, to: string) =>
      `Fuera del periodo del ${from} al ${to} los programadores están apagados.`,
    nothing: 'No hay programas escritos, así que no hay calendario de riego.'
  },
  batteries: {
    controller: 'Programador',
    box: 'Arqueta',
    kind: 'Tipo',
    count: 'Cantidad',
    fitted: 'Montada',
    due: 'Vence',
    state: 'Estado',
    because: 'Fijado por',
    states: { ok: 'BIEN', 'due-soon': 'VENCE PRONTO', overdue: 'VENCIDA', 'no-date': 'SIN FECHA', none: 'NINGUNA' },
    log: 'Registro: rellenar en cada cambio',
    date: 'Fecha',
    rest: 'Voltios en reposo',
    load: 'Voltios en carga',
    who: 'Quién',
    clockSet: 'Reloj y programa revisados',
    valvesSeen: 'Las válvulas abren y cierran',
    lead: 'Una válvula de enclavamiento (latching) se queda como estaba cuando se agota la batería. Cámbiela a tiempo y después vea abrir y cerrar cada válvula.'
  },
  visits: {
    date: 'Fecha',
    by: 'Por',
    reason: 'Motivo',
    found: 'Encontrado',
    done: 'Hecho',
    open: 'Queda pendiente',
    readings: 'Lecturas',
    none: 'No hay ninguna visita registrada.',
    blank: 'Visitas por anotar'
  },
  warranty: { item: 'Elemento', start: 'Inicio', end: 'Fin', terms: 'Condiciones', contact: 'A quién llamar' },
  open: {
    none: 'No hay nada pendiente.',
    alike: (code: string, names: readonly string[]) =>
      `Lo mismo, ${code}, vale para ${names.length} más: ${names.join(', ')}.`,
    lead: 'Lo que las comprobaciones encontraron en los datos de esta carpeta. Un error está mal o es inseguro tal como está, una advertencia pide una revisión, una nota es un consejo.',
    /** What the checks say stands in English in every binder; this says so in another language. */
    inEnglish:
      'Las frases de las comprobaciones están en inglés, tal como las da la orden «check»; su código permite buscarlas.',
    severities: { error: 'ERROR', warning: 'ADVERTENCIA', note: 'NOTA' }
  },
  missing: {
    lead: 'Estas partes de una carpeta completa no se han facilitado. Se enumeran para que nadie tome un hueco por un descuido.',
    none: 'Está todo lo que se pide.',
    part: 'Parte',
    what: 'Lo que falta',
    whole: 'el apartado entero',
    rows: (count: number) => `${count} filas`,
    photos: 'Arquetas sin fotografía'
  },
  signOffs: {
    lead: 'Firme cuando la carpeta se haya entregado y repasado en el emplazamiento.',
    installer: 'Instalador',
    owner: 'Propietario o representante',
    maintainer: 'Responsable de mantenimiento',
    fields: ['Nombre', 'Firma', 'Fecha']
  },
  numbers: {
    lead: 'Cada cifra procede de un cálculo con nombre. Ejecute uno solo con: npx underlid calc NAME. La marca de un valor indica cómo se llegó a conocer.',
    /** As with the open items. */
    inEnglish:
      'Los títulos, los pasos y los límites de los cálculos están en inglés; las cifras son las mismas que en el resto de la carpeta. Lo que está escrito en el archivo del emplazamiento figura en el idioma en que se escribió.',
    noWorkings: 'No se calculó ninguna cifra.'
  },
  restricted: {
    title: 'Hoja reservada',
    lead: 'Guarde esta hoja aparte de la carpeta. Entréguela solo a quien la necesite y recójala después.',
    what: 'Qué',
    word: 'Valor',
    none: 'No hay nada privado registrado.'
  }
}

export function count(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`
}
