import type { Translated } from '../translated.ts'
import type { fleetWords as english } from '../en-US/fleet.ts'

/** Words of the list, the map and the water of all sites. */
export const fleetWords: Translated<typeof english> = {
  filter: 'Mostrar solo',
  search: 'Buscar',
  searchHint: 'un nombre, calle, arqueta, matrícula, zona o palabra de un hallazgo',
  all: 'todos',
  statuses: {
    'in-service': 'en servicio',
    planned: 'en proyecto',
    'out-of-service': 'fuera de servicio',
    removed: 'retirado'
  },
  findings: 'Hallazgos',
  findingKinds: { error: 'con errores', warning: 'con advertencias', none: 'sin hallazgos' },
  due: 'Vencimiento',
  dueKinds: { overdue: 'vencido', 'due-soon': 'en 60 días', 'no-date': 'sin fecha', ok: 'más tarde' },
  place: 'Tipo de lugar',
  status: 'Estado',
  shown: '{shown} de {all} emplazamientos',
  mapTitle: 'Mapa',
  mapLink: 'Mapa de todos los emplazamientos',
  mapLead:
    'Cada marca es un emplazamiento donde lo sitúa su archivo; el norte está arriba. Un nombre se omite donde taparía otro.',
  mapMissing: 'Sin posición en su archivo',
  mapNone: 'Ningún archivo indica una posición.',
  legend: 'Marcas',
  states: { bad: 'vencido', soon: 'vence en 60 días', unknown: 'sin fecha', good: 'nada vence en 60 días' },
  scale: (text, latitude) => `${text} a ${latitude}`,
  waterTitle: 'Agua frente al presupuesto',
  waterLink: 'Agua frente al presupuesto',
  waterLead:
    'Lo que un emplazamiento puede usar en un año, lo que dan sus programas tal como están y la proporción. Las lecturas del contador están en cada carpeta.',
  allowed: 'Puede usar',
  programmed: 'Programado',
  share: 'Proporción',
  noBudget: 'sin presupuesto indicado',
  noFlow: stations =>
    stations === 1
      ? 'una estación no tiene caudal indicado y no se cuenta'
      : `${stations} estaciones no tienen caudal indicado y no se cuentan`,
  kinds: 'Hallazgos por tipo',
  kind: 'Tipo',
  count: 'Hallazgos',
  onSites: 'Emplazamientos'
}
