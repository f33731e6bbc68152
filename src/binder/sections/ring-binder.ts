import type { Section } from '../blocks.ts'
import type { PageContext } from '../context.ts'
import type { Words } from '../../words/words.ts'
import { orNotSupplied, stated } from '../values.ts'

type Tab = 'safety' | 'system' | 'water' | 'upkeep' | 'closeout' | 'back'

/** Last section of each tab, in the order of the binder. */
const TABS: readonly (readonly [Tab, string])[] = [
  ['safety', 'contacts'],
  ['system', 'wires'],
  ['water', 'pressure'],
  ['upkeep', 'changes'],
  ['closeout', 'missing'],
  ['back', '']
]

/** Front, spine and tabs of the printed set, and what there is as files. */
export function ringBinderSection({ site, plan, words }: PageContext, sections: readonly Section[]): Section {
  const w = words.handover.binderSet
  const digital = site.closeout?.digital
  const contract = site.closeout?.contract
  return {
    id: 'ring-binder',
    title: words.handover.sections.binderSet,
    newPage: false,
    blocks: [
      { kind: 'paragraph', text: w.lead },
      {
        kind: 'facts',
        caption: w.paper,
        rows: [
          { label: w.kind, value: stated(w.kindText(site.paper)) },
          { label: w.cover, value: stated([site.title, words.binder.subtitle].join(', ')) },
          { label: w.contract, value: orNotSupplied(contract, words) },
          { label: w.volume, value: stated(w.volumeText) },
          { label: w.spine, value: stated(w.spineText(site.title, plan.on.slice(0, 4), w.volumeText)) }
        ]
      },
      {
        kind: 'table',
        caption: w.tabs,
        columns: w.tabColumns.map(label => ({ label })),
        rows: tabRows(allOf(sections, words)).map(([tab, titles]) => [
          stated(w.tabNames[tab]),
          stated(titles.join('; '))
        ])
      },
      {
        kind: 'facts',
        caption: w.files,
        rows: [
          { label: w.manual, value: stated(digital?.manual ?? w.manualText) },
          { label: w.organization, value: stated(w.organizationText) },
          { label: w.drawings, value: orNotSupplied(digital?.drawings, words) },
          { label: w.markUps, value: orNotSupplied(digital?.markUps, words) },
          { label: w.geodata, value: orNotSupplied(digital?.geodata, words) },
          { label: w.data, value: stated(w.dataText) },
          { label: w.page, value: stated(w.pageText) }
        ]
      }
    ]
  }
}

/** This section, and the index, are made of the others and come after them; each has its place all the same. */
function allOf(sections: readonly Section[], { handover, checklists }: Words): Pick<Section, 'id' | 'title'>[] {
  const own = { id: 'ring-binder', title: handover.sections.binderSet }
  return [
    ...sections.flatMap(one => (one.id === 'sign-offs' ? [one, own] : [one])),
    { id: 'index', title: checklists.index }
  ]
}

function tabRows(sections: readonly Pick<Section, 'id' | 'title'>[]): (readonly [Tab, string[]])[] {
  let from = 0
  return TABS.map(([tab, last]) => {
    const found = sections.findIndex(one => one.id === last)
    const to = found === -1 ? sections.length : found + 1
    const titles = sections.slice(from, to).map(one => one.title)
    from = to
    return [tab, titles] as const
  })
}
