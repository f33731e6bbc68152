import type { CheckContext, Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { closedOut } from './closed-out.ts'
import type { Site } from '../../model/site.ts'
import type { IsoDate } from '../../units/date.ts'

export const recordDrawingCheck: SiteCheck = {
  card: {
    code: 'closeout/record-drawing',
    severity: 'warning',
    looksAt:
      'A site that was accepted without a record drawing or with one that bears no date, and any drawing older than a change that a visit asks to be drawn.',
    why: 'Who digs by a drawing that is not true to the ground cuts a pipe or a wire.',
    sources: ['nc-record-drawing', 'project-rule'],
    fix: 'Bring the drawing up to date and write its day; an error once the site is closed out.',
    worked: {
      example: `closeout: { acceptance: 2025-04-30 }`,
      instead: `closeout:
  acceptance: 2025-04-30
  record-drawings: [{ number: RD-1, dated: 2025-04-28 }]`
    }
  },
  run: (context, report) => {
    const { site } = context
    if (site.status === 'planned' || site.status === 'removed') return
    if (hasDrawing(site)) judgeDates(context, report)
    else if (closedOut(site))
      report({
        subject: site.id,
        at: at(site, 'closeout'),
        message: 'There is no record drawing.',
        fix: 'Write record-drawings with its file, or drawing with the places of boxes and points.',
        ...severityOf(site)
      })
  }
}

function hasDrawing({ closeout, drawing }: Site): boolean {
  return (closeout?.recordDrawings.length ?? 0) > 0 || drawing !== undefined
}

/** The latest of all sheets counts: a change is drawn once. */
function judgeDates({ site }: CheckContext, report: Report): void {
  const { closeout, drawing } = site
  const days = [drawing?.dated, ...(closeout?.recordDrawings ?? []).map(one => one.dated)]
  const dated = days
    .filter((one): one is IsoDate => one !== undefined)
    .sort()
    .at(-1)
  const place = drawing ? at(drawing, 'dated') : at(site, 'closeout', 'record-drawings')
  if (dated === undefined) {
    if (closedOut(site))
      report({
        subject: site.id,
        at: place,
        message: 'The record drawing has no date.',
        fix: 'Write the day on which it was last true to the ground: dated: YYYY-MM-DD.',
        ...severityOf(site)
      })
    return
  }
  const change = site.visits.filter(one => one.drawingChange === true && one.on > dated).at(-1)
  if (!change) return
  report({
    subject: site.id,
    at: place,
    message: `The record drawing is of ${dated}; the visit of ${change.on} changed what it shows.`,
    fix: `Draw the change and write dated: ${change.on} or later.`,
    values: { dated, changed: change.on },
    related: [{ at: at(change), note: `visit of ${change.on}` }],
    ...severityOf(site)
  })
}

/** A site in service runs without; one that is closed out was handed over as complete. */
function severityOf({ status }: Site): { severity?: 'error' } {
  return status === 'closed-out' ? { severity: 'error' } : {}
}
