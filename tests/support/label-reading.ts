import { LOOKS, chances, damaged, seen } from './damage.ts'
import type { Where } from './damage.ts'
import { byZxingTrying, jsqrOf } from './read-codes.ts'
import type { FoundCode, Picture } from './read-codes.ts'

/** How often each reader gets its text, of so many labels. */
export interface Reading {
  readonly labels: number
  readonly codes: number
  /** Codes read at the first look. */
  readonly zxingCode: number
  readonly jsqrCode: number
  /** Labels of which that reader gets one code in one of its looks. */
  readonly zxingLabel: number
  readonly jsqrLabel: number
  /** At least one reader gets one of the first two codes, the large ones. */
  readonly twoCodes: number
  /** At least one reader gets one of the codes. */
  readonly label: number
}

export interface LabelCode extends FoundCode {
  readonly modules: number
}

export interface ReadingWish {
  readonly labels: number
  readonly seed: number
  /** Both readers are asked about all codes of a label; else the first success ends it. */
  readonly thorough: boolean
  /** How often the phone looks at a code; 1 is a single still picture. */
  readonly looks: number
}

/** All codes of a label are damaged alike, each in its own way. The damage stays as it is while the phone moves. */
export async function readDamaged(
  codes: readonly LabelCode[],
  share: number,
  where: Where,
  { labels, seed, thorough, looks }: ReadingWish
): Promise<Reading> {
  const count = {
    labels,
    codes: labels * codes.length,
    ...{ zxingCode: 0, jsqrCode: 0, zxingLabel: 0, jsqrLabel: 0, twoCodes: 0, label: 0 }
  }
  const chance = chances(seed)
  for (let label = 0; label < labels; label += 1) {
    const dirty = codes.map(code =>
      damaged(code.picture, { ...code.code, modules: code.modules }, share, where, chance)
    )
    const read = { zxing: false, jsqr: false, two: false }
    for (const [at, picture] of dirty.entries()) {
      const text = codes[at]?.text ?? ''
      const { zxing, jsqr } = await readCode(picture, text, { looks, thorough }, chance)
      if (zxing === 1) count.zxingCode += 1
      if (jsqr === 1) count.jsqrCode += 1
      read.zxing ||= zxing > 0
      read.jsqr ||= jsqr > 0
      read.two ||= at < 2 && zxing + jsqr > 0
      if (!thorough && zxing + jsqr > 0) break
    }
    if (read.zxing) count.zxingLabel += 1
    if (read.jsqr) count.jsqrLabel += 1
    if (read.two) count.twoCodes += 1
    if (read.zxing || read.jsqr) count.label += 1
  }
  return count
}

/** The look, from 1, at which each reader has the text; 0 where it never does. */
async function readCode(
  picture: Picture,
  text: string,
  { looks, thorough }: Pick<ReadingWish, 'looks' | 'thorough'>,
  chance: () => number
): Promise<{ zxing: number; jsqr: number }> {
  const at = { zxing: 0, jsqr: 0 }
  for (let look = 1; look <= looks; look += 1) {
    const view = seen(picture, LOOKS[(look - 1) % LOOKS.length] ?? { turn: 4, scale: 1 }, chance)
    if (at.zxing === 0 && (await byZxingTrying(view, text))) at.zxing = look
    if (at.jsqr === 0 && (thorough || at.zxing === 0) && jsqrOf(view) === text) at.jsqr = look
    if (thorough ? at.zxing > 0 && at.jsqr > 0 : at.zxing + at.jsqr > 0) break
  }
  return at
}
