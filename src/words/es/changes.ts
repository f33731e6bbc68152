/** Words of the section that says what changed since the binder was last issued. */
export const changesWords = {
  title: 'Qué cambió desde la última edición',
  revision: 'Revisión',
  issued: 'Emitida',
  lead: (day: string) =>
    `Lo que cambiaron las visitas posteriores al ${day}, primero lo más reciente. Las visitas mismas figuran en Visitas.`,
  leadAll:
    'No se conoce el día de la última edición, así que se enumera todo lo que cambiaron las visitas, primero lo más reciente.',
  none: 'Ninguna visita ha cambiado nada desde entonces.',
  columns: { on: 'Fecha', thing: 'Elemento', change: 'Cambio' },
  battery: (count: number | undefined, kind: string) =>
    count === undefined ? `montada: ${kind}` : `montada: ${count} × ${kind}`,
  cells: 'pilas',
  program: (found: string, left: string) =>
    [found && `encontrado: ${found}`, left && `dejado: ${left}`].filter(Boolean).join('; '),
  clock: (text: string) => `reloj ${text}`,
  passed: (tester: string) => `ensayo antirreflujo superado${tester ? `, ${tester}` : ''}`,
  failed: (tester: string) => `ensayo antirreflujo no superado${tester ? `, ${tester}` : ''}`,
  part: (count: number, item: string) => `puesto: ${count} × ${item}`,
  done: (text: string) => text,
  repaired: (text: string) => `reparado: ${text}`,
  drawing: 'hay que modificar el plano de obra ejecutada',
  site: 'emplazamiento',
  open: 'Aún pendiente, por antigüedad',
  openColumns: { job: 'Qué', since: 'Desde', days: 'Días', owner: 'Quién se ocupa' },
  noOpen: 'No queda pendiente nada de lo que dejó abierto una visita.'
}
