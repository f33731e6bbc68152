import { pathToFileURL } from 'node:url'
import { spareQr, tagQr } from '../../src/binder/tag-url.ts'
import { readDamaged } from '../support/label-reading.ts'
import type { Harm, Reading } from '../support/label-reading.ts'
import { printedCode } from '../support/printed-code.ts'

/*
 * How often damaged lid labels are read, at 300 dots to the inch: npx tsx tests/bench/label-damage.bench.ts 300 1
 * That is labels a row (where hardly anything is left to read, a fifth of them) and the seed; a third word takes only the rows of one kind of harm.
 *
 * A label has its code twice large and twice small. On the data area and anywhere each of the four loses the whole share, in its own way; on the
 * face, the label as a whole loses it, wherever that falls. What is lost is counted pixel by pixel. The damage stays while a phone looks six times:
 * square and near first, then turned by up to 45 degrees, nearer and farther, with up to 4 % of perspective and grain. A phone looks thirty
 * times a second.
 */

const TEXT = 'HTTPS://EXAMPLE.ORG/B/7KQ3F9X/'
const LOOKS = 6
const [, self = '', count = '300', seed = '1', only = ''] = process.argv

const HARMS: readonly Harm[] = ['data area', 'anywhere', 'face of the label']
const SHARES = [0.05, 0.1, 0.15]

const HEAD = [
  '                                  a code, first look    a label, six looks    a label, either reader',
  'share and where          labels      zxing      jsqr       zxing      jsqr   two large    all four'
]

async function bench(): Promise<void> {
  const codes = [tagQr(TEXT), tagQr(TEXT), spareQr(TEXT), spareQr(TEXT)].map(printedCode)
  const say = (line: string) => process.stdout.write(`${line}\n`)
  say(`Codes of ${codes.map(one => one.modules).join(', ')} modules; seed ${seed}`)
  for (const line of HEAD) say(line)
  for (const harm of HARMS.filter(one => one.startsWith(only)))
    for (const share of SHARES) {
      const hard = harm !== 'data area' && share > 0.05
      const labels = Math.ceil(Number(count) / (hard ? 5 : 1))
      say(row(share, harm, await readDamaged(codes, share, harm, { labels, seed: Number(seed), looks: LOOKS })))
    }
}

function row(share: number, harm: Harm, read: Reading): string {
  const { labels, codes } = read
  const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`.padStart(10)
  const cells = [
    percent(read.zxingCode, codes),
    percent(read.jsqrCode, codes),
    percent(read.zxingLabel, labels),
    percent(read.jsqrLabel, labels),
    percent(read.twoCodes, labels),
    percent(read.label, labels)
  ]
  return `${`${Math.round(share * 100)} % ${harm}`.padEnd(24)} ${String(labels).padStart(6)} ${cells.join(' ')}`
}

if (import.meta.url === pathToFileURL(self).href) await bench()
