import { chances, damaged } from './damage.ts'
import type { Where } from './damage.ts'
import { byZxing, jsqrOf } from './read-codes.ts'
import type { FoundCode } from './read-codes.ts'

/** How often each reader gets its text, of so many labels with two codes each. */
export interface Reading {
  readonly labels: number
  readonly zxingCode: number
  readonly jsqrCode: number
  readonly zxingLabel: number
  readonly jsqrLabel: number
  /** At least one of the two readers gets one of the two codes. */
  readonly label: number
}

/** Both codes of a label are damaged alike, each in its own way. `thorough` asks both readers about both codes; else the first success ends a case. */
export async function readDamaged(
  codes: readonly FoundCode[],
  modules: number,
  share: number,
  where: Where,
  { labels, seed, thorough }: { readonly labels: number; readonly seed: number; readonly thorough: boolean }
): Promise<Reading> {
  const count = { labels, zxingCode: 0, jsqrCode: 0, zxingLabel: 0, jsqrLabel: 0, label: 0 }
  const chance = chances(seed)
  for (let label = 0; label < labels; label += 1) {
    const pair = [0, 1].map(at => {
      const { picture, code, text } = codes[(label * 2 + at) % codes.length] as FoundCode
      return { text, picture: damaged(picture, { ...code, modules }, share, where, chance) }
    })
    let [zxing, jsqr] = [0, 0]
    for (const { text, picture } of pair) {
      if (!thorough && zxing + jsqr > 0) break
      if ((await byZxing(picture)).includes(text)) zxing += 1
      if ((thorough || zxing === 0) && jsqrOf(picture) === text) jsqr += 1
    }
    count.zxingCode += zxing
    count.jsqrCode += jsqr
    if (zxing > 0) count.zxingLabel += 1
    if (jsqr > 0) count.jsqrLabel += 1
    if (zxing + jsqr > 0) count.label += 1
  }
  return count
}
