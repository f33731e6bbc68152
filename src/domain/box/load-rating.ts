import { AASHTO_CLASSES, EN_124_CLASSES, SCTE_TIERS } from '../../reference/box-loads.ts'

/** A rating as printed on a lid, as a place in its own ladder: they are different tests, so ladders are not turned into one another. */
export type LoadRating =
  | { readonly ladder: 'scte'; readonly step: number; readonly name: string }
  | { readonly ladder: 'en'; readonly step: number; readonly name: string }
  | { readonly ladder: 'aashto'; readonly step: number; readonly name: string }

/** "B125", "EN 124 D400", "Tier 15", "light duty", "H-20", "HS20". Undefined where the words are no rating known here. */
export function parseLoadRating(text: string): LoadRating | undefined {
  const words = text.toLowerCase().replaceAll(/[\s\u00a0_]+/gu, ' ')
  const en = EN_124_CLASSES.findIndex(one =>
    new RegExp(`\\b${one.name.toLowerCase().replace(/(\d)/u, '[ -]?$1')}\\b`, 'u').test(words)
  )
  if (en >= 0) return { ladder: 'en', step: en, name: EN_124_CLASSES[en]!.name }
  const aashto = /\bhs?[ -]?(20|25)\b/u.exec(words)?.[1]
  if (aashto)
    return { ladder: 'aashto', step: aashto === '20' ? 0 : 1, name: AASHTO_CLASSES[aashto === '20' ? 0 : 1].name }
  const tier = /\btier ?(5|8|15|22)\b/u.exec(words)?.[1]
  const scte = tier
    ? SCTE_TIERS.findIndex(one => one.tier === `Tier ${tier}`)
    : /\blight[ -]duty\b/u.test(words)
      ? 0
      : -1
  return scte < 0 ? undefined : { ladder: 'scte', step: scte, name: SCTE_TIERS[scte]!.tier }
}
