/** Words of the totals and next runs of the schedule section, and of watering rules in plain words. */
export const totalsWords = {
  totals: 'Totales del año',
  totalsNote:
    'Sumas de las estaciones de arriba. Las aperturas se cuentan en el calendario del año. La lámina es el agua sobre todas las superficies juntas.',
  what: 'Qué',
  kinds: {
    station: 'Estación',
    program: 'Programa',
    controller: 'Programador',
    supply: 'Toma de agua',
    site: 'Todo el emplazamiento'
  },
  openings: 'Aperturas',
  minutes: 'Minutos',
  volume: 'Agua',
  depth: 'Lámina',
  atLeast: (text: string) => `${text} o más`,
  flowNotStated: (ids: string) => `No está en el agua, ya que no se indica el caudal: ${ids}.`,
  next: 'Próximos riegos',
  nextNote: (on: string) => `Por el reloj de cada programador, desde la mañana del ${on}, si nadie cambia nada.`,
  station: 'Estación',
  waters: 'Riega',
  run: (index: number) => `${index}.º`,
  runText: (date: string, time: string, minutes: string) => `${date} ${time}, ${minutes}`,
  sensor: 'Un sensor puede pararlo',
  suspended: 'Suspendido',
  controller: 'Programador',
  program: 'Programa',
  allPrograms: 'todos',
  from: 'Primer día',
  to: 'Último día',
  why: 'Por qué',
  acts: {
    'stops all': 'detiene todas las estaciones de su programador',
    'stops its stations': 'detiene sus estaciones',
    'only reports': 'solo informa'
  },
  actsByKind: { true: 'retiene el riego, por su tipo', false: 'solo informa, por su tipo' },
  couldStop: (openings: number, minutes: string) => `; podría detener ${openings} aperturas, ${minutes}, del año`,
  sensorText: (sensor: string, kind: string, does: string, could: string) => `${sensor} (${kind}) ${does}${could}.`,
  rule: {
    daysByAddress: (days: string, number: number | 'none') =>
      number === 'none' ? `${days}, para lugares sin número de calle` : `${days}, para el número ${number}`,
    group: (digits: string, days: string) => `números que acaban en ${digits}: ${days}`,
    groupNone: (days: string) => `sin número de calle: ${days}`,
    holds: 'La norma rige',
    dates: (from: string, to: string) => `del ${from} al ${to}`,
    when: {
      'daylight-saving': 'mientras rige el horario de verano',
      standard: 'mientras rige el horario de invierno'
    },
    cap: 'Máximo en un día',
    capText: (most: string) => `${most} por estación`,
    except: 'Exento',
    afterRain: 'Después de llover',
    afterRainText: (time: string) =>
      `sin riego en las ${time} siguientes a la lluvia; los programadores no pueden saberlo`
  }
}
