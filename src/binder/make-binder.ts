import type { Binder, Section } from './blocks.ts'
import type { PageContext } from './context.ts'
import { revisionOf } from './context.ts'
import { asInstalledSection } from './sections/as-installed.ts'
import { calendarSection } from './sections/calendar.ts'
import { ringBinderSection } from './sections/ring-binder.ts'
import { adviceSection } from './sections/advice.ts'
import { batteriesSection } from './sections/batteries.ts'
import { budgetSection } from './sections/budget.ts'
import { boxesSection } from './sections/boxes.ts'
import { checklistsSection } from './sections/checklists.ts'
import { closeoutDatesSection } from './sections/closeout-dates.ts'
import { contactsSection } from './sections/contacts.ts'
import { controllersSection } from './sections/controllers.ts'
import { drawingsSection } from './sections/drawings.ts'
import { faultFindingSection } from './sections/fault-finding.ts'
import { glossarySection } from './sections/glossary.ts'
import { indexSection } from './sections/index-of-names.ts'
import { missingSection } from './sections/missing.ts'
import { numbersSection } from './sections/numbers.ts'
import { openItemsSection } from './sections/open-items.ts'
import { photographsSection } from './sections/photographs.ts'
import { pressureSection } from './sections/pressure.ts'
import { safetySection } from './sections/safety.ts'
import { scheduleSection } from './sections/schedule.ts'
import { signOffsSection } from './sections/sign-offs.ts'
import { siteSection } from './sections/site.ts'
import { sparesSection } from './sections/spares.ts'
import { suppliesSection } from './sections/supplies.ts'
import { testReportsSection } from './sections/test-reports.ts'
import { trainingSection } from './sections/training.ts'
import { changesSection } from './sections/changes.ts'
import { visitsSection } from './sections/visits.ts'
import { warrantySection } from './sections/warranty.ts'
import { waterSection } from './sections/water.ts'
import { wiresSection } from './sections/wires.ts'
import { zonesSection } from './sections/zones.ts'
import { countFindings } from '../diagnostics/finding.ts'

/** The whole binder of a site, in order. What is not supplied says so; nothing vanishes. */
export function makeBinder(context: PageContext): Binder {
  const { site, plan, words } = context
  const body: Section[] = [
    safetySection(context),
    contactsSection(context),
    siteSection(context),
    suppliesSection(context),
    boxesSection(context),
    drawingsSection(context),
    asInstalledSection(context),
    controllersSection(context),
    zonesSection(context),
    wiresSection(context),
    scheduleSection(context),
    waterSection(context),
    adviceSection(context),
    budgetSection(context),
    pressureSection(context),
    batteriesSection(context),
    calendarSection(context),
    checklistsSection(context),
    faultFindingSection(context),
    visitsSection(context),
    changesSection(context),
    sparesSection(context),
    warrantySection(context),
    closeoutDatesSection(context),
    trainingSection(context),
    testReportsSection(context),
    photographsSection(context),
    openItemsSection(context)
  ]
  const signOffs = signOffsSection(context)
  const back = [numbersSection(context), glossarySection(context)]
  const ring = ringBinderSection(context, [...body, missingSection(context, []), signOffs, ...back])
  const all = [...body, missingSection(context, [...body, signOffs, ring]), signOffs, ring, ...back]
  return {
    site: site.id,
    title: site.title,
    subtitle: words.binder.subtitle,
    language: words.language,
    paper: site.paper,
    running: { left: words.binder.running(site.title, revisionOf(context)), right: words.binder.dataDate(plan.on) },
    cover: cover(context),
    contentsTitle: words.binder.contents,
    sections: [...all, indexSection(context, all)]
  }
}

function cover(context: PageContext): Binder['cover'] {
  const { site, plan, findings, words } = context
  const w = words.binder.cover
  const contact = (role: string): string => {
    const found = site.contacts.find(one => one.role === role)
    return [found?.name, found?.company].filter(Boolean).join(', ') || words.binder.notSupplied
  }
  const counts = countFindings(findings)
  return {
    lines: [
      { label: w.place, value: words.binder.places[site.place] },
      { label: w.address, value: site.location?.address ?? words.binder.notSupplied },
      { label: w.owner, value: contact('owner') },
      { label: w.maintainer, value: contact('maintainer') },
      { label: w.installer, value: contact('installer') },
      {
        label: w.season,
        value: site.season ? words.binder.season(site.season.from, site.season.to) : words.binder.allYear
      },
      { label: w.status, value: words.binder.statuses[site.status] }
    ],
    company: site.company?.name ?? '',
    dataDate: words.binder.dataDate(plan.on),
    revision: revisionOf(context),
    counts: [
      { label: w.boxes, value: String(site.boxes.length) },
      { label: w.controllers, value: String(site.controllers.length) },
      { label: w.stations, value: String(site.stations.length) },
      { label: w.supplies, value: String(site.supplies.length) }
    ],
    openItems: w.open(counts.error, counts.warning, counts.note),
    tags: site.boxes.flatMap(box => (box.tag === undefined ? [] : [{ box: box.id, tag: box.tag }]))
  }
}
