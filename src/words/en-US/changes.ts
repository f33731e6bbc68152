/** Words of the section that says what changed since the binder was last issued. */
export const changesWords = {
  title: 'What changed since the last issue',
  revision: 'Revision',
  issued: 'Issued',
  lead: (day: string) =>
    `What the visits after ${day} changed, the newest first. The visits themselves stand under Visits.`,
  leadAll: 'The day of the last issue is not known, so everything that the visits changed is listed, the newest first.',
  none: 'No visit has changed anything since.',
  columns: { on: 'Date', thing: 'Thing', change: 'Change' },
  battery: (count: number | undefined, kind: string) =>
    count === undefined ? `${kind} fitted` : `${count} × ${kind} fitted`,
  cells: 'cells',
  program: (found: string, left: string) =>
    [found && `found: ${found}`, left && `left: ${left}`].filter(Boolean).join('; '),
  clock: (text: string) => `clock ${text}`,
  passed: (tester: string) => `backflow test passed${tester ? `, ${tester}` : ''}`,
  failed: (tester: string) => `backflow test failed${tester ? `, ${tester}` : ''}`,
  part: (count: number, item: string) => `${count} × ${item} put in`,
  done: (text: string) => text,
  repaired: (text: string) => `repaired: ${text}`,
  drawing: 'the record drawing has to be changed',
  site: 'site',
  open: 'Still open, by age',
  openColumns: { job: 'What', since: 'Since', days: 'Days', owner: 'Who sees to it' },
  noOpen: 'Nothing that a visit left open is still open.'
} as const
