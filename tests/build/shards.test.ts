import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { checkFleet } from '../../src/build/check-fleet.ts'
import { mergeChecks } from '../../src/build/merge-checks.ts'
import { mergeShards } from '../../src/build/merge-shards.ts'
import { buildFleet } from '../../src/build/pipeline.ts'
import { parseShard, shardOf } from '../../src/build/shard.ts'
import { findingsJson } from '../../src/report/json.ts'
import { date } from '../../src/units/date.ts'
import { filesIn, temporaryFolder } from './temporary-folder.ts'

const ON = date('2026-05-01')
const temporary = temporaryFolder()
const build = (out: string, shard?: string) =>
  buildFleet({
    sites: 'sites',
    out: temporary.path(out),
    on: ON,
    mark: 'one',
    ...(shard === undefined ? {} : { shard: parseShard(shard) })
  })
const parts = (...names: readonly string[]) => names.map(name => temporary.path(name))

describe('a build in parts', () => {
  it('merges to the bytes of a build of the whole, whatever the order of the parts', async () => {
    await build('whole')
    for (const [index, out] of ['a', 'b', 'c'].entries()) await build(out, `${index + 1}/3`)
    const merged = await mergeShards(parts('c', 'a', 'b'), temporary.path('merged'))
    expect(merged.parts).toBe(3)
    const [whole, of] = [filesIn(temporary.path('whole')), filesIn(temporary.path('merged'))]
    expect(Object.keys(of)).toEqual(Object.keys(whole))
    expect(of).toEqual(whole)
    expect(readFileSync(temporary.path('merged/.underlid'))).toEqual(readFileSync(temporary.path('whole/.underlid')))
  })

  it('refuses a part that is missing, named twice, of another day or no part at all', async () => {
    await build('a', '1/2')
    await build('b', '2/2')
    const out = temporary.path('merged')
    await expect(mergeShards(parts('a'), out)).rejects.toThrow('2 is missing')
    await expect(mergeShards(parts('a', 'b', 'a'), out)).rejects.toThrow('named twice')
    const other = { sites: 'sites', out: temporary.path('c'), on: date('2026-05-02'), mark: 'one' }
    await buildFleet({ ...other, shard: { index: 2, of: 2 } })
    await expect(mergeShards(parts('a', 'c'), out)).rejects.toThrow('not parts of one build')
    mkdirSync(temporary.path('empty'))
    await expect(mergeShards(parts('a', 'empty'), out)).rejects.toThrow('no part of a build')
  })
})

describe('a fleet whose register is gone', () => {
  const sites = () => temporary.path('sites')
  const built = (out: string, shard?: string) =>
    buildFleet({
      sites: sites(),
      out: temporary.path(out),
      on: ON,
      mark: 'one',
      ...(shard === undefined ? {} : { shard: parseShard(shard) })
    })
  const gonePage = (out: string) => temporary.path(out, 'public/B/ES5ZR42/index.html')

  it('takes no page of a retired tag away: neither a build nor a merge writes anything', async () => {
    for (const name of ['kestrel-cross', '_shared'])
      cpSync(join('sites', name), join(sites(), name), { recursive: true })
    const [head, ...lines] = readFileSync('sites/tags.csv', 'utf8').split('\n')
    const own = [head, ...lines.filter(line => line.includes(',kestrel-cross,'))].join('\n')
    const register = join(sites(), 'tags.csv')
    writeFileSync(register, `${own}\n`)
    await built('dist')
    expect(existsSync(gonePage('dist'))).toBe(true)
    const before = filesIn(temporary.path('dist'))
    for (const lost of [undefined, `${head}\n`]) {
      rmSync(register)
      if (lost !== undefined) writeFileSync(register, lost)
      await expect(built('dist')).rejects.toThrow('ES5ZR42')
      await built('a', '1/2')
      await built('b', '2/2')
      await expect(mergeShards(parts('a', 'b'), temporary.path('dist'))).rejects.toThrow('ES5ZR42')
      expect(filesIn(temporary.path('dist'))).toEqual(before)
      writeFileSync(register, `${own}\n`)
    }
    rmSync(register)
    writeFileSync(register, 'no,columns\nof,ours\n')
    await expect(built('c', '1/2')).rejects.toThrow('always keeps its page')
    rmSync(register)
    // With nothing to lose it is built.
    await built('fresh')
    expect(existsSync(gonePage('fresh'))).toBe(false)
  })
})

describe('a check in parts', () => {
  it('merges to the text of a check of the whole', async () => {
    const wish = { sites: 'sites', out: temporary.path('none'), on: ON }
    const files = await Promise.all(
      [1, 2, 3, 4].map(async index => {
        const { findings } = await checkFleet({ ...wish, shard: { index, of: 4 } })
        const file = temporary.path(`${index}.json`)
        writeFileSync(file, JSON.stringify(findingsJson(findings, ON)))
        return file
      })
    )
    const whole = await checkFleet(wish)
    expect(JSON.stringify(mergeChecks(files.reverse()))).toBe(JSON.stringify(findingsJson(whole.findings, ON)))
  })
})

describe('the parts of a list', () => {
  it.each([
    [7, 3],
    [2, 8],
    [0, 2],
    [1000, 7]
  ])('of %i things in %i parts are the list again', (count, of) => {
    const all = Array.from({ length: count }, (_, n) => n)
    const shards = Array.from({ length: of }, (_, n) => shardOf(all, { index: n + 1, of }))
    expect(shards.flat()).toEqual(all)
    const sizes = shards.map(one => one.length)
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1)
  })

  it.each(['0/8', '9/8', '2', '2/0', 'a/b', '-1/2', '1/2/3'])('refuses %s', text => {
    expect(() => parseShard(text)).toThrow('no part of a whole')
  })
})
