import type { Binder } from './blocks.ts'
import type { PageContext } from './context.ts'
import { revisionOf } from './context.ts'
import { stated } from './values.ts'

/** Codes, keys and private phones: a print of its own, never bound into the binder. */
export function makeRestrictedSheet(context: PageContext): Binder {
  const { site, plan, words } = context
  const w = words.binder.restricted
  return {
    site: site.id,
    title: site.title,
    subtitle: w.title,
    language: words.language,
    paper: site.paper,
    running: { left: words.binder.running(site.title, revisionOf(context)), right: words.binder.dataDate(plan.on) },
    cover: {
      lines: [],
      company: site.company?.name ?? '',
      dataDate: words.binder.dataDate(plan.on),
      revision: revisionOf(context),
      counts: [],
      openItems: w.lead,
      tags: []
    },
    contentsTitle: words.binder.contents,
    sections: [
      {
        id: 'restricted',
        title: w.title,
        newPage: true,
        blocks:
          site.privateWords.length === 0
            ? [{ kind: 'paragraph', text: w.none }]
            : [
                {
                  kind: 'table',
                  columns: [{ label: w.what }, { label: w.word }],
                  rows: site.privateWords.map(one => [stated(one.label), stated(one.text, true)])
                }
              ]
      }
    ]
  }
}
