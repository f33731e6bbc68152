import type { Standing, Value } from '../binder/blocks.ts'
import { pageWords } from '../words/en-US/pages.ts'
import { alertArt, alertSymbol, alertUse, signalStripes } from './alert-symbol.ts'
import { binderPageCss, binderParts } from './binder-parts.ts'
import { boxScriptData, jsonForScript } from './box-script-data.ts'
import { coverLook } from './cover-look.ts'
import { dates } from './dates.ts'
import { figureSvg } from './figures/figure-svg.ts'
import { fontCss } from './font-faces.ts'
import { labelView } from './label-view.ts'
import { lean } from './lean.ts'
import { markdown } from './markdown.ts'
import { pageScript, tagEntryScript } from './page-script.ts'
import { qrSvg } from './qr-svg.ts'
import { stateShape } from './state-shape.ts'
import { css } from './styles.ts'
import { tableView } from './table-view.ts'

/* Anything that hands back HTML, SVG, CSS or a script is written `| safe` in the template: it is escaped already. */

/** Filters of the templates, by name. */
export const templateFilters = { markdown, figureSvg, qrSvg, stateShape, json: jsonForScript, dates, telephone, lean }

/** Functions that the templates call, by name. */
export const templateGlobals = {
  words: pageWords,
  css,
  fontCss,
  alertArt,
  alertSymbol,
  alertUse,
  signalStripes,
  pageScript,
  tagEntryScript,
  tableView,
  labelView,
  binderParts,
  binderPageCss,
  coverLook,
  boxScriptData,
  standingWords,
  standings,
  tagHref
}

export function standingWords(standing: Standing): { mark: string; sample: string; means: string } {
  return pageWords.standings[standing]
}

/** The key of all standings, in one order everywhere: each as a sample value, so that the key shows what it explains. */
export function standings(): readonly { value: Value; means: string }[] {
  return (Object.keys(pageWords.standings) as Standing[]).map(standing => {
    const { sample, means } = pageWords.standings[standing]
    return { value: { text: sample, standing }, means }
  })
}

/** Digits and a leading plus: what a phone dials. */
export function telephone(number: string): string {
  return number.replace(/(?!^\+)\D/gu, '')
}

/** From the page where tags are typed, at the top of the public folder. */
export function tagHref(tag: string): string {
  return `B/${encodeURIComponent(tag)}/`
}
