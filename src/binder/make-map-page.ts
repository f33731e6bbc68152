import type { State } from './blocks.ts'
import type { FleetInput } from './make-fleet-page.ts'
import { siteState } from './site-state.ts'

/** Where the sites are. Links are relative to office/. */
export interface MapPage {
  readonly language: string
  readonly title: string
  readonly asOf: string
  readonly lead: string
  readonly fleet: { readonly label: string; readonly href: string }
  readonly marks: readonly MapMark[]
  readonly states: readonly { readonly state: State; readonly word: string }[]
  readonly missing: readonly { readonly title: string; readonly href: string }[]
  readonly empty: string
  readonly foot: string
}

export interface MapMark {
  readonly title: string
  readonly href: string
  readonly latitude: number
  readonly longitude: number
  readonly state: State
  readonly word: string
}

export function makeMapPage({ built, on, words, version }: FleetInput): MapPage {
  const w = words.fleet
  const link = (id: string): string => `${id}/index.html`
  return {
    language: words.language,
    title: w.mapTitle,
    asOf: words.office.asOf(on),
    lead: w.mapLead,
    fleet: { label: words.office.fleetTitle, href: 'index.html' },
    marks: built.flatMap(one => {
      const state = siteState(one.due)
      return one.at ? [{ title: one.title, href: link(one.id), ...one.at, state, word: w.states[state] }] : []
    }),
    states: (['bad', 'soon', 'unknown', 'good'] as const).map(state => ({ state, word: w.states[state] })),
    missing: built.filter(one => !one.at).map(({ id, title }) => ({ title, href: link(id) })),
    empty: w.mapNone,
    foot: words.office.foot(version, on)
  }
}
