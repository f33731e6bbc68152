import { pathToFileURL } from 'node:url'
import { spareQr, tagQr } from '../../src/binder/tag-url.ts'
import { readDamaged } from '../support/label-reading.ts'
import { printedCode } from '../support/printed-code.ts'

/*
 * How often damaged lid labels are read, at 300 dots to the inch: npx tsx tests/bench/label-damage.bench.ts 300
 * Each of the three codes of a label loses the whole share, in its own way.
 */

const TEXT = 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/'
const [, self = '', count = '300', seed = '1', thorough = 'yes'] = process.argv

async function bench(): Promise<void> {
  const codes = [tagQr(TEXT), tagQr(TEXT), spareQr(TEXT)].map(printedCode)
  const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`.padStart(9)
  process.stdout.write(
    `${`${count} labels a row; codes of ${codes.map(one => one.modules).join(', ')} modules; 6 looks`}\n`
  )
  process.stdout.write(`${'damage            code, first look    label, 6 looks      either reader'}\n`)
  process.stdout.write(`${'                  zxing     jsqr      zxing     jsqr      two codes  all three'}\n`)
  for (const where of ['data area', 'anywhere'] as const)
    for (const share of [0.05, 0.1, 0.15]) {
      const wish = { labels: Number(count), seed: Number(seed) + share * 1000, thorough: thorough === 'yes', looks: 6 }
      const read = await readDamaged(codes, share, where, wish)
      const { labels } = read
      const cells = [
        percent(read.zxingCode, read.codes),
        percent(read.jsqrCode, read.codes),
        percent(read.zxingLabel, labels),
        percent(read.jsqrLabel, labels),
        percent(read.twoCodes, labels),
        percent(read.label, labels)
      ]
      process.stdout.write(`${`${String(share * 100).padStart(3)} % ${where.padEnd(10)} ${cells.join(' ')}`}\n`)
    }
}

if (import.meta.url === pathToFileURL(self).href) await bench()
