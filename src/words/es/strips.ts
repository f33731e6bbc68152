/** Words of the watering day and the watering week. */
export const stripWords = {
  title: 'Día y semana de riego',
  dayTitle: (name: string, date: string) => `Día de riego, ${name}, ${date}`,
  dayParts: {
    lead: (controllers: string, date: string) =>
      `La noche más cargada del año para ${controllers}: de mediodía de ${date} a mediodía, por la hora legal.`,
    hours: 'Rayado detrás de las franjas: las horas permitidas.',
    noRule: 'No consta ninguna norma de riego.',
    load: 'Debajo: lo que se consume.'
  },
  weekTitle: (name: string) => `Semana de riego, ${name}`,
  weekParts: {
    lead: (controllers: string) => `La semana de esa noche para ${controllers}. Cada fila va de mediodía a mediodía.`,
    load: 'Escalones rayados: lo que se consume.',
    hours: 'Marco discontinuo: las horas permitidas ese día.'
  },
  onSupply: (supply: string, controllers: string) => `todos los programadores de ${supply} (${controllers})`,
  window: 'horas permitidas',
  load: (unit: string) => `Caudal, ${unit}`,
  peak: (flow: string) => `máximo ${flow}`,
  limit: (flow: string) => `límite ${flow}`,
  weekdays: ['lun', 'mar', 'mié', 'jue', 'vie', 'sáb', 'dom'],
  row: (weekday: string, date: string) => `${weekday} ${date}`,
  runs: 'Riego a riego, la noche más cargada',
  opens: 'Abre',
  shuts: 'Cierra',
  station: 'Estación',
  waters: 'Riega',
  program: 'Programa',
  minutes: 'Abierta',
  flow: 'Caudal',
  days: 'La semana, noche a noche',
  night: 'Desde mediodía del',
  count: 'Riegos',
  open: 'Válvula abierta',
  most: 'Máximo a la vez',
  first: 'Primera apertura',
  last: 'Último cierre',
  noFlow: (stations: string) => `No se indica el caudal de ${stations}: lo que consumen no está en la figura.`
}
