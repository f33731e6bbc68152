import type { FleetInput } from './make-fleet-page.ts'
import { show } from '../units/show.ts'

/** What each site may use and is set to use. Links are relative to office/. */
export interface WaterPage {
  readonly language: string
  readonly title: string
  readonly asOf: string
  readonly lead: string
  readonly fleet: { readonly label: string; readonly href: string }
  readonly rows: readonly {
    readonly title: string
    readonly href: string
    readonly allowed: string
    readonly programmed: string
    readonly share: string
    /** Width of the bar as a share of the widest, and of the mark of the budget in it, in percent. */
    readonly bar?: { readonly width: number; readonly mark: number; readonly over: boolean }
    readonly note: string
  }[]
  readonly foot: string
}

/** Those nearest to their budget or over it first; sites without a budget last. */
export function makeWaterPage({ built, on, words, version }: FleetInput): WaterPage {
  const w = words.fleet
  const shares = built.map(({ water: { allowanceM3, programmedM3 } }) =>
    allowanceM3 !== undefined && allowanceM3 > 0 ? programmedM3 / allowanceM3 : undefined
  )
  const widest = Math.max(1.1, ...shares.flatMap(share => share ?? []))
  const order = built.map((_, index) => index).sort((a, b) => (shares[b] ?? -1) - (shares[a] ?? -1))
  return {
    language: words.language,
    title: w.waterTitle,
    asOf: words.office.asOf(on),
    lead: w.waterLead,
    fleet: { label: words.office.fleetTitle, href: 'index.html' },
    rows: order.flatMap(index => {
      const [site, share] = [built[index], shares[index]]
      if (!site) return []
      const { allowanceM3, programmedM3, flowNotStated, units } = site.water
      return [
        {
          title: site.title,
          href: `${site.id}/index.html`,
          allowed: allowanceM3 === undefined ? w.noBudget : show(allowanceM3, 'volume', units),
          programmed: show(programmedM3, 'volume', units),
          share: share === undefined ? '–' : `${Math.round(share * 100)}\u00a0%`,
          ...(share === undefined
            ? {}
            : { bar: { width: (share / widest) * 100, mark: 100 / widest, over: share > 1 } }),
          note: flowNotStated > 0 ? w.noFlow(flowNotStated) : ''
        }
      ]
    }),
    foot: words.office.foot(version, on)
  }
}
