import type { SitePage } from './pages.ts'
import type { PageContext } from './context.ts'
import { batteryRow } from './battery-row.ts'
import { stripBlocks } from './day-strip.ts'
import { findingBlock } from './finding-block.ts'
import { givenFigures, givenTable } from './given.ts'
import { holdsOf } from './holds.ts'
import { newestFirst, visitTable } from './sections/visits.ts'
import { orNotSupplied, stated } from './values.ts'
import { visitPhotographs } from './visit-photographs.ts'
import { countFindings, SEVERITIES } from '../diagnostics/finding.ts'

/** The newest visits; all of them are in the binder. */
const VISITS_MOST = 12

/** The site's page for the office. Links are relative to office/<site>/. Where no label has room there is neither a sheet of them nor its print. */
export function makeSitePage(context: PageContext, hasLabels = true): SitePage {
  const { site, plan, findings, words, version } = context
  const prints = context.prints.filter(name => name !== 'labels' || hasLabels)
  const w = words.office
  return {
    site: site.id,
    language: words.language,
    title: site.title,
    facts: [
      { label: words.binder.cover.place, value: stated(words.binder.places[site.place]) },
      { label: words.binder.cover.status, value: stated(words.binder.statuses[site.status]) },
      { label: words.binder.cover.address, value: orNotSupplied(site.location?.address, words) },
      {
        label: words.binder.cover.season,
        value: stated(site.season ? words.binder.season(site.season.from, site.season.to) : words.binder.allYear)
      },
      {
        label: words.binder.cover.owner,
        value: orNotSupplied(site.contacts.find(one => one.role === 'owner')?.name, words)
      }
    ],
    links: [
      { label: w.binder, href: 'binder.html', note: w.binderNote },
      ...(hasLabels ? [{ label: w.labels, href: 'labels.html', note: w.labelsNote }] : []),
      ...prints.map(name => ({
        label: name === 'binder' ? w.binderPdf : w.labelsPdf,
        href: `../../print/${site.id}-${name}.pdf`,
        note: w.pdfNote
      }))
    ],
    boxes: site.boxes.map(box => ({
      box: box.id,
      tag: box.tag ?? words.binder.notSupplied,
      ...(box.tag === undefined ? {} : { href: `../../public/B/${box.tag}/index.html` }),
      where: box.where ?? words.binder.notSupplied,
      serves: holdsOf(site, box, words).join(', ')
    })),
    batteries: [...plan.batteries.values()].map(battery => batteryRow(battery, context)),
    watering: {
      title: words.strips.title,
      blocks: plan.strips.flatMap(strip => stripBlocks(strip, context))
    },
    needGiven: {
      title: words.advice.given,
      lead: words.advice.givenLead,
      figures: givenFigures(context),
      tables: givenTable(context)
    },
    visits: {
      title: words.binder.sections.visits,
      blocks:
        site.visits.length === 0
          ? []
          : [visitTable(newestFirst(site.visits).slice(0, VISITS_MOST), context), ...visitPhotographs(context)]
    },
    findings: SEVERITIES.flatMap(severity => findings.filter(one => one.severity === severity)).map(one =>
      findingBlock(one, words)
    ),
    counts: countFindings(findings),
    foot: w.foot(version, plan.on)
  }
}
