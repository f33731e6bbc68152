import { makeTag, TAG_ALPHABET, TAG_LENGTH } from './tag.ts'

/** What has ever carried a tag: registered ones, and those that stand in site files. */
interface Holders {
  readonly register: readonly { readonly tag: string }[]
  readonly sites: readonly { readonly boxes: readonly { readonly tag?: string | undefined }[] }[]
}

/** A tag that neither the register nor any site holds: one that was issued is never given again. `randomBelow(n)` gives 0 to n - 1. */
export function freshTag({ register, sites }: Holders, randomBelow: (below: number) => number): string {
  const taken = new Set([...register.map(one => one.tag), ...sites.flatMap(site => site.boxes.map(box => box.tag))])
  for (;;) {
    const tag = makeTag(Array.from({ length: TAG_LENGTH - 1 }, () => randomBelow(TAG_ALPHABET.length)))
    if (!taken.has(tag)) return tag
  }
}
