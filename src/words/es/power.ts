/** Words of the battery section: life, visits, panels, cells, and what to do at a change. */
export const powerWords = {
  visits: {
    'start-up': 'visita de inicio de temporada',
    'season-end': 'visita de fin de temporada',
    task: (name: string) => name,
    next: 'próxima visita',
    own: 'una visita propia'
  },
  visitOn: (visit: string, on: string) => `${visit}, ${on}`,
  because: {
    'last before due': 'la última visita ordinaria antes de que venza',
    'none before due': 'no queda ninguna visita ordinaria antes de que venza',
    overdue: 'está vencida',
    'no date': 'nadie anotó cuándo se montó'
  },
  due: {
    by: {
      interval: (span: string, fitted: string, isStated: boolean) =>
        `${span} después del ${fitted}${isStated ? '' : ', al no indicarse ningún plazo (regla de este proyecto)'}`,
      span: (months: number, days: number) =>
        [counted(months, 'mes', 'meses'), counted(days, 'día', 'días')].filter(Boolean).join(' y ') || '0 días',
      life: (days: number, fitted: string) => `duración calculada de ${days} días después del ${fitted}`,
      dateCode: (day: string) => `código de fecha de las pilas, ${day}`
    },
    doAt: 'Cambiar en',
    whatAt: (what: string, visit: string) => `${what} (cambiar en: ${visit})`,
    note: 'La temporada nunca fija un vencimiento. La visita es la última ordinaria anterior a él: el primer o el último día de la temporada, o una tarea del plan de mantenimiento.'
  },
  life: {
    heading: 'Cuánto dura un juego',
    lead: 'El vencimiento es el primero de estos días. El consumo y los impulsos vienen de la ficha técnica, y su número de los programas tal como corren durante el año; el frío no se tiene por ventaja.',
    controllers: 'Programadores',
    counted: 'Carga con que se cuenta',
    standing: 'Consumo permanente',
    pulses: 'Impulsos',
    pulsesDrawn: 'Consumo de los impulsos',
    lost: 'Autodescarga',
    perYear: 'mAh al año',
    inYear: 'al año',
    byCharge: 'La carga dura hasta',
    byPulses: 'Impulsos indicados, hasta',
    byInterval: 'Plazo, hasta',
    dateCode: 'Código de fecha',
    due: 'Vence por',
    notStated: 'la ficha no indica ni consumo ni impulso',
    beyond: 'más de 20 años',
    capacityNotes: {
      sheet: 'Capacidad de la ficha técnica',
      table: 'Capacidad típica del tipo'
    },
    charge: (capacity: string, usable: string, cold: string | undefined) =>
      `${capacity} × ${usable}${cold === undefined ? '' : ` × ${cold}`}`,
    temperature: (mean: string) => `Temperatura media del año: ${mean}. El calor aumenta la autodescarga.`,
    temperatureNotKnown:
      'No se conoce la temperatura del lugar: la autodescarga es la de 25 °C y ningún mes cuenta como frío.',
    cold: (ids: string, month: string, mean: string, share: string) =>
      `${ids}: en ${month.toLowerCase()}, con una media de ${mean}, se cuenta con ${share} de la carga.`,
    usual:
      'Donde una ficha no lo dice, se cuenta con el 70 % de la capacidad y se pierde un 3 % al año (práctica común, sin fuente).'
  },
  year: {
    title: (ids: string) => `El año de la batería: ${ids}`,
    alt: (ids: string, fitted: string, due: string, pulses: string, visit: string | undefined) =>
      `${ids}: montada ${fitted}, vence ${due}, ${pulses} impulsos entre medias${visit === undefined ? '' : `, cambiar en: ${visit}`}.`,
    unit: 'impulsos al mes',
    season: 'temporada de riego',
    fitted: (on: string) => `montada ${on}`,
    due: (on: string) => `vence ${on}`,
    today: 'fecha de los datos',
    visit: (visit: string, on: string) => `${visit} ${on}`,
    dateCode: (on: string) => `código de fecha ${on}`,
    caption: (ids: string, because: string, code: string | undefined) =>
      `${ids}: vence por lo siguiente: ${because}.${code === undefined ? '' : ` Código de fecha de las pilas: ${code}.`} Los meses de los extremos se cuentan en parte.`
  },
  pulses: {
    caption: 'Impulsos de cada mes, según corren los programas durante el año',
    year: 'Año',
    note: 'Dos por apertura, y dos más en cada inicio por una válvula maestra y por un relé de bomba.'
  },
  solar: {
    heading: 'Paneles solares, mes a mes',
    caption: (ids: string) => `${ids}: lo que da el panel frente a lo que se consume, en un día medio`,
    month: 'Mes',
    light: 'Luz en el panel',
    lightUnit: 'MJ/m²',
    gives: 'Da',
    drawn: 'Consume',
    unit: 'mAh al día',
    verdict: '¿Es bastante?',
    verdicts: { enough: 'BASTA', 'in doubt': 'DUDOSO', 'too little': 'NO BASTA' },
    by: {
      measured: 'radiación medida',
      sunshine: 'insolación del lugar',
      overcast: 'todos los días cubiertos'
    },
    stands: (tilt: string, shade: string) => `El panel se cuenta ${tilt}, con ${shade}.`,
    flat: 'en horizontal',
    tilted: (degrees: string) => `inclinado ${degrees}°`,
    shadeLost: (share: string) => `${share} de la luz perdida por sombra`,
    shadeNotStated: 'ninguna sombra, ya que no se indica',
    basis: (by: string) => `Luz según: ${by}.`,
    autonomy: (days: string, stated: string | undefined) =>
      `Una pila llena dura ${days} días sin luz en el mes de mayor consumo${stated === undefined ? '' : `; la ficha dice ${stated}`}.`,
    autonomyAbsent: (why: string) => `Días sin luz: sin calcular, ${why}.`,
    absent: (ids: string, why: string) => `${ids}: sin calcular, ${why}.`,
    note: 'Dudoso significa menos del doble de lo que se consume; no basta, menos de lo que se consume (reglas de este proyecto). La suciedad, las hojas y un seto que crece quitan más.'
  },
  cells: {
    heading: 'Pilas que se usan aquí',
    kind: 'Tipo',
    controllers: 'Programadores',
    volts: 'Nueva, en reposo',
    change: 'Cambiar por debajo de, en carga',
    cold: 'Con frío',
    shelf: 'Dura almacenada',
    below: (volts: string) => `${volts}`,
    memory: 'de memoria',
    coldSheet: (at: string, share: string) => `${share} a ${at}`,
    coldRule: 'la mitad por debajo de 0 °C',
    coldNotKnown: 'no se sabe; mejor que la alcalina',
    shelfText: { alkaline: 'unos 5 años', lithium: '10 años o más', zinc: '2 a 3 años' },
    notes: [
      'Una pila gastada se recupera en reposo: juzgue un juego por sus voltios en carga, nunca en reposo.',
      'La mitad por debajo de 0 °C es una regla de este proyecto; la duración en almacén es práctica común, sin fuente. El código de fecha va antes que las dos.',
      'Las pilas alcalinas pierden líquido cuando están gastadas, mezcladas o en un programador parado. Quítelas para el invierno si no corre nada.',
      'Las pilas recargables se descargan solas mucho más y son para programadores con panel. No las ponga en lugar de otras.'
    ]
  },
  change: {
    heading: 'Al cambiar las pilas',
    open: 'Vea que ninguna válvula esté abierta. Cierre una abierta desde el programador o a mano.',
    settings: 'Tenga a mano la ficha de programa antes de quitar las pilas viejas.',
    whole: 'Cambie el juego entero a la vez: un tipo, una marca, compradas juntas, más y menos según las marcas.',
    memory: {
      yes: (ids: string) =>
        `${ids}: los programas se conservan sin pilas. Vea que así sea y ponga en hora el reloj si se ha desviado.`,
      no: (ids: string) =>
        `${ids}: los programas se pierden sin pilas. Ponga reloj y fecha, y después introduzca la ficha de programa.`,
      time: (ids: string, time: string) =>
        `${ids}: los programas se conservan ${time} sin pilas. Tenga las nuevas fuera del envase; si tardó más, ponga reloj y fecha e introduzca la ficha de programa.`,
      unknown: (ids: string) =>
        `${ids}: la ficha no dice si los programas se conservan. Compárelos después con la ficha de programa y ponga en hora el reloj.`
    },
    afterLoss: (title: string, how: string) => `${title}, cuando se han perdido reloj y programa: ${how}`,
    low: {
      closes: (ids: string) =>
        `${ids}: según su ficha cierra las válvulas antes de que se agoten las pilas. No confíe en ello.`,
      'stays as it is': (ids: string) =>
        `${ids}: según su ficha, una válvula abierta queda abierta cuando se agotan las pilas.`,
      unknown: (ids: string) =>
        `${ids}: la ficha no dice qué hace con una válvula abierta cuando se agotan las pilas. Cuente con que queda abierta.`
    },
    measure: 'Mida el juego nuevo en carga y anótelo en el registro, con el código de fecha.',
    valves: 'Abra y cierre cada válvula una vez y mírelas todas.',
    away: 'Llévese las pilas gastadas el mismo día.'
  },
  disposal: 'Adónde van las pilas gastadas'
}

function counted(count: number, one: string, many: string): string {
  return count === 0 ? '' : `${count} ${count === 1 ? one : many}`
}
