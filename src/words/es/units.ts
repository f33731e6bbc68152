/** Words of what a unit is and how a person handles it: how it is set, locks, sensors, pumps, lost memory, keys. */
export const unitWords = {
  panel: (cell: string) => `panel solar${cell ? `, que carga ${cell}` : ''}`,
  setBy: 'Se ajusta con',
  keys: 'teclas en su frente',
  radio: (range: string) => `radio, desde un teléfono${range ? `, a menos de ${range}` : ''}`,
  stand: 'Dónde ponerse',
  standNotWritten: 'sin anotar: póngase fuera de la calzada, con la tapa cerrada',
  mounting: 'Montaje',
  lock: 'Cierre',
  lockAndKey: (lock: string, keys: string) =>
    keys ? `${lock}; llave ${keys}` : `${lock}; ninguna llave en el registro`,
  days: 'Días que se pueden fijar',
  dayRules: {
    weekdays: 'días de la semana',
    'every N days': 'cada tantos días',
    odd: 'fechas impares',
    even: 'fechas pares'
  },
  notOnIt: 'No tiene ajuste para',
  noPercent: 'porcentajes por mes: se introducen los minutos de cada mes',
  noCycles: 'ciclos con pausa: en su lugar, varios inicios',
  drift: 'El reloj puede desviarse',
  driftText: (amount: string, set: string) => `${amount} al mes${set ? `; se pone en hora cada ${set}` : ''}`,
  startsADay: 'Inicios al día, como máximo',
  delayFor: 'El retardo es por',
  pump: 'Arranque de bomba',
  pumpText: (relay: string) =>
    `${relay || 'relé sin describir'}. TENSIÓN DE RED después del relé: solo un electricista autorizado`,
  coils: 'Bobinas',
  twoLeads: 'dos hilos: se invierten para cerrar',
  threeLeads: 'tres hilos: común, abrir, cerrar; nunca se invierten',
  suspend: 'Para suspenderlo unos días',
  suspendText: (days: string, set: string, shows: string) =>
    [days && `hasta ${days} días`, set, shows && `muestra ${shows}`].filter(Boolean).join('; '),
  memory: 'Si se han perdido reloj y programa',
  sensor: (id: string, kind: string) => `Sensor ${id}, ${kind}`,
  wired: {
    'in the common': 'en el común: detiene todas las estaciones',
    'own terminals': 'en bornes propios',
    'by radio': 'por radio'
  },
  normally: { closed: 'normalmente cerrado', open: 'normalmente abierto' },
  contact: 'Contacto',
  wiredHead: 'Conexión',
  bypass: 'Para anularlo en una prueba',
  register: 'Registro de llaves',
  keyMark: 'Marca',
  kind: 'Tipo',
  opens: 'Abre',
  count: 'Cantidad',
  heldBy: 'La tiene',
  keyNote: 'Dónde cuelgan las llaves de reserva, y las claves, figura solo en la hoja reservada.',
  lid: 'Tapa, cierre, montaje',
  retrofit: 'Válvulas hechas para corriente alterna que llevan bobinas de enclavamiento',
  was: 'Era',
  adapter: 'Adaptador',
  swapped: 'Cambiada',
  checked: 'Vista abrir y cerrar',
  retrofitNote:
    'Un repuesto para estas debe coincidir en rosca, émbolo y adaptador con lo escrito. Las bobinas de CA viejas no van con los repuestos.',
  none: '–',
  toClose: 'para cerrar',
  trend: {
    closing: (station: string) => `${station} para cerrar`,
    caption: 'Lecturas a lo largo de las visitas',
    loopAt: 'Bucle',
    coilAt: 'Bobina',
    at20: 'A 20 °C',
    change: 'Cambio',
    temperature: 'Temp.',
    first: 'primera',
    percent: (text: string) => `${text} %`,
    note: (cold: string, coldPercent: string, warm: string, warmPercent: string) =>
      `Cambio: frente a la primera lectura; las dos llevadas a 20 °C donde constan ambas temperaturas, si no tal como están. El cobre a ${cold} marca ${coldPercent} % frente a 20 °C, a ${warm} ${warmPercent} %.`,
    base: 'Los bucles y las lecturas esperadas son a 20 °C. Calibres AWG: fórmula y cobre IACS del 100 %; secciones IEC: lo más que admite IEC 60228; AWG de conductores cableados: NEC capítulo 9, tabla 8, llevado de 75 a 20 °C.'
  },
  line: {
    radio: (controller: string, range: string, stand: string) =>
      `${controller} se ajusta con el teléfono${range ? `, a menos de ${range}` : ''}. Póngase: ${stand}.`,
    sensor: (id: string, kind: string, wired: string) => `${id} (${kind}) está ${wired}.`,
    wiringUnknown: (id: string, kind: string) => `${id} (${kind}): nadie anotó cómo está conectado.`,
    stops: (id: string, kind: string, controller: string) =>
      `${id} (${kind}): mientras su contacto está abierto, no riega ninguna estación de ${controller} aunque corra el programa.`,
    bypass: (text: string) => `Para una prueba: ${text}`,
    memory: (controller: string, text: string) => `${controller}, perdidos reloj y programa: ${text}`,
    held: (controller: string, set: string, shows: string) =>
      `${controller}, suspendido unos días${shows ? `: muestra ${shows}` : ''}${set ? `. Se fija con: ${set}` : ''}.`,
    pump: (controller: string, relay: string) =>
      `${controller} arranca una bomba (${relay || 'relé sin describir'}): oiga el clic del relé y el arranque de la bomba. TENSIÓN DE RED después del relé: solo un electricista autorizado.`,
    delay: (controller: string, delay: string, reason: string) =>
      `${controller} espera ${delay} entre estaciones: ${reason}. No es una avería.`,
    toClose: (station: string) => `${station} para cerrar`,
    halves: (names: string) =>
      `${names}: tres hilos. Mida del común a abrir y después del común a cerrar, y compare cada lectura con su margen.`
  }
}
