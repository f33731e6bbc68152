import { describe, expect, it } from 'vitest'
import sharp from 'sharp'
import type { Sharp } from 'sharp'
import { Refusal } from '../../src/base/refusal.ts'
import { LONGEST_PX, readyPicture } from '../../src/build/picture.ts'
import { PROJECT } from '../e2e/support.ts'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

const RED = { r: 220, g: 20, b: 20 }
const BLUE = { r: 20, g: 20, b: 220 }

/** Red on the left, blue on the right. */
async function twoColors(width: number, height: number): Promise<Sharp> {
  const half = { width: Math.floor(width / 2), height, channels: 3 as const, background: BLUE }
  const right = await sharp({ create: half }).png().toBuffer()
  return sharp({ create: { width, height, channels: 3, background: RED } }).composite([
    { input: right, left: width - half.width, top: 0 }
  ])
}

const fromCamera = async (width: number, height: number): Promise<Uint8Array> =>
  (await twoColors(width, height))
    .jpeg()
    .withExif({
      IFD0: { Make: 'Sample Camera', Orientation: '6' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '37/1 48/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '122/1 24/1 0/1' }
    })
    .withMetadata({ orientation: 6 })
    .toBuffer()

describe('a photograph as a camera writes it', () => {
  it('loses its place and everything else that the camera wrote, and is turned upright', async () => {
    const taken = await fromCamera(400, 200)
    const before = await sharp(taken).metadata()
    expect(before.orientation).toBe(6)
    expect(before.exif?.length ?? 0).toBeGreaterThan(50)
    const ready = await readyPicture(taken, 'taken.jpg')
    const after = await sharp(ready).metadata()
    expect([after.width, after.height]).toEqual([200, 400])
    expect([after.exif, after.xmp, after.iptc, after.orientation]).toEqual([undefined, undefined, undefined, undefined])
    const text = Buffer.from(ready).toString('latin1')
    for (const word of ['Exif', 'GPS', 'Sample Camera']) expect(text).not.toContain(word)
    // Orientation 6: what the sensor saw on the left stands on top.
    const { data, info } = await sharp(ready).raw().toBuffer({ resolveWithObject: true })
    const colorAt = (y: number) => [0, 2].map(channel => data[(y * info.width + 100) * info.channels + channel] ?? 0)
    const [top, foot] = [colorAt(20), colorAt(380)]
    expect((top[0] ?? 0) > (top[1] ?? 0)).toBe(true)
    expect((foot[1] ?? 0) > (foot[0] ?? 0)).toBe(true)
  })

  it('is no larger than it prints, and the same each time', async () => {
    const large = await fromCamera(LONGEST_PX * 2, LONGEST_PX)
    const ready = await readyPicture(large, 'large.jpg')
    const { width, height } = await sharp(ready).metadata()
    expect([width, height]).toEqual([LONGEST_PX / 2, LONGEST_PX])
    expect(Buffer.from(ready).equals(Buffer.from(await readyPicture(large, 'large.jpg')))).toBe(true)
  })

  it('one exactly as large as allowed, and one that is ready, keep their bytes', async () => {
    const exact = await (await twoColors(LONGEST_PX, 100)).jpeg().toBuffer()
    expect((await readyPicture(exact, 'exact.jpg')) === exact).toBe(true)
    const beyond = await (await twoColors(LONGEST_PX + 1, 100)).jpeg().toBuffer()
    expect((await readyPicture(beyond, 'beyond.jpg')) === beyond).toBe(false)
    const demo = readFileSync(join(PROJECT, 'sites/harbour-steps/photos/meter.jpg'))
    expect((await readyPicture(demo, 'meter.jpg')) === demo).toBe(true)
  })

  it('as PNG: words in it go, the picture stays', async () => {
    const written = await (
      await twoColors(60, 40)
    )
      .png()
      .withExif({ IFD0: { Copyright: 'Sample Camera' } })
      .toBuffer()
    const ready = await readyPicture(written, 'written.png')
    expect(Buffer.from(ready).toString('latin1')).not.toContain('Sample Camera')
    expect((await sharp(ready).metadata()).format).toBe('png')
  })

  it('one that breaks off is refused by name', async () => {
    const broken = (await fromCamera(400, 200)).slice(0, 300)
    await expect(readyPicture(broken, 'broken.jpg')).rejects.toThrow(Refusal)
  })
})
