/** Words of the pages for the office. */
export const officeWords = {
  fleetTitle: 'Emplazamientos',
  findingsTitle: 'Hallazgos',
  allFindings: 'Todos los hallazgos',
  general: 'El registro de matrículas',
  noFindings: 'No se encontró nada.',
  lookedAt: (counts: { sites: number; boxes: number; controllers: number; stations: number }, left: number) =>
    `Se revisaron ${counts.sites} emplazamientos, ${counts.boxes} arquetas de válvulas, ${counts.controllers} programadores y ${counts.stations} estaciones.` +
    (left > 0 ? ` No se pudieron leer ${left} más.` : ''),
  asOf: (day: string) => `A fecha de ${day}`,
  sites: 'Emplazamientos',
  boxes: 'Arquetas de válvulas',
  controllers: 'Programadores',
  stations: 'Estaciones',
  errors: 'Errores',
  warnings: 'Advertencias',
  due60: 'Baterías que vencen en 60 días',
  overdue: 'Baterías vencidas',
  nothingDue: 'nada con fecha',
  notBuilt: (errors: number) =>
    `Sin hacer: ${errors === 1 ? 'una falta' : `${errors} faltas`} en sus archivos. Siguen en pie las últimas páginas buenas.`,
  battery: (count: number, kind: string) => `Batería, ${count} × ${kind}`,
  backflow: 'Ensayo antirreflujo',
  binder: 'Carpeta',
  binderNote: 'el emplazamiento entero en papel',
  labels: 'Etiquetas de tapa',
  labelsNote: 'una por arqueta',
  binderPdf: 'Carpeta, PDF',
  labelsPdf: 'Etiquetas de tapa, PDF',
  pdfNote: 'hecho con "underlid print"',
  foot: (version: string, day: string) => `Underlid ${version} · a fecha de ${day} · para la oficina, no para publicar`,
  entry: {
    title: 'Buscar una arqueta',
    lead: 'Escriba los siete caracteres de la matrícula que está bajo la tapa.',
    label: 'Matrícula',
    button: 'Abrir',
    help: 'En una matrícula no hay 0, 1, I, L ni O.'
  }
}
