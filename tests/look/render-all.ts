import { pageRenderer } from '../../src/render/template-environment.ts'
import { BINDER_METRIC } from './binder-metric.ts'
import { BINDER_US } from './binder-us.ts'
import { BOX_METRIC, BOX_US, GONE, TAG_ENTRY } from './box-pages.ts'
import { FINDINGS, FLEET, LABELS_METRIC, LABELS_US, SITE } from './sheets.ts'

/** Every page kind with an invented view: name of the file, template, view. */
export const PAGES = [
  { name: 'binder-metric', template: 'pages/binder.njk', view: BINDER_METRIC, kind: 'print' },
  { name: 'binder-us', template: 'pages/binder.njk', view: BINDER_US, kind: 'print' },
  { name: 'labels-metric', template: 'pages/labels.njk', view: LABELS_METRIC, kind: 'print' },
  { name: 'labels-us', template: 'pages/labels.njk', view: LABELS_US, kind: 'print' },
  { name: 'box-metric', template: 'pages/box-page.njk', view: BOX_METRIC, kind: 'box' },
  { name: 'box-us', template: 'pages/box-page.njk', view: BOX_US, kind: 'box' },
  { name: 'gone', template: 'pages/gone.njk', view: GONE, kind: 'box' },
  { name: 'tag-entry', template: 'pages/tag-entry.njk', view: TAG_ENTRY, kind: 'box' },
  { name: 'site', template: 'pages/site.njk', view: SITE, kind: 'office' },
  { name: 'findings', template: 'pages/findings.njk', view: FINDINGS, kind: 'office' },
  { name: 'fleet', template: 'pages/fleet.njk', view: FLEET, kind: 'office' }
] as const

const render = pageRenderer()

export function renderPage(template: string, view: object): string {
  return render(template.replace(/^pages\/|\.njk$/gu, ''), view)
}
