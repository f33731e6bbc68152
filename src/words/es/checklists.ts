/** Words of the lists that are ticked off through the year, of the glossary and of the index. */
export const checklistWords = {
  section: 'Listas de comprobación por temporada',
  glossary: 'Glosario',
  index: 'Índice de arquetas, zonas y piezas',
  indexPlaces: (most: number) => `Cada nombre con las páginas en que figura, desde el principio, ${most} como máximo.`,
  lead: 'Copie la lista, marque cada línea cuando esté hecha, anote al lado lo que no esté en orden y guarde la copia detrás de las visitas.',
  by: ['Fecha', 'Llegada', 'Salida', 'Por', 'Empresa', 'Firma'],
  runs: 'Cada estación, accionada a mano o con el programador',
  runColumns: {
    station: 'Estación',
    waters: 'Riega',
    opened: 'Abrió',
    closed: 'Cerró del todo',
    flow: 'Caudal',
    pressure: 'Presión',
    ohms: 'Lectura',
    remark: 'Observación'
  },
  expected: (text: string) => `(${text})`,
  /** What is done before any other step, by the place. */
  first: {
    cautions: 'Lea las indicaciones de seguridad del principio de esta carpeta.',
    traffic:
      'Haga colocar las señales y los conos por personal formado, según el plan de señalización, antes de que nadie pise la calzada.',
    edge: 'Póngase la protección anticaídas antes de acercarse al borde y siga enganchado al punto de anclaje.',
    look: 'Mire antes de meter la mano en una arqueta: levante la tapa con una herramienta, use guantes, retire nidos, tierra y puntas cortantes.'
  },
  startUp: {
    title: (from: string | undefined) =>
      from === undefined ? 'Inicio de temporada' : `Inicio de temporada, antes del ${from}`,
    drains: 'Cierre todos los desagües y grifos de ensayo.',
    slow: (shutOff: string | undefined) =>
      `Abra despacio la llave de corte, primero un cuarto de vuelta, y deje salir el aire por el extremo${shutOff === undefined ? '' : ` (${shutOff})`}.`,
    still:
      'Con todas las válvulas cerradas, lea el contador dos veces con diez minutos de diferencia. Debe estar parado. Lecturas: ________ y ________',
    backflow: (due: string | undefined) =>
      due === undefined
        ? 'Haga ensayar el dispositivo antirreflujo por un técnico certificado donde la autoridad lo exija.'
        : `Dispositivo antirreflujo: el próximo ensayo vence el ${due}, por un técnico certificado.`,
    batteries: (list: string) =>
      `Ponga pilas nuevas donde toque: ${list}. Escriba el día en las pilas y en el registro de baterías.`,
    clock:
      'Ponga en hora cada programador, con su fecha, y compare su programa con la ficha de programa. Encontrado: ________ Dejado: ________',
    sensors: 'Dispare cada sensor y vea que el riego se detiene; déjelo como estaba.',
    filters: 'Limpie los filtros y purgue cada línea de goteo por su extremo hasta que el agua salga limpia.',
    run: 'Haga funcionar cada estación y rellene la tabla: abre, fugas, emisores obstruidos o girados, riego sobre pavimento, cierra del todo.'
  },
  monthly: {
    title: 'Cada mes de la temporada',
    walk: 'Recorra cada zona mientras riega y marque fugas, emisores rotos o ausentes y goteros obstruidos.',
    percent:
      'Ajuste los tiempos de riego del mes según el calendario de esta carpeta. Anterior: ________ Nuevo: ________',
    meter: 'Lea el contador: ________ Compárelo con el presupuesto.',
    plants: 'Acolchado, malas hierbas y plantas: nada tapa un emisor, está sobre una arqueta ni da sombra a un panel.',
    soil: 'Cave hasta la profundidad radicular en el punto más seco y en el más húmedo: ¿seco, bien o encharcado? ________',
    report:
      'Informe al propietario: emplazamiento, programador, programa, horas de inicio y tiempos de riego, qué necesita reparación.'
  },
  close: {
    title: 'Fin de temporada',
    by: (day: string) => `Fin de temporada, antes del ${day}`,
    off: 'Corte el agua y alivie la presión abriendo a mano una válvula, despacio.',
    drain: 'Abra todos los desagües, el más bajo el último, y déjelos abiertos.',
    air: (limit: string | undefined) =>
      limit === undefined
        ? 'Sople una zona cada vez, nunca por encima de lo que admite la pieza más débil, y pare cuando salga seco.'
        : `Sople una zona cada vez a no más de ${limit} y pare cuando salga seco.`,
    none: 'Las tuberías quedan llenas aquí: no se esperan heladas. Mire de todos modos la previsión.',
    valves: 'No deje ninguna válvula abierta: dé a cada una el impulso de cierre y vea que está cerrada.',
    controller:
      'Apague cada programador. Quite las pilas donde puedan derramarse o helarse y deje la ficha de programa en la arqueta.',
    backflow: 'Vacíe el dispositivo antirreflujo y deje sus grifos a medio abrir.',
    meter: 'Lea el contador: ________',
    lids: 'Cierre y sujete todas las tapas.'
  },
  audit: {
    title: 'Una vez al año',
    pressure: 'Presión sin nada en marcha: ________ Presión en el último emisor con la zona en marcha: ________',
    cans: 'Ensayo con pluviómetros en cada zona de aspersión: 24 recipientes o más, viento máximo de 5 mph (2.2 m/s), anotado cada cinco minutos.',
    ohms: 'Lea cada bobina y cada bucle, con la temperatura, y compárelos con las lecturas de la recepción.',
    drawing: 'Compare el plano de obra ejecutada con lo que hay y corríjalo.',
    lids: 'Matrículas, etiquetas y tapas: legibles, enteras, a ras del suelo.'
  },
  roof: {
    title: 'Cubierta, en cada visita',
    drains: 'Los sumideros y rebosaderos están limpios y desaguan.',
    damp: 'Sin humedad bajo la cubierta, sin agua estancada sobre ella.',
    lines: 'Tuberías y fijaciones están enteras; nada corta la membrana.',
    action: 'No está en orden: ________ Por hacer: ________ Hecho el: ________'
  },
  terms: [
    [
      'Agotamiento permisible',
      'Parte del agua disponible que las plantas pueden usar antes de que se las riegue de nuevo.'
    ],
    ['Bobina', 'Devanado que mueve el émbolo de una válvula.'],
    ['Ciclos con pausa', 'Riego partido en tramos con descansos, para que el suelo absorba el agua.'],
    ['Dispositivo antirreflujo', 'Impide que el agua de riego vuelva al agua potable.'],
    [
      'Enclavamiento (latching) de CC',
      'Bobina que necesita un impulso corto para abrir y otro de polaridad contraria para cerrar, y entre tanto se sostiene con un imán.'
    ],
    ['Evapotranspiración de referencia', 'Agua que usaría un campo de hierba verde y corta según el tiempo que hace.'],
    ['Hilo común', 'Hilo que las bobinas de un programador comparten en la vuelta.'],
    ['Horario de riego permitido', 'Horas en que se permite regar.'],
    ['Matrícula', 'Código permanente de una arqueta. Nunca se da a otra.'],
    ['Página de la arqueta', 'Página que abre el código que está bajo la tapa.'],
    ['Porcentaje mensual', 'Parte de los tiempos de riego fijados que da un programador en un mes.'],
    ['Profundidad radicular', 'Hasta dónde toman agua las raíces.'],
    ['Punto de conexión', 'Donde el riego toma su agua.'],
    ['Resistencia de bucle', 'Los dos hilos de un tendido, ida y vuelta, sin la bobina.'],
    ['Tasa de aplicación', 'Lámina de agua aportada en un tiempo, en mm/h o in/h.'],
    ['Uniformidad de distribución', 'Lo parejo que cae el agua: el cuarto más seco frente a la media.']
  ] as readonly (readonly [string, string])[],
  kinds: {
    box: 'arqueta',
    controller: 'programador',
    station: 'estación',
    zone: 'zona',
    supply: 'toma de agua',
    sensor: 'sensor',
    masterValve: 'válvula maestra',
    part: 'pieza'
  }
}
