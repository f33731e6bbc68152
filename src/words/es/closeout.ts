/** Words of what is handed over when the work is done. */
export const closeoutWords = {
  sections: {
    dates: 'Fechas de la obra',
    drawings: 'Plano de obra ejecutada y fichas',
    tests: 'Informes de ensayo',
    training: 'Registro de formación',
    spares: 'Repuestos y herramientas',
    signOffs: 'Firmas',
    photographs: 'Fotografías'
  },
  attachments: {
    caption: (title: string, file: string, page: number, pages: number) =>
      pages === 1 ? `${title} (${file})` : `${title} (${file}, página ${page} de ${pages})`,
    notThere: (title: string, file: string) => `${title}: ${file} no está o no se puede leer`
  },
  yes: 'sí',
  no: 'no',
  dates: {
    workStart: 'Comienzo de la obra',
    substantialCompletion: 'Utilizable desde',
    acceptance: 'Recibida por el propietario',
    maintenance: 'Mantenida por el contratista',
    maintenanceSpan: (from: string, to: string) => `del ${from} al ${to}`,
    agreement: 'Entregada mediante',
    unfinished: 'Por hacer el día de la recepción',
    nothingUnfinished: 'No se anotó nada por hacer.',
    item: 'Elemento',
    value: 'Importe',
    reason: 'Motivo',
    owner: 'Quién lo hace',
    by: 'Hasta'
  },
  drawings: {
    lead: 'El plano de obra ejecutada muestra lo que se instaló, no lo que se proyectó. Quien modifica la instalación modifica el plano.',
    sheets: 'Planos firmados del instalador',
    number: 'Plano',
    title: 'Muestra',
    dated: 'Fecha',
    revision: 'Revisión',
    scale: 'Escala',
    signedBy: 'Firmado por',
    tolerance: 'Posiciones con un margen de',
    transmittal: 'Enviado con',
    copies: 'Copias',
    attached: 'Encuadernado',
    charts: 'Fichas de programador',
    chartCopies: 'Copias de cada una',
    chartFixed: 'Fijada',
    chartMaterial: 'Protegida de la humedad con',
    chartApproved: 'Aprobada por el propietario'
  },
  tests: {
    lead: 'Qué se ensayó antes de la recepción, quién lo hizo y qué resultó.',
    kind: 'Ensayo',
    on: 'Fecha',
    of: 'De',
    by: 'Por',
    witness: 'Testigo',
    conditions: 'Mantenido o en marcha',
    result: 'Resultado',
    passed: 'Superado',
    failed: 'no superado',
    kinds: {
      pressure: 'Ensayo de presión',
      flush: 'Purga',
      coverage: 'Cobertura',
      'start-up pressures': 'Presiones de puesta en marcha',
      backflow: 'Dispositivo antirreflujo',
      audit: 'Auditoría de riego',
      'catch cans': 'Ensayo con pluviómetros',
      'wire and coil': 'Lecturas de cables y bobinas',
      inspection: 'Inspección'
    },
    pressureSheet: 'Ensayo de presión, para rellenar',
    pressureColumns: [
      'Fecha',
      'Tubería',
      'Presión inicial',
      'Hora',
      'Presión final',
      'Hora',
      'Ensayado por',
      'Testigo'
    ],
    readingSheet: 'Lecturas de cables y bobinas, para rellenar',
    readingColumns: ['Fecha', 'Estación', 'En el programador', 'En la válvula', 'Temperatura', 'Multímetro', 'Por'],
    inspectionSheet: 'Registro de inspecciones, para rellenar',
    inspectionColumns: ['Fecha', 'Qué se inspeccionó', 'Resultado', 'Firma']
  },
  training: {
    lead: 'A quienes se hacen cargo se les enseñó a cortar el agua, abrir una arqueta, leer una bobina, cambiar una batería e introducir un programa, y por qué el calendario de riego cambia a lo largo del año.',
    on: 'Fecha',
    trainer: 'Impartida por',
    place: 'Lugar',
    duration: 'Duración',
    attendees: 'Asistentes',
    topics: 'Temas',
    signed: 'Firmado',
    sheet: 'Formación, para rellenar',
    sheetColumns: ['Fecha', 'Nombre', 'Empresa', 'Temas', 'Formador', 'Firma']
  },
  spares: {
    lead: 'Para reparar se usa la pieza que se instaló, otra equivalente o una que gaste menos agua.',
    parts: 'Repuestos',
    tools: 'Herramientas',
    item: 'Elemento',
    count: 'Entregados',
    installed: 'Instalados',
    share: 'Proporción',
    source: 'Más en',
    receivedBy: 'Recibido por',
    on: 'Fecha',
    receipt: 'Recibo de piezas, herramientas y llaves, para rellenar',
    receiptColumns: ['Fecha', 'Elemento', 'Cantidad', 'Recibido por', 'Firma', 'Devuelto el']
  },
  signOffs: {
    kind: 'Qué',
    by: 'Firmado por',
    role: 'En nombre de',
    on: 'Fecha',
    copies: 'Copias a',
    words: 'En palabras de la autoridad',
    refused: (when: string) => `RECHAZADO: ${when}`,
    kinds: {
      'walk-through': 'Recorrido final',
      'maintenance checklist': 'Lista de mantenimiento',
      "installer's statement": 'Declaración del instalador',
      'certificate of completion': 'Certificado de fin de obra',
      'record drawing approval': 'Aprobación del plano de obra ejecutada',
      'receipt of spares and keys': 'Recibo de repuestos y llaves'
    }
  },
  photographs: {
    ofBoxes: (section: string) => `Las fotografías de las arquetas están en «${section}».`,
    kind: 'Muestra',
    of: 'De',
    caption: 'Qué se ve',
    taken: 'Tomada',
    kinds: {
      'box open': 'Arqueta, con la tapa abierta',
      'open trench': 'Zanja antes de tapar',
      splice: 'Empalme',
      'shut-off': 'Llave de corte',
      meter: 'Contador',
      'zone running': 'Zona en marcha',
      completion: 'Obra acabada'
    }
  }
}
