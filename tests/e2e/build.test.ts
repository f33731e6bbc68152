import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { ON, underlid, workFolder } from './support.ts'

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(path => statSync(join(folder, path)).isFile())
    .sort()
}

function hashes(folder: string): Record<string, string> {
  return Object.fromEntries(
    filesBelow(folder).map(path => [
      path,
      createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex')
    ])
  )
}

const PRIVATE: Readonly<Record<string, readonly string[]>> = {
  'kestrel-cross': ['locker 14', '7719', '900123'],
  'harbour-steps': ['5520']
}

describe('underlid build', () => {
  const folder = workFolder(['kestrel-cross', 'harbour-steps'])
  const first = underlid(['build', '--on', ON], folder)

  it('writes the tree of the contract and ends with 0 although sites have findings', () => {
    expect(first.code).toBe(0)
    for (const path of [
      'public/index.html',
      'public/B/7KQ3F9X/index.html',
      'office/index.html',
      'office/kestrel-cross/index.html',
      'data/fleet.json',
      'data/findings.json'
    ]) {
      expect(existsSync(join(folder, 'dist', path)), path).toBe(true)
    }
  })

  it('gives the same bytes again from the same sources and day', () => {
    const before = hashes(join(folder, 'dist'))
    rmSync(join(folder, 'dist'), { recursive: true })
    underlid(['build', '--on', ON], folder)
    expect(hashes(join(folder, 'dist'))).toEqual(before)
  })

  it('keeps private words and private phones out of everything below public/, and out of the binder', () => {
    for (const [site, words] of Object.entries(PRIVATE)) {
      const texts = [
        ...filesBelow(join(folder, 'dist/public')).map(path => readFileSync(join(folder, 'dist/public', path), 'utf8')),
        readFileSync(join(folder, `dist/office/${site}/binder.html`), 'utf8')
      ]
      for (const word of words) for (const text of texts) expect(text).not.toContain(word)
    }
  })

  it('answers for every tag of the register: live, replaced and retired', () => {
    const tags = readFileSync(join(folder, 'sites/tags.csv'), 'utf8').trim().split('\n').slice(1)
    const ours = tags.filter(line => /kestrel-cross|harbour-steps/u.test(line)).map(line => line.slice(0, 7))
    expect(ours.length).toBeGreaterThan(6)
    for (const tag of ours) expect(existsSync(join(folder, `dist/public/B/${tag}/index.html`)), tag).toBe(true)
    expect(readFileSync(join(folder, 'dist/public/B/ES5ZR42/index.html'), 'utf8')).toContain('CCMEC2X')
  })

  it('leaves out a site that cannot be understood, keeps its last good pages, builds the others and ends with 2', () => {
    const file = join(folder, 'sites/kestrel-cross/site.md')
    const good = readFileSync(file, 'utf8')
    const page = readFileSync(join(folder, 'dist/public/B/7KQ3F9X/index.html'), 'utf8')
    writeFileSync(file, good.replace('units: metric', 'units: metrical'))
    const { code, err } = underlid(['build', '--on', ON], folder)
    writeFileSync(file, good)
    expect(code).toBe(2)
    expect(err).toContain('file/not-one-of')
    expect(readFileSync(join(folder, 'dist/public/B/7KQ3F9X/index.html'), 'utf8')).toBe(page)
    expect(existsSync(join(folder, 'dist/office/kestrel-cross/binder.html'))).toBe(true)
    expect(existsSync(join(folder, 'dist/office/harbour-steps/binder.html'))).toBe(true)
  })

  it('builds one site alone and carries the pages of the others over, the fleet page whole', () => {
    underlid(['build', '--on', ON], folder)
    const before = hashes(join(folder, 'dist'))
    const { code, out } = underlid(['build', 'harbour-steps', '--on', ON], folder)
    expect(code).toBe(0)
    expect(out).toContain('1 site built')
    expect(hashes(join(folder, 'dist'))).toEqual(before)
  })

  it('a tag answers even where its site was never built here', () => {
    underlid(['build', 'harbour-steps', '--on', ON, '--out', 'dist-one'], folder)
    expect(readFileSync(join(folder, 'dist-one/public/B/7KQ3F9X/index.html'), 'utf8')).toContain('quote the tag')
  })

  it('refuses to write anything where a private word would stand on a public page', () => {
    const file = join(folder, 'sites/kestrel-cross/site.md')
    const good = readFileSync(file, 'utf8')
    const before = hashes(join(folder, 'dist'))
    writeFileSync(file, good.replace('where: north splitter island', 'where: north splitter island, code 7719'))
    const built = underlid(['build', '--on', ON], folder)
    const checked = underlid(['check', 'kestrel-cross', '--on', ON], folder)
    writeFileSync(file, good)
    expect(built.code).toBe(2)
    expect(built.err).toContain('private')
    expect(built.err).not.toContain('7719')
    expect(hashes(join(folder, 'dist'))).toEqual(before)
    expect(checked.out).toContain('privacy/private-word-public')
  })

  it('exits 1 with --strict where there is an error', () => {
    expect(underlid(['build', '--on', ON, '--strict'], folder).code).toBe(1)
  })

  it('refuses an output folder that holds files of somebody else', () => {
    const { code, err } = underlid(['build', '--out', 'sites', '--on', ON], folder)
    expect(code).toBe(2)
    expect(err).toContain('sites')
  })
})
