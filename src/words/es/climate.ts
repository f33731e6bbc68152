import type { RainMethod } from '../../reference/effective-rain.ts'
import type { PhaseKind } from '../../domain/water/phase-need.ts'

const ways = {
  'by-hand': 'según lo indicado',
  'daily-weather': 'tiempo del registro diario',
  'daily-temperatures': 'temperaturas del registro diario',
  weather: 'datos mensuales del tiempo',
  'zone-table': 'tabla de zonas',
  temperatures: 'temperaturas medias'
}

const lacks = {
  humidity: 'punto de rocío o humedad',
  wind: 'viento',
  sunshine: 'insolación o radiación',
  elevation: 'altitud'
}

const rainMethods: Readonly<Record<RainMethod, string>> = {
  none: 'No se cuenta la lluvia.',
  'tr-21':
    'La precipitación efectiva se indica por zona, según su consumo y lo que almacena su suelo (método USDA de almacenamiento en el suelo, National Engineering Handbook 623).',
  'scs-monthly': 'Precipitación efectiva por el método mensual del USDA, como figura en el Estudio FAO 46.',
  'fao-manual-3': 'Precipitación efectiva por el manual de capacitación 3 de la FAO, para pendientes de hasta el 5 %.',
  'per-event': 'Cada día del registro cuenta como una lluvia, por la regla de la red de evapotranspiración de Texas.',
  'quarter-of-annual': 'Cuenta una cuarta parte de la lluvia, lo más que California permite contar.'
}

const phases: Readonly<Record<PhaseKind, string>> = {
  establishment: 'Arraigo',
  established: 'Establecido',
  temporary: 'Riego temporal',
  none: 'Sin riego'
}

/** Words of climate and need in the binder. */
export const climateWords = {
  caption: 'Clima, mes a mes',
  month: 'Mes',
  et: 'ET de referencia',
  how: 'Cómo se obtuvo',
  off: 'Margen',
  rain: 'Lluvia',
  counted: 'Precipitación efectiva',
  byZone: 'por zona',
  unknownOff: '–',
  ways,
  zone: (zone: number) => `tabla de zonas, zona ${zone}`,
  daysOnRecord: 'Días del registro',
  from: (name: string) => `Datos de: ${name}.`,
  record: (days: number, first: string, last: string) => `Registro diario: ${days} días, del ${first} al ${last}.`,
  year: (et: string, counted: string) => `El año: ${et} de ET de referencia, ${counted} de precipitación efectiva.`,
  yearEt: (et: string) => `El año: ${et} de ET de referencia.`,
  estimate:
    'Margen es cuánto puede desviarse una estimación hecha solo con temperaturas: por defecto con viento de más de 3 m/s, por exceso con aire húmedo.',
  zoneSource:
    'Tabla de zonas: mapa de California de zonas de evapotranspiración de referencia, Department of Water Resources, 1999.',
  madeBy: (cards: string) => `Calculado con ${cards}; véase Cómo se obtuvieron estas cifras.`,
  lacks: (list: string) => `No constan todos los datos del tiempo (${list}), así que se usan solo las temperaturas.`,
  others: (used: string, others: string) => `${used} va primero; ${others} donde no da ninguna cifra.`,
  lackNames: lacks,
  rainMethods,
  underGlass: 'Bajo cristal no cuenta la lluvia.',

  needCaption: 'Lo que pide cada zona',
  station: 'Estación',
  waters: 'Riega',
  factor: 'Coeficiente',
  phase: 'Fases',
  losses: 'Pérdidas',
  interval: 'Intervalo máximo',
  yearNeed: 'Necesidad del año',
  plantFactor: (factor: string) => `${factor}, coeficiente de planta`,
  parts: (factor: string, species: string, density: string, microclimate: string) =>
    `${factor} = especie ${species} × densidad ${density} × microclima ${microclimate}`,
  phases,
  phaseLine: (name: string, span: string, factor: string) => `${name}${span}${factor === '' ? '' : `: ${factor}`}`,
  span: (from: string | undefined, to: string | undefined): string => {
    if (from !== undefined && to !== undefined) return `, del ${from} al ${to}`
    if (from !== undefined) return ` desde el ${from}`
    return to === undefined ? '' : ` hasta el ${to}`
  },
  phaseFactor: (factor: string) => `coeficiente ${factor}`,
  phasePercent: (percent: string) => `${percent} del coeficiente`,
  efficiency: (share: string, multiplier: string) => `eficiencia ${share}: × ${multiplier}`,
  dulq: (share: string, multiplier: string) => `uniformidad ${share}, indicada: × ${multiplier}`,
  cans: (share: string, multiplier: string) => `uniformidad ${share}, con pluviómetros: × ${multiplier}`,
  noLosses: 'no se cuentan: × 1',
  wholeDays: (days: number, month: string) =>
    days === 0
      ? `menos de un día, ${month.toLowerCase()}`
      : `${days} ${days === 1 ? 'día' : 'días'}, ${month.toLowerCase()}`,
  needNotes: [
    'Coeficiente es la parte de la ET de referencia que usan las plantas. Las pérdidas multiplican la necesidad: uno entre la eficiencia, o uno entre 0.4 + 0.6 × la uniformidad del cuarto inferior.',
    'Intervalo máximo: días enteros que aguanta la zona radicular en el mes de mayor consumo, sin contar la lluvia.'
  ],
  monthsCaption: (unit: string) =>
    `Necesidad de las plantas antes de pérdidas, ${unit}, y necesidad diaria en porcentaje de la mayor`,
  monthsNote: 'Calculado con phase-need y monthly-percent; las zonas que piden lo mismo comparten línea.',
  need: 'necesidad',
  percent: '%'
}
