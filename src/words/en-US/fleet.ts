/** Words of the list, the map and the water of all sites. */
export const fleetWords = {
  filter: 'Show only',
  search: 'Search',
  searchHint: 'a name, street, box, tag, zone, or a word of a finding',
  all: 'all',
  statuses: {
    'in-service': 'in service',
    planned: 'planned',
    'out-of-service': 'out of service',
    removed: 'removed'
  } as Readonly<Record<string, string>>,
  findings: 'Findings',
  findingKinds: { error: 'with errors', warning: 'with warnings', none: 'with nothing found' },
  due: 'Due',
  dueKinds: { overdue: 'overdue', 'due-soon': 'within 60 days', 'no-date': 'without a date', ok: 'later' },
  place: 'Kind of place',
  status: 'Status',
  shown: '{shown} of {all} sites',
  mapTitle: 'Map',
  mapLink: 'Map of all sites',
  mapLead: 'Each mark is a site where its file puts it; north is up. A name is left out where it would cover another.',
  mapMissing: 'Without a position in their file',
  mapNone: 'No site file states a position.',
  legend: 'Marks',
  states: { bad: 'overdue', soon: 'due within 60 days', unknown: 'no date', good: 'nothing due within 60 days' },
  scale: (text: string, latitude: string) => `${text} at ${latitude}`,
  waterTitle: 'Water against budget',
  waterLink: 'Water against budget',
  waterLead:
    'What a site may use in a year, what its programs give as they are set, and the share of it. Meter readings stand in each binder.',
  allowed: 'May use',
  programmed: 'Is set to use',
  share: 'Share',
  noBudget: 'no budget stated',
  noFlow: (stations: number) =>
    `${stations === 1 ? 'one station has' : `${stations} stations have`} no flow stated and ${stations === 1 ? 'is' : 'are'} not counted`,
  kinds: 'Findings by kind',
  kind: 'Kind',
  count: 'Findings',
  onSites: 'Sites'
}
