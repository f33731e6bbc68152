import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { PDFiumLibrary } from '@hyzyla/pdfium'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'

/** Pixels, four bytes each: red, green, blue, alpha. */
export interface Picture {
  readonly data: Uint8ClampedArray<ArrayBuffer>
  readonly width: number
  readonly height: number
}

const require = createRequire(import.meta.url)
const jsqr = require('jsqr') as (
  data: Uint8ClampedArray,
  width: number,
  height: number
) => { readonly data: string } | null

// The reader looks for its module on the network unless it is handed over.
const wasm = readFileSync(require.resolve('zxing-wasm/reader/zxing_reader.wasm'))
prepareZXingModule({
  overrides: { wasmBinary: wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength) as ArrayBuffer }
})

/** Pages of a PDF as pixels. The renderer is none of those that print. */
export async function picturesOf(file: string, dpi = 300): Promise<Picture[]> {
  const library = await PDFiumLibrary.init()
  const document = await library.loadDocument(readFileSync(file))
  const pictures: Picture[] = []
  for (const page of document.pages()) {
    const { data, width, height } = await page.render({ scale: dpi / 72, render: 'bitmap' })
    pictures.push({ data: new Uint8ClampedArray(data), width, height })
  }
  document.destroy()
  library.destroy()
  return pictures
}

/** The texts of all codes of a picture, as often as they stand there. */
export async function byZxing({ data, width, height }: Picture): Promise<string[]> {
  const picture = { data, width, height, colorSpace: 'srgb' } as ImageData
  const found = await readBarcodes(picture, { formats: ['QRCode'], tryHarder: true, maxNumberOfSymbols: 255 })
  return found.map(one => one.text)
}

/** As a phone's own reader does it: the usual way first, then with one threshold for the whole picture, then with specks closed. */
export async function byZxingTrying({ data, width, height }: Picture, text: string): Promise<boolean> {
  const picture = { data, width, height, colorSpace: 'srgb' } as ImageData
  for (const way of [{}, { binarizer: 'GlobalHistogram' }, { tryDenoise: true }] as const) {
    const found = await readBarcodes(picture, { formats: ['QRCode'], tryHarder: true, maxNumberOfSymbols: 1, ...way })
    if (found.some(one => one.text === text)) return true
  }
  return false
}

/**
 * The other reader finds one code a picture, so it is handed a cut-out round each place where the first saw one, with the quiet zone and
 * a little more. Each text once; an empty list where it reads nothing.
 */
export async function byJsqr(picture: Picture): Promise<string[]> {
  const texts = new Set<string>()
  for (const place of await placesOf(picture)) {
    const cut = cutOut(picture, place)
    const code = jsqr(cut.data, cut.width, cut.height)
    if (code) texts.add(code.data)
  }
  return [...texts]
}

export interface Place {
  readonly left: number
  readonly top: number
  readonly side: number
}

async function placesOf({ data, width, height }: Picture): Promise<Place[]> {
  const picture = { data, width, height, colorSpace: 'srgb' } as ImageData
  const found = await readBarcodes(picture, { formats: ['QRCode'], tryHarder: true, maxNumberOfSymbols: 255 })
  return found.map(({ position }) => {
    const xs = [position.topLeft.x, position.topRight.x, position.bottomLeft.x, position.bottomRight.x]
    const ys = [position.topLeft.y, position.topRight.y, position.bottomLeft.y, position.bottomRight.y]
    const side = Math.max(...xs) - Math.min(...xs)
    const margin = Math.round(side * 0.15)
    return {
      left: Math.max(0, Math.min(...xs) - margin),
      top: Math.max(0, Math.min(...ys) - margin),
      side: side + 2 * margin
    }
  })
}

/** A poor photocopy: grey, low contrast, grain that is the same each time. */
export function photocopy({ data, width, height }: Picture): Picture {
  const copy = new Uint8ClampedArray(data.length)
  let seed = 7
  for (let index = 0; index < data.length; index += 4) {
    seed = (seed * 1103515245 + 12345) % 2147483648
    const grey = 0.3 * (data[index] ?? 0) + 0.59 * (data[index + 1] ?? 0) + 0.11 * (data[index + 2] ?? 0)
    copy.fill(70 + grey * 0.55 + (seed % 17) - 8, index, index + 3)
    copy[index + 3] = 255
  }
  return { data: copy, width, height }
}

export function cutOut({ data, width, height }: Picture, { left, top, side }: Place): Picture {
  const [w, h] = [Math.min(side, width - left), Math.min(side, height - top)]
  const cut = new Uint8ClampedArray(w * h * 4)
  for (let row = 0; row < h; row += 1) {
    const from = ((top + row) * width + left) * 4
    cut.set(data.subarray(from, from + w * 4), row * w * 4)
  }
  return { data: cut, width: w, height: h }
}

/** What the other reader makes of a picture that is nearly all code. */
export function jsqrOf({ data, width, height }: Picture): string | undefined {
  return jsqr(data, width, height)?.data
}

export interface FoundCode {
  readonly text: string
  /** The code and a margin of 15 % of its side, cut out of the picture. */
  readonly picture: Picture
  readonly code: { readonly left: number; readonly top: number; readonly side: number }
}

/** Every code of a picture, each in a picture of its own, as when a phone is held over it. */
export async function cutOutCodes(picture: Picture): Promise<FoundCode[]> {
  const image = { ...picture, colorSpace: 'srgb' } as ImageData
  const found = await readBarcodes(image, { formats: ['QRCode'], tryHarder: true, maxNumberOfSymbols: 255 })
  return found.map(({ text, position }) => {
    const { topLeft, topRight } = position
    const side = topRight.x - topLeft.x
    const margin = Math.round(side * 0.15)
    const place = { left: topLeft.x - margin, top: topLeft.y - margin, side: side + 2 * margin }
    return { text, picture: cutOut(picture, place), code: { left: margin, top: margin, side } }
  })
}
