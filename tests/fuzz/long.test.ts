import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { describe, expect, it } from 'vitest'
import { MOST_SIGNS } from '../../src/load/schema/field.ts'
import { roughPrivateWords } from '../../src/load/rough-private.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from '../build/temporary-folder.ts'
import { seeds } from './seeds.ts'
import { MOST_SECONDS, tryFolder } from './try-case.ts'

const folder = temporaryFolder()
const [base] = seeds()
const plain = base?.image.get('base/site.md')
const TEXT = plain?.kind === 'file' ? plain.bytes.toString('utf8') : ''

/** Values of keys that are read in different ways, each as long as one may be, together nearly as much as a file may hold. */
const PLACES = ['north bed', '4.2 m from lamp post 7', 'shrubs, drip', '120 m²', '25 min', '6.1 ohm', 'shed hook 4']

function harmedBy(pump: string): string {
  const long = pump.repeat((MOST_SIGNS - 100) / pump.length)
  return PLACES.reduce((text, place) => text.replace(new RegExp(`"?${place}"?`, 'u'), `"${place}${long}x"`), TEXT)
}

async function tried(text: string): Promise<{ readonly wrong: readonly string[]; readonly outcome: string }> {
  for (const [path, entry] of base?.image ?? []) {
    mkdirSync(dirname(folder.path(path)), { recursive: true })
    writeFileSync(folder.path(path), entry.kind === 'file' ? entry.bytes : '')
  }
  writeFileSync(folder.path('base/site.md'), text)
  return tryFolder(folder.path(), date('2026-05-01'), true)
}

describe('what is long', () => {
  it.each([' ', 'a-', '1,', '- ', '1 '])('values full of "%s" are read within the time of a site', async pump => {
    const { wrong, outcome } = await tried(harmedBy(pump))
    expect(wrong).toEqual([])
    expect(outcome).toMatch(/read|told/u)
  })

  it.each(['\n', '\r\n', ' \n', '#', '{ ', '- '])(
    'keys full of %j that cannot be understood are told of',
    async pump => {
      const { wrong, outcome } = await tried(TEXT.replace('title: Base Site', `title: "${pump.repeat(28_000)}`))
      expect(wrong).toEqual([])
      expect(outcome).toBe('told')
    }
  )

  it('prose of hundreds of thousands of headings is told of, and as much of it as a file may hold is read', async () => {
    expect(await tried(`${TEXT}${'# \n'.repeat(200_000)}`)).toMatchObject({ wrong: [], outcome: 'told' })
    expect(await tried(`${TEXT}${'# \n'.repeat(85_000)}`)).toMatchObject({ wrong: [], outcome: 'read' })
  })

  it.each([' ', 'a-', '- ', '"', 'private:', '{', 'a: '])(
    'a line full of "%s" is looked through for what is private',
    pump => {
      const began = process.cpuUsage()
      roughPrivateWords({ text: `private: {${pump.repeat(300_000 / pump.length)}x` })
      const { user } = process.cpuUsage(began)
      expect(user / 1e6).toBeLessThan(MOST_SECONDS)
    }
  )
})
