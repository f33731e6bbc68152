import type { ProgramCardBlock, Standing, Value } from '../binder/blocks.ts'
import type { BoxPage, Label, LabelSheet } from '../binder/pages.ts'
import type { Words } from '../words/words.ts'
import { alertSymbol, signalStripes } from './alert-symbol.ts'
import { fieldName, pieces } from './blanks.ts'
import { binderPageCss, binderParts } from './binder-parts.ts'
import { boxScriptData, jsonForScript } from './box-script-data.ts'
import { coverLook } from './cover-look.ts'
import { dates } from './dates.ts'
import { patternSvg } from './figures/plan-legend.ts'
import { figureSvg } from './figures/figure-svg.ts'
import type { MapMark } from '../binder/make-map-page.ts'
import { fleetMap } from './fleet-map.ts'
import { fontCss } from './font-faces.ts'
import { labelPage, labelSheets } from './label-sheets.ts'
import { labelView } from './label-view.ts'
import { lean } from './lean.ts'
import { markdown } from './markdown.ts'
import { fleetScript, pageScript, tagEntryScript } from './page-script.ts'
import { arePaired } from './paired-facts.ts'
import { qrSvg } from './qr-svg.ts'
import { sideShare } from './side-shares.ts'
import { smallRun } from './small-figures.ts'
import { stateShape } from './state-shape.ts'
import { css } from './styles.ts'
import { tableView } from './table-view.ts'

/* Anything that hands back HTML, SVG, CSS or a script is written `| safe` in the template: it is escaped already. */

/** Filters of the templates, by name. */
export const templateFilters = {
  markdown,
  figureSvg,
  patternSvg,
  qrSvg,
  stateShape,
  json: jsonForScript,
  pieces,
  dates,
  telephone,
  lean
}

/** Functions and words that the templates of one language call, by name. */
export function templateGlobals(words: Words): Readonly<Record<string, unknown>> {
  const { standings } = words.pages
  return {
    words: words.pages,
    signalWords: words.cautions.signals,
    css,
    fontCss,
    alertSymbol,
    signalStripes,
    pageScript,
    tagEntryScript,
    fleetScript,
    fleetMap: (marks: readonly MapMark[]) => fleetMap(marks, words.fleet),
    fleetWords: words.fleet,
    tableView,
    fieldName,
    sideShare,
    smallRun,
    areBrief: (stations: ProgramCardBlock['stations']) => stations.every(one => one.runTime.length <= BRIEF_TIME),
    arePaired,
    labelView: (label: Label, cut?: LabelSheet['cut']) =>
      labelView(label, { ...words.label, ...words.pages.label }, cut),
    isLong: ({ lines }: { readonly lines: readonly string[] }) => lines.length > LONG_STEP,
    labelPage,
    labelSheets,
    binderParts,
    binderPageCss,
    coverLook,
    boxScriptData: (page: BoxPage) => boxScriptData(page, words),
    standingWords: (standing: Standing) => standings[standing],
    standings: () => standingsKey(standings),
    tagHref
  }
}

/** "12 min" rather than "3 x 9 min soak 30 min": more room for what is watered. */
const BRIEF_TIME = 8

/** Lines of a working that stay on one sheet; more may go over to the next. */
const LONG_STEP = 14

/** The key of all standings, in one order everywhere: each as a sample value, so that the key shows what it explains. */
function standingsKey(standings: Words['pages']['standings']): readonly { value: Value; means: string }[] {
  return (Object.keys(standings) as Standing[]).map(standing => {
    const { sample, means } = standings[standing]
    return { value: { text: sample, standing }, means }
  })
}

/** Digits and a leading plus: what a phone dials. */
export function telephone(number: string): string {
  return number.replace(/(?!^\+)\D/gu, '')
}

/** From the page where tags are typed, at the top of the public folder; with the file's name, since a memory stick has no server. */
export function tagHref(tag: string): string {
  return `B/${encodeURIComponent(tag)}/index.html`
}
