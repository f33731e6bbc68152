import { isAbsent } from '../../base/absent.ts'
import { statedExposures } from '../../domain/box/box-exposure.ts'
import { WATER_EXPOSURES, ingressCovers } from '../../domain/box/ingress.ts'
import type { WaterExposure } from '../../domain/box/ingress.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { controllersInService } from '../wire/subject.ts'

/** A code that covers each exposure, to write and to ask for. */
const ENOUGH: Readonly<Record<WaterExposure, string>> = {
  rain: 'IP54',
  jets: 'IP65',
  'powerful jets': 'IP66',
  'temporary immersion': 'IP67',
  'continuous immersion': 'IP68'
}

export const ingressRating: SiteCheck = {
  card: {
    code: 'box/ingress-rating',
    severity: 'warning',
    looksAt: 'The ingress code of a controller, against what the site file says water does to the place that it is in.',
    why: 'IP67 and IP68 are tried under water and not with jets; only a code such as IP66/IP68 covers both.',
    sources: ['iec-60529', 'nema-250'],
    fix: 'Fit a unit whose code covers it, or keep the water away from the box.',
    worked: {
      example: `boxes:
  - { id: VB1, where: north bed, hazards: [hosed down by the street crew] }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md }`,
      instead: `boxes:
  - { id: VB1, where: north bed, hazards: [floods after rain] }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md }`
    }
  },
  run: ({ site }, report) => {
    for (const controller of controllersInService(site)) {
      const { id, sheet, where, box: boxId } = controller
      const code = sheet?.ingress
      if (!sheet || code === undefined) continue
      const box = site.boxes.find(one => one.id === boxId)
      const all = statedExposures([where, box?.where, ...(box?.hazards ?? [])])
      const open = all.filter(({ exposure }) => ingressCovers(code, exposure) !== true)
      const [first] = open
      if (!first) continue
      const unknown = isAbsent(ingressCovers(code, first.exposure))
      const verdict = unknown
        ? `"${code}" is no ingress code known here`
        : `${code} does not cover ${open.map(one => one.exposure).join(' and ')}`
      report({
        subject: id,
        at: box ? at(box, box.hazards.includes(first.said) ? 'hazards' : 'where') : at(controller, 'where'),
        ...(unknown ? { severity: 'note' as const } : {}),
        message: `${id}: ${verdict}, and the file says "${open.map(one => one.said).join('" and "')}".`,
        fix: `Fit a unit rated ${enoughFor(
          code,
          all.map(one => one.exposure)
        )}, or keep the water away from it.`,
        values: { ingress: code, exposure: open.map(one => one.exposure).join(', ') },
        related: [{ at: at(sheet, 'ingress'), note: 'the code on the sheet' }]
      })
    }
  }
}

/** What the unit must meet, and what it meets now. Jets and immersion are tried apart, so such a unit carries two codes. */
function enoughFor(code: string, stated: readonly WaterExposure[]): string {
  const kept = WATER_EXPOSURES.filter(exposure => ingressCovers(code, exposure) === true)
  const codes = [...kept, ...stated].map(exposure => ENOUGH[exposure]).sort()
  const jets = codes.filter(one => one < 'IP67').at(-1)
  const immersion = codes.filter(one => one >= 'IP67').at(-1)
  const needsJets = jets !== undefined && (jets > ENOUGH.rain || immersion === undefined)
  return [needsJets ? jets : undefined, immersion].filter(one => one !== undefined).join('/')
}
