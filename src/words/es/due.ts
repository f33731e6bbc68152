import type { TaskKind } from '../../domain/dates/task-kind.ts'

type Plain = Exclude<TaskKind, 'battery' | 'backflow' | 'maintenance'>

const KINDS: Readonly<Record<Plain, string>> = {
  'start-up': 'Inicio de temporada',
  winterizing: 'Preparación para el invierno',
  inspection: 'Inspección',
  'warranty-inspection': 'Inspección de garantía',
  'warranty-end': 'Fin de la garantía',
  audit: 'Auditoría',
  'establishment-end': 'Fin del arraigo: cambiar los programas',
  removal: 'Retirar la instalación temporal'
}

/** Words of the due list, the route sheet and the shopping list. */
export const dueWords = {
  task: (kind: Plain, name?: string) => {
    if (name === undefined) return KINDS[kind]
    return kind === 'warranty-inspection' ? `${KINDS[kind]}, ${name} después del inicio` : capital(name)
  },
  maintenance: (name: string) => capital(name),
  route: {
    title: 'Hoja de ruta',
    link: 'Hoja de ruta y lista de compra',
    fleet: 'Emplazamientos',
    within: (days: number, day: string) =>
      `Todo lo que no tiene fecha, está vencido o vence en los ${days} días siguientes al ${day}. Las arquetas fuera de servicio no figuran.`,
    order:
      'Las áreas reúnen emplazamientos a menos de 50 km unos de otros; el orden dentro de un área es el más corto hallado en línea recta. No cuentan las carreteras ni el tráfico.',
    noPlace: 'Emplazamientos sin coordenadas',
    area: (name: string, stops: number, time: string, km: string) =>
      `${name}: ${stops === 1 ? '1 emplazamiento' : `${stops} emplazamientos`}, ${time} en el lugar${km === '' ? '' : `, ${km} entre ellos en línea recta`}`,
    columns: {
      stop: 'Parada',
      box: 'Arqueta',
      task: 'Tarea',
      due: 'Vence',
      minutes: 'Minutos',
      parts: 'Llevar',
      done: 'Hecho'
    },
    access: 'Acceso',
    lane: (window: string) => `Corte de carril ${window}`,
    traffic: (plan: string) => `Señalización ${plan}`,
    road: 'Trabajo en la calzada o junto a ella',
    watering: (window: string) => `riega ${window}`,
    tools: 'Herramientas',
    open: 'Queda pendiente',
    openJob: (text: string, since: string, owner: string) => `${text} (desde ${since}${owner ? `, ${owner}` : ''})`,
    where: (distance: string) => `a ${distance} de la parada anterior`,
    noDate: 'SIN FECHA',
    overdue: (day: string) => `${day} VENCIDO`,
    shopping: 'Para llevar',
    shoppingColumns: { item: 'Qué', count: 'Necesarios', spares: 'De reserva', total: 'Total' },
    spareRule:
      'De reserva: un juego más por cada diez juegos empezados de un tipo de batería; ninguno de otras piezas (regla de este proyecto). Un juego es lo que lleva un programador.',
    weeks: 'Trabajo por semanas',
    weekColumns: {
      week: 'Semana del',
      stops: 'Emplazamientos',
      tasks: 'Tareas',
      hours: 'Vence, tiempo en el lugar',
      planned: (hours: string) => `Nivelado a ${hours}`,
      where: 'Dónde'
    },
    over: (time: string) => `, EXCEDE en ${time}`,
    levelRule: (weeks: number) =>
      `Nivelado: las tareas de un emplazamiento de una misma semana quedan juntas; se hacen en la última semana con sitio, como mucho ${weeks} semanas antes y nunca tarde; lo vencido o sin fecha, en cuanto hay sitio (regla de este proyecto). EXCEDE marca una semana que aun así lleva más.`,
    levelHint:
      'Con --hours-a-week 30h, o hours-a-week en el archivo de la empresa, el trabajo se nivela a lo que cabe en una semana.',
    now: 'ya: sin fecha o vencido',
    minutesRule:
      'Minutos: los que el archivo del emplazamiento indica para una tarea; si no, 10 por un juego de pilas, 30 por un ensayo antirreflujo, 20 más 5 por estación para un inicio de temporada o una preparación para el invierno, 30 por una inspección, 60 por una auditoría o una retirada, 20 por otras tareas, y 5 por cada arqueta que se abre. Sirven solo para planificar (regla de este proyecto).',
    empty: 'No vence nada en este tiempo.',
    dash: '–'
  },
  tools: {
    lid: 'gancho para tapas y guantes',
    battery: 'carga de prueba y multímetro',
    backflow: 'equipo de ensayo de dispositivos antirreflujo, con su certificado de calibración',
    'start-up': 'multímetro, radio o teléfono para dos',
    winterizing: 'llave para los desagües',
    air: 'compresor con regulador y manómetro',
    audit: 'pluviómetros, manómetro, cronómetro',
    key: 'llave de la toma'
  },
  calendar: {
    name: 'Mantenimiento del riego',
    noDate: (count: number) => `No se conoce la fecha de ${count === 1 ? 'un elemento' : `${count} elementos`}`,
    overdue: (what: string) => `VENCIDO: ${what}`,
    summary: (what: string, subject: string, site: string) => `${what}, ${subject}, ${site}`
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
