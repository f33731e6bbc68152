/** Words of the pages for the office. */
export const officeWords = {
  fleetTitle: 'Sites',
  findingsTitle: 'Findings',
  allFindings: 'All findings',
  general: 'The register of tags',
  noFindings: 'Nothing was found.',
  lookedAt: (counts: { sites: number; boxes: number; controllers: number; stations: number }, left: number) =>
    `Looked at ${counts.sites} sites, ${counts.boxes} valve boxes, ${counts.controllers} controllers and ${counts.stations} stations.` +
    (left > 0 ? ` ${left} more could not be read.` : ''),
  asOf: (day: string) => `As of ${day}`,
  sites: 'Sites',
  boxes: 'Valve boxes',
  controllers: 'Controllers',
  stations: 'Stations',
  errors: 'Errors',
  warnings: 'Warnings',
  due60: 'Batteries due within 60 days',
  overdue: 'Batteries overdue',
  nothingDue: 'nothing dated',
  notBuilt: (errors: number) =>
    `Not built: ${errors === 1 ? 'one fault' : `${errors} faults`} in its files. The last good pages stand.`,
  battery: (count: number, kind: string) => `Battery, ${count} × ${kind}`,
  backflow: 'Backflow test',
  binder: 'Binder',
  binderNote: 'the whole site on paper',
  labels: 'Lid labels',
  labelsNote: 'one for each box',
  binderPdf: 'Binder, PDF',
  labelsPdf: 'Lid labels, PDF',
  pdfNote: 'made by "underlid print"',
  foot: (version: string, day: string) => `Underlid ${version} · as of ${day} · for the office, not for hosting`,
  entry: {
    title: 'Find a box',
    lead: 'Type the seven characters of the tag under the lid.',
    label: 'Tag',
    button: 'Open',
    help: 'There is no 0, 1, I, L or O in a tag.'
  }
}
