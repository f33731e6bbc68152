/** Keys that say the same in a language as in the first: names, units, and words that both languages have. */
export const ALIKE: Readonly<Record<string, readonly string[]>> = {
  es: [
    'binder.open.severities.error',
    'binder.site.sensor',
    'boxPage.every',
    'checklists.kinds.sensor',
    'drawing.places.sensor',
    'drawing.short.sensor',
    // Names of cautions, not words.
    'faults.steps.battery.brief.cautions.0.0',
    'faults.steps.by-hand.brief.cautions.0.0',
    'faults.steps.pulse.brief.cautions.0.0',
    'faults.steps.pulse.brief.cautions.1.0',
    'handover.calendar.minutes',
    'handover.visits.serviceColumns.5',
    // Figures with their units, and braces that the script fills in.
    'pages.script.ofStation',
    'pages.script.stationRuns',
    'pages.standings.stated.sample',
    'pressure.material',
    'units.sensor',
    'units.trend.temperature'
  ]
}

/** Words whose name is put together where they are asked for, or that are walked through with the others beside them. */
export const PUT_TOGETHER: readonly string[] = ['answer0', 'answer1', 'answer2', 'answer3', 'answer4', 'remark']
