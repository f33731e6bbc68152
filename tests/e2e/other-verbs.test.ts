import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { isTag } from '../../src/domain/tags/tag.ts'
import { ON, underlid, workFolder } from './support.ts'

const json = (text: string): Record<string, unknown> => JSON.parse(text) as Record<string, unknown>

describe('underlid new', () => {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-new-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it.each(['metric', 'us'])('starts a %s site in an empty folder that passes check and builds', units => {
    const site = `quay-${units}`
    expect(underlid(['new', site, '--units', units, '--on', ON], folder).code).toBe(0)
    expect(underlid(['check', site, '--on', ON], folder).code).toBe(0)
    expect(underlid(['build', '--on', ON], folder).code).toBe(0)
    expect(existsSync(join(folder, `dist/office/${site}/binder.html`))).toBe(true)
  })

  it('draws a good tag and enters it in the register', () => {
    const line = readFileSync(join(folder, 'sites/tags.csv'), 'utf8')
      .split('\n')
      .find(one => one.includes('quay-us'))
    expect(isTag(line?.slice(0, 7) ?? '')).toBe(true)
    expect(readFileSync(join(folder, 'sites/quay-us/site.md'), 'utf8')).toContain(`tag: ${line?.slice(0, 7)}`)
  })

  it('never writes over a site that is there', () => {
    const before = readFileSync(join(folder, 'sites/quay-us/site.md'), 'utf8')
    expect(underlid(['new', 'quay-us'], folder).code).toBe(2)
    expect(readFileSync(join(folder, 'sites/quay-us/site.md'), 'utf8')).toBe(before)
  })

  it('refuses a name that would leave the folder', () => {
    expect(underlid(['new', '../elsewhere'], folder).code).toBe(2)
  })
})

describe('underlid tag', () => {
  const folder = workFolder(['kestrel-cross'])
  const file = join(folder, 'sites/kestrel-cross/site.md')
  const register = () => readFileSync(join(folder, 'sites/tags.csv'), 'utf8')

  it('has nothing to do where every box has its tag', () => {
    const before = register()
    expect(underlid(['tag', 'kestrel-cross', '--on', ON], folder).out).toContain('Every box has its tag')
    expect(register()).toBe(before)
  })

  it('replaces a tag in the site file and the register, and the old code still answers', () => {
    const { code } = underlid(['tag', '--replace', 'MHQ8SXJ', '--on', ON], folder)
    const now = /MHQ8SXJ,kestrel-cross,VB2,replaced,[\d-]+,(\w{7})/u.exec(register())?.[1] ?? ''
    expect(code).toBe(0)
    expect(isTag(now)).toBe(true)
    expect(readFileSync(file, 'utf8')).toContain(`tag: ${now}`)
    underlid(['build', '--on', ON], folder)
    expect(readFileSync(join(folder, 'dist/public/B/MHQ8SXJ/index.html'), 'utf8')).toContain(now)
  })

  it('draws a tag for a box that has none and leaves every other line as it was', () => {
    const before = readFileSync(file, 'utf8')
    writeFileSync(file, before.replace(/ {4}tag: CCMEC2X\n/u, ''))
    expect(underlid(['tag', 'kestrel-cross', '--on', ON], folder).code).toBe(0)
    const after = readFileSync(file, 'utf8')
    const tag = /- id: VB3\n {4}tag: (\w{7})/u.exec(after)?.[1] ?? ''
    expect(isTag(tag)).toBe(true)
    expect(after.replace(tag, 'CCMEC2X')).toBe(before)
    expect(register()).toContain(`${tag},kestrel-cross,VB3,live,${ON},`)
  })

  it('marks a tag moved and retired, and its page says so', () => {
    underlid(['tag', '--moved', '7KQ3F9X', '--to', 'south verge', '--on', ON], folder)
    expect(register()).toContain('7KQ3F9X,kestrel-cross,VB1,moved')
    underlid(['tag', '--retire', 'CCMEC2X', '--on', ON], folder)
    underlid(['build', '--on', ON], folder)
    expect(readFileSync(join(folder, 'dist/public/B/CCMEC2X/index.html'), 'utf8')).toContain('out of use')
  })

  it('refuses a tag that was never issued', () => {
    expect(underlid(['tag', '--retire', '2222222'], folder).code).toBe(2)
  })
})

describe('underlid calc', () => {
  it('gives a figure with its unit, its steps and its source', () => {
    const { out, code } = underlid(['calc', 'wire-loop', '--size', '0.75 mm²', '--length', '128 m'], '.')
    expect(code).toBe(0)
    expect(out).toContain('2 × 128 m × 24.5 Ω/km = 6.27 Ω')
    expect(out).toContain('IEC 60228')
  })

  it('gives JSON with value and unit', () => {
    const { out } = underlid(['calc', 'wire-loop', '--size', '0.75 mm²', '--length', '128 m', '--format', 'json'], '.')
    const outputs = json(out)['outputs'] as Record<string, { value: number; unit: string }>
    expect(Object.values(outputs)).toContainEqual({ value: expect.closeTo(6.272, 3) as number, unit: 'ohm' })
  })

  it('lists every calculation with inputs, units, outputs and sources', () => {
    const all = JSON.parse(underlid(['calc', '--list', '--format', 'json'], '.').out) as Record<string, unknown>[]
    for (const name of [
      'coil-voltage',
      'cover-depth',
      'due-date',
      'qr-size',
      'resistance-at',
      'wire-choose',
      'wire-limit',
      'wire-loop',
      'wire-size'
    ]) {
      const card = all.find(one => one['name'] === name)
      expect(card, name).toMatchObject({
        inputs: expect.anything() as unknown,
        outputs: expect.anything() as unknown,
        sources: expect.anything() as unknown
      })
    }
  })

  it('says what is wrong with an input and ends with 2', () => {
    const { err, code } = underlid(['calc', 'wire-loop', '--size', '0.75 mm²', '--length', '128'], '.')
    expect(code).toBe(2)
    expect(err).toContain('unit')
  })
})

describe('underlid explain', () => {
  it('tells the meaning, the reason, the source and a worked case', () => {
    const { out } = underlid(['explain', 'wire/coil-voltage-low'], '.')
    for (const part of ['why', 'source', 'This makes it fire', 'This does not']) expect(out).toContain(part)
  })

  it('names the nearest code where there is none of that name', () => {
    const { err, code } = underlid(['explain', 'wire/coil-volts-low'], '.')
    expect(code).toBe(2)
    expect(err).toContain('wire/coil-voltage-low')
  })
})

describe('underlid due', () => {
  const STEPS = ['no-date', 'overdue', 'due']
  const byStep = (a: string, b: string) => STEPS.indexOf(a) - STEPS.indexOf(b)
  const folder = workFolder(['kestrel-cross', 'harbour-steps'])

  it('lists what is overdue first by date, with what to take along', () => {
    const report = json(underlid(['due', '--on', ON, '--format', 'json'], folder).out)
    const due = report['due'] as { kind: string; state: string }[]
    expect(due.map(one => one.state)).toEqual([...due.map(one => one.state)].sort(byStep))
    expect(due.filter(one => one.kind === 'battery')).toEqual([
      expect.objectContaining({
        site: 'kestrel-cross',
        box: 'VB1',
        subject: 'K1',
        kind: 'battery',
        due_on: '2026-04-14',
        state: 'overdue'
      })
    ])
    expect(report['shopping']).toEqual([{ item: '9 V alkaline', count: 1, spares: 1 }])
  })

  it('takes in more with a longer reach', () => {
    const report = json(underlid(['due', '--on', ON, '--within', '365d', '--format', 'json'], folder).out)
    expect((report['due'] as unknown[]).length).toBeGreaterThan(3)
  })
})

describe('a register with a line that cannot be read', () => {
  const folder = workFolder(['kestrel-cross'])
  const file = join(folder, 'sites/tags.csv')

  it('is never written anew, so that no tag that was issued is lost', () => {
    const damaged = `${readFileSync(file, 'utf8')}GYDBQ37,kestrel-cross,VB9,gone,2025-04-14,\n`
    writeFileSync(file, damaged)
    for (const args of [
      ['tag', 'kestrel-cross'],
      ['tag', '--retire', '7KQ3F9X'],
      ['new', 'quay-street']
    ]) {
      const { code, err } = underlid(args, folder)
      expect(code, args.join(' ')).toBe(2)
      expect(err).toContain('tags.csv')
    }
    expect(readFileSync(file, 'utf8')).toBe(damaged)
  })
})
