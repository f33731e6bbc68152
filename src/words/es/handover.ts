/** Words of what an owner's representative looks for at closeout, and of the package that is handed over. */
export const handoverWords = {
  sections: {
    installed: 'Tal como se instaló',
    calendar: 'Calendario de mantenimiento',
    binderSet: 'Archivador y copias digitales'
  },
  contacts: {
    contractor: 'Datos del contratista',
    company: 'Empresa',
    suppliers: 'Proveedores y fuentes de repuestos',
    responsible: 'Responsable del mantenimiento',
    shutOff: 'Llave de corte'
  },
  safety: {
    words: 'Qué significan las palabras y las señales',
    danger: 'causará la muerte o lesiones graves si no se evita',
    warning: 'podría causar la muerte o lesiones graves',
    caution: 'podría causar lesiones leves o moderadas',
    notice: 'se refiere solo a daños materiales y no lleva símbolo de alerta',
    symbol: 'El símbolo de alerta',
    symbolText: 'un triángulo con un signo de exclamación, junto a cada palabra que habla de daño a personas',
    signs: 'Señales en el lugar',
    signsText: 'triángulo: advertencia; anillo con barra: prohibido; disco: obligatorio',
    place: 'Dónde figuran',
    placeText: 'reunidas aquí y otra vez en el paso al que pertenecen',
    tags: 'Tarjetas de peligro',
    tagsText: 'al menos dos niveles, PELIGRO y PRECAUCIÓN, legibles a 5 ft (1.5 m)',
    road: 'Trabajo en la calzada',
    roadText: 'las señales y los conos los coloca personal formado según un plan; nunca a ojo',
    roadNone: 'ninguno aquí: nadie trabaja en una calzada',
    posted: 'Instrucciones colocadas junto a los equipos'
  },
  installed: {
    lead: 'Lo que se montó de verdad, y dónde. Lo que no está escrito aquí hay que buscarlo en el plano de obra ejecutada.',
    things: 'Lo que debe mostrar el plano',
    wiring: 'Cables en el suelo',
    tags: 'Tarjetas y adhesivos',
    inventory: 'Inventario de piezas instaladas',
    source: 'Origen del agua',
    shutOff: 'Corte de emergencia',
    backflow: 'Dispositivo antirreflujo',
    valves: 'Válvulas',
    splices: 'Empalmes',
    paths: 'Trazado de los cables',
    pathless: (zones: string) => `${zones}: sin anotar`,
    controllers: 'Programadores',
    sensors: 'Sensores',
    mains: 'Tubería general',
    laterals: 'Ramales',
    filters: 'Filtros',
    pumps: 'Bombas',
    quickCouplers: 'Bocas de riego',
    grounding: 'Puesta a tierra',
    designPressure: 'Presión de proyecto',
    conduit: 'Conductos y sus tamaños',
    spareWires: 'Hilos de reserva',
    wireSlack: 'Holgura',
    samples: 'Muestras de colores de hilo y de empalmes',
    shutOffTag: 'Tarjeta en la llave de corte',
    boxTags: 'Tarjetas con el nombre de las arquetas',
    valveList: (zone: string, size: string, box: string) => [zone, size, box].filter(Boolean).join(', '),
    none: 'ninguno',
    columns: ['Pieza', 'Fabricante y modelo', 'Tamaño o boquilla', 'Instalada', 'Dónde'],
    controller: 'programador',
    valve: 'válvula',
    masterValve: 'válvula maestra',
    spaced: (text: string) => `cada ${text}`
  },
  zones: {
    title: 'Ficha de zonas',
    columns: [
      'Estación',
      'Plantas',
      'Exposición',
      'Pendiente',
      'Uniformidad',
      'Emisores',
      'Boquilla',
      'Separación',
      'Presión en la válvula',
      'Caudal medido',
      'Modelo de válvula'
    ],
    exposure: (factor: string) => `microclima ${factor}`,
    average: 'como el registro del tiempo'
  },
  phases: {
    title: 'Arraigo y después',
    establishment: 'Arraigo',
    established: 'Jardín establecido',
    temporary: 'Zonas temporales',
    weaning: 'Fin del arraigo: cambiar los programas',
    asProgrammed: 'los programas de esta carpeta',
    all: 'todas las zonas',
    span: (from: string | undefined, to: string | undefined) =>
      [from ? `desde el ${from}` : '', to ? `hasta el ${to}` : ''].filter(Boolean).join(' '),
    weaned: (of: string, day: string) => `${of} el ${day}`
  },
  backflow: {
    title: 'Registro de dispositivos antirreflujo',
    columns: [
      'Toma de agua',
      'Tipo',
      'Tamaño',
      'Fabricante y modelo',
      'Número de serie',
      'Dónde',
      'Montado',
      'Ensayado',
      'Por',
      'Licencia'
    ],
    tag: 'La tarjeta del dispositivo los muestra',
    rule: 'Se ensaya al montarlo, trasladarlo o repararlo, y después cada año, salvo que la autoridad pida más; una copia de cada informe va al suministrador del agua.'
  },
  drawings: {
    delivered: 'Entregado al propietario',
    base: 'Medido desde',
    tiedEvery: 'Tuberías y cables acotados al menos cada',
    markedUp: 'Con anotaciones',
    label:
      'Cada plano lleva el rótulo PLANO DE OBRA EJECUTADA, fecha y firma, muestra escala, norte y leyenda, y se envía con una carta que lo enumera.',
    later: 'Cambios desde entonces',
    laterNone: 'ninguna visita pide cambiar el plano',
    schedulePosted: 'El calendario de riego en vigor está expuesto',
    sticker: 'Adhesivo en el programador',
    chartNote:
      'Tres de cada una: una junto al programador, dos para el propietario; plastificadas y renovadas cuando algo cambia. Las zonas se distinguen por trama y nombre, nunca solo por color.'
  },
  calendar: {
    lead: 'Lo que vence mes a mes durante un año desde la fecha de los datos, con el tiempo que lleva. Reparta el trabajo; las fechas son las últimas.',
    months: 'Mes a mes',
    monthColumns: ['Mes', 'Lo que vence', 'Minutos'],
    tasks: 'Tareas, herramientas e indicaciones de seguridad',
    taskColumns: ['Tarea', 'Cada cuánto', 'Hecha por última vez', 'Minutos', 'Herramientas y piezas', 'Próxima'],
    nothing: '–',
    labor: 'Trabajo en el año',
    perWeek: 'Por semana, de media',
    perMonth: 'Por mes, de media',
    perYear: 'En el año',
    perDay: 'Por día de trabajo, como máximo',
    minutes: (count: number) => `${count} min`,
    once: 'una vez',
    routine:
      'Toda tarea empieza con las indicaciones de seguridad del principio: corte el agua donde se abra una pieza, mire antes de meter la mano. Inspección, ajuste y reparación van con lo que piden las plantas: acolchado, malas hierbas y raíces lejos de emisores y goteros.',
    log: 'Registro de mantenimiento preventivo, para rellenar',
    logAt: (section: string) => `Su registro está en «${section}».`,
    logColumns: ['Fecha', 'Tarea', 'Encontrado', 'Hecho', 'Tiempo', 'Por'],
    inspection: 'Inspección mensual'
  },
  visits: {
    service: 'Registro de servicio, para rellenar',
    serviceColumns: [
      'Pieza, serie, lugar',
      'Aviso',
      'Avería',
      'Personas',
      'Instrucciones',
      'Material',
      'Comienzo',
      'Fin'
    ],
    programs: 'Registro de programas: cada cambio de un programa, comunicado enseguida al propietario',
    programColumns: ['Fecha', 'Programador', 'Programa', 'De', 'A', 'Por qué', 'Comunicado a', 'Por'],
    stay: (from: string, to: string) => `de ${from} a ${to}`,
    photographs: 'Fotografías de las visitas',
    photographColumns: { date: 'Fecha', shows: 'Muestra', file: 'Archivo' },
    photographsShown: (shown: number, all: number) =>
      `Abajo se ven las ${shown} más recientes de ${all}; todas están en la carpeta photos del emplazamiento.`,
    photographOf: (day: string) => `Fotografía de la visita del ${day}`
  },
  spares: {
    share:
      'Proporción acordada de emisores de repuesto: 10 % de los instalados, de cada modelo, salvo que el contrato diga otra cosa.',
    keys: 'Llaves'
  },
  warranty: {
    item: 'Elemento',
    model: 'Modelo',
    serial: 'Número de serie',
    where: 'Dónde',
    maker: 'Fabricante o proveedor',
    spareParts: 'Repuestos de',
    certificate: 'Certificado',
    term: 'Inicio y fin',
    span: (from: string, to: string) => `del ${from} al ${to}`,
    terms: 'Condiciones',
    upkeep: 'Mantenimiento que la conserva en vigor',
    manual: 'Instrucciones de uso',
    contact: 'A quién llamar',
    response: 'Tiempo de respuesta',
    inspections: 'Inspecciones de garantía',
    inspection: (day: string, after: string) => `${day} (${after})`,
    tagged: 'Tarjeta de garantía en el equipo',
    repairs: 'Garantía de las reparaciones',
    note: 'Haga lo que conserva una garantía en vigor y anótelo en las visitas: sin el registro puede caducar.'
  },
  training: {
    reviewer: 'Presenciada, y leída la carpeta, por el propietario, por',
    walk: 'Recorrido final con el propietario'
  },
  tests: {
    independent: 'Independiente',
    meter: 'Instrumento',
    baseline: 'Lecturas de cables y bobinas en la recepción',
    baselineColumns: ['Estación', 'Fecha', 'Bobina', 'Bucle', 'Temperatura', 'Por'],
    hint: 'Quien audita no proyectó ni instaló el sistema. Ensayo con pluviómetros: 24 recipientes o más, viento máximo de 5 mph (2.2 m/s).',
    pointPressure: 'Presión estática en el punto de conexión',
    emitterPressure: 'Presión en las válvulas mientras riega cada zona'
  },
  signOffs: {
    statement: 'Declaración del instalador',
    statementText:
      'He ensayado este sistema, lo he ajustado y lo he encontrado instalado como muestra el plano de obra ejecutada y como piden las normas que nombra esta carpeta.',
    refusal: 'Rechazado el (día y hora), y por qué',
    original:
      'El propietario guarda el original firmado, el instalador una copia; copias del certificado van al suministrador del agua y al propietario.',
    keys: 'Las llaves codificadas no se copian; todas las llaves se devuelven al terminar el contrato.'
  },
  photographs: { wanted: 'Lo que se muestra' },
  binderSet: {
    lead: 'Cómo se compone esta carpeta en papel y como archivos. Está escrita para quienes se ocupan del agua: corta, completa, con las palabras que figuran en matrículas, etiquetas y planos.',
    paper: 'En papel',
    cover: 'Portada',
    spine: 'Lomo',
    spineText: (title: string, year: string, volume: string) => `${title} · riego · ${year} · ${volume}`,
    volume: 'Tomo',
    volumeText: '1 de 1',
    contract: 'Contrato',
    kind: 'Archivador',
    kindText: (paper: string) =>
      `resistente, de tres anillas, ${paper}, lomo de 3 in (75 mm) como máximo, bolsillos para hojas sueltas`,
    tabs: 'Separadores',
    tabColumns: ['Separador', 'Apartados'],
    files: 'Como archivos',
    manual: 'Esta carpeta',
    drawings: 'Planos de obra ejecutada',
    markUps: 'Anotaciones',
    geodata: 'Posiciones para un mapa',
    data: 'Datos para otros programas',
    dataText: 'JSON del emplazamiento, CSV de cables y zonas, calendario de vencimientos, GeoJSON de las arquetas',
    page: 'Páginas de arqueta',
    pageText: 'legibles a 320 px de ancho, contraste de 7 a 1, botones de 44 px, sin script',
    organization: 'Orden',
    manualText: 'PDF con marcadores, impreso con este juego',
    organizationText:
      'por apartados, con marcadores, páginas numeradas, un índice y la lista de lo que no se ha facilitado',
    tabNames: {
      safety: 'Seguridad y contactos',
      system: 'El sistema',
      water: 'Agua y programas',
      upkeep: 'Mantenimiento',
      closeout: 'Recepción',
      back: 'Firmas, cifras, índice'
    }
  },
  package: {
    openItems: 'Lo que estaba pendiente el día de la entrega',
    lead: (site: string, on: string) =>
      `${site}, el ${on}. Se enumera lo que estaba pendiente ese día; ambas partes lo firman.`,
    none: 'No había nada pendiente.',
    sign: 'Firmado',
    signatures: ['Instalador', 'Propietario o representante', 'Responsable de mantenimiento'],
    line: (role: string) => `${role}: ______________________________  Fecha: ______________`,
    missing: 'Lo que no se ha facilitado',
    refused: (site: string, count: number) =>
      `${site} no se entrega: ${count === 1 ? 'queda un error' : `quedan ${count} errores`} sin resolver.`,
    refusedFix: 'Corríjalos o entregue con --as-is, que los enumera dentro.',
    written: (path: string, files: number) => `Escrito: ${path} (${files} archivos).`,
    pages: 'Páginas, sin red',
    pagesNote: 'el emplazamiento, sus arquetas, lo que vence',
    handedOver: (on: string) =>
      `Entregado el ${on}. Todo se abre desde esta carpeta; README.txt dice dónde está cada cosa.`,
    count: (count: number) => (count === 0 ? 'nada' : count === 1 ? 'un punto' : `${count} puntos`),
    readme: (title: string, on: string, site: string) =>
      [
        `${title}, entregado el ${on}`,
        '',
        'index.html            por dónde empezar, sin red',
        'print/                la carpeta y las etiquetas de tapa en PDF',
        `office/${site}/  páginas, adjuntos y fotografías`,
        'public/               las páginas de los códigos',
        'data/                 archivo del emplazamiento, visitas, JSON, CSV de cables y zonas, lugares de las arquetas',
        'open-items.txt        lo que estaba pendiente ese día, para firmar',
        '',
        'Para ver que no se cambió nada: sha256sum -c MANIFEST-SHA256.txt',
        'En Windows, un archivo: certutil -hashfile ARCHIVO SHA256, y compárelo con su línea allí',
        ''
      ].join('\n')
  }
} as const
