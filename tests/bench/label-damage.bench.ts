import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { tagQr } from '../../src/binder/tag-url.ts'
import { readDamaged } from '../support/label-reading.ts'
import { cutOutCodes, picturesOf } from '../support/read-codes.ts'

/*
 * How often damaged lid labels are read: npx underlid print kestrel-cross --labels, then
 * npx tsx tests/bench/label-damage.bench.ts dist/print/kestrel-cross-labels.pdf 300
 */

const [, self = '', file = join('dist', 'print', 'kestrel-cross-labels.pdf'), count = '300'] = process.argv

async function bench(): Promise<void> {
  const [sheet] = await picturesOf(file)
  const codes = sheet ? await cutOutCodes(sheet) : []
  const modules = 17 + 4 * tagQr(codes[0]?.text ?? '').version
  const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`.padStart(8)
  console.log(`${codes.length} codes of ${modules} modules, 300 dpi, ${count} labels a row; each has two codes`)
  console.log('damage           code zxing  code jsqr  label zxing  label jsqr  label either')
  for (const where of ['data area', 'anywhere'] as const)
    for (const share of [0.05, 0.1, 0.15]) {
      const wish = { labels: Number(count), seed: 1 + share * 1000, thorough: true }
      const read = await readDamaged(codes, modules, share, where, wish)
      const { labels } = read
      const cells = [
        percent(read.zxingCode, 2 * labels),
        percent(read.jsqrCode, 2 * labels),
        percent(read.zxingLabel, labels),
        percent(read.jsqrLabel, labels),
        percent(read.label, labels)
      ]
      console.log(`${String(share * 100).padStart(3)} % ${where.padEnd(10)} ${cells.join('    ')}`)
    }
}

if (import.meta.url === pathToFileURL(self).href) await bench()
