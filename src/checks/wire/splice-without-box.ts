import type { Splice } from '../../model/site.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName, stationsInService } from './subject.ts'

/** Words for a connection that keeps water out by itself. */
const SEALED =
  /(?<!not )\b(seal(ed|ing)?|gel|grease|resin|epoxy|potted|direct[- ]burial|watertight|waterproof|adhesive[- ]lined)\b/iu
const IN_A_SLEEVE = /\b(in|inside|within) (the |a )?([\w-]+ ){0,2}(sleeve|duct|conduit)\b/iu

export const spliceWithoutBox: SiteCheck = {
  card: {
    code: 'wire/splice-without-box',
    severity: 'warning',
    looksAt: 'A splice that is in no box and is not said to be sealed, and any splice inside a sleeve.',
    why: 'Direct current makes a wet splice corrode quickly, and one in the ground or in a sleeve cannot be found or opened again.',
    sources: ['nec-110-14', 'common-practice'],
    fix: 'Bring the splice up into a box, or make it with connectors that are listed for direct burial and note where it is.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1 }, splices: [{ where: "3 m west of VB2", kind: twist connector and tape }] }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1 }, splices: [{ box: VB2, kind: twist connector and tape }] }`
    }
  },
  run: ({ site }, report) => {
    for (const station of stationsInService(site)) {
      for (const splice of station.splices) {
        const trouble = troubleOf(splice)
        if (!trouble) continue
        report({
          subject: station.zone,
          at: at(splice),
          message: `${stationName(station)}: ${trouble.text}.`,
          fix: trouble.fix
        })
      }
    }
  }
}

function troubleOf({ box, where, kind }: Splice): { readonly text: string; readonly fix: string } | undefined {
  if (box !== undefined) return undefined
  const place = where === undefined ? '' : ` (${where})`
  if (where !== undefined && IN_A_SLEEVE.test(where))
    return {
      text: `a splice lies inside a sleeve${place}, out of reach`,
      fix: 'Pull it out to a box at the end of the sleeve, and write the box: splices: [{ box: VB2 }].'
    }
  if (kind !== undefined && SEALED.test(kind)) return undefined
  const made = kind === undefined ? 'how it is made is not stated' : `"${kind}" is not said to be sealed`
  return {
    text: `a splice${place} is in no box, and ${made}`,
    fix: 'Set a box over it and write "box: VB2", or make it again with sealed connectors listed for direct burial. The local electrical code decides.'
  }
}
