import { LOOKS, chances, damaged, seen } from './damage.ts'
import type { Where } from './damage.ts'
import { labelPicture } from './label-picture.ts'
import { byZxingTrying, cutOut, jsqrOf } from './read-codes.ts'
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
  /** How often the phone looks at a code; 1 is a single still picture. */
  readonly looks: number
  /** Where it is only asked whether the label is read at all, the first success ends it: several times as fast. */
  readonly quick?: boolean
}

/** 'face of the label': the share of its whole face is lost, wherever that is; else each code loses the whole share, in its own way. */
export type Harm = Where | 'face of the label'

/** Reads labels that are harmed. The damage stays as it is while the phone moves. */
export async function readDamaged(
  codes: readonly LabelCode[],
  share: number,
  harm: Harm,
  { labels, seed, looks, quick = false }: ReadingWish
): Promise<Reading> {
  const count = { zxingCode: 0, jsqrCode: 0, zxingLabel: 0, jsqrLabel: 0, twoCodes: 0, label: 0 }
  const chance = chances(seed)
  for (let label = 0; label < labels; label += 1) {
    const pictures = harm === 'face of the label' ? faces(codes, share, chance) : each(codes, share, harm, chance)
    const dirty = pictures.map((picture, at) => ({ picture, text: codes[at]?.text ?? '', zxing: false, jsqr: false }))
    if (quick) {
      if (await readAny(dirty, looks, chance)) count.label += 1
      continue
    }
    await lookAt(dirty, 0, chance, { zxing: true, jsqr: true })
    count.zxingCode += dirty.filter(one => one.zxing).length
    count.jsqrCode += dirty.filter(one => one.jsqr).length
    await lookOn(dirty, looks, chance)
    const large = dirty.slice(0, 2)
    if (dirty.some(one => one.zxing)) count.zxingLabel += 1
    if (dirty.some(one => one.jsqr)) count.jsqrLabel += 1
    if (large.some(isRead)) count.twoCodes += 1
    if (dirty.some(isRead)) count.label += 1
  }
  return { labels, codes: labels * codes.length, ...count }
}

interface DirtyCode {
  readonly picture: Picture
  readonly text: string
  zxing: boolean
  jsqr: boolean
}

const isRead = ({ zxing, jsqr }: DirtyCode): boolean => zxing || jsqr

function each(codes: readonly LabelCode[], share: number, where: Where, chance: () => number): Picture[] {
  return codes.map(code => damaged(code.picture, { ...code.code, modules: code.modules }, share, where, chance))
}

function faces(codes: readonly LabelCode[], share: number, chance: () => number): Picture[] {
  const { picture, places } = labelPicture(codes)
  const whole = { left: 0, top: 0, side: picture.width, height: picture.height, modules: 1 }
  const dirty = damaged(picture, whole, share, 'anywhere', chance)
  return places.map(place => cutOut(dirty, place))
}

/** One look at each code by the readers that are asked. */
async function lookAt(
  dirty: readonly DirtyCode[],
  look: number,
  chance: () => number,
  ask: { readonly zxing: boolean; readonly jsqr: boolean }
): Promise<void> {
  for (const one of dirty) {
    const view = seen(one.picture, LOOKS[look % LOOKS.length] ?? { turn: 4, scale: 1 }, chance)
    if (ask.zxing && !one.zxing) one.zxing = await byZxingTrying(view, one.text)
    if (ask.jsqr && !one.jsqr) one.jsqr = jsqrOf(view) === one.text
  }
}

/** More looks for a reader that has none of the codes yet, and at the large ones while nobody has either. */
async function lookOn(dirty: readonly DirtyCode[], looks: number, chance: () => number): Promise<void> {
  const large = dirty.slice(0, 2)
  for (let look = 1; look < looks; look += 1) {
    const ask = { zxing: !dirty.some(one => one.zxing), jsqr: !dirty.some(one => one.jsqr) }
    if (ask.zxing || ask.jsqr) await lookAt(dirty, look, chance, ask)
    else if (!large.some(isRead)) await lookAt(large, look, chance, { zxing: true, jsqr: true })
    else return
  }
}

/** Whether anything is read of a label: code after code at each look, as a hand moves over it. */
async function readAny(dirty: readonly DirtyCode[], looks: number, chance: () => number): Promise<boolean> {
  for (let look = 0; look < looks; look += 1)
    for (const one of dirty) {
      await lookAt([one], look, chance, { zxing: true, jsqr: false })
      if (one.zxing) return true
      await lookAt([one], look, chance, { zxing: false, jsqr: true })
      if (one.jsqr) return true
    }
  return false
}
