import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { PROJECT, readSource, readSources } from './read-sources.ts'
import { importRing, strayEffects, upwardArrows } from './rules.ts'

const sources = readSources('src')
const tests = readSources('tests')

describe('the house', () => {
  it('has arrows that point down only', () => {
    expect(sources.flatMap(upwardArrows).join('\n')).toBe('')
  })

  it('touches files, network, clock, chance, process, console and locale in its named places only', () => {
    expect(sources.flatMap(strayEffects).join('\n')).toBe('')
  })

  it('has no ring of imports', () => {
    expect(importRing(sources)).toBeUndefined()
  })

  it('imports no file that is not there', () => {
    const lost = sources.flatMap(({ path, imports }) =>
      imports
        .filter(({ to }) => /^(?:src|setup)\//u.test(to) && !existsSync(join(PROJECT, to)))
        .map(({ to, line }) => `${path}:${line} ${to}`)
    )
    expect(lost.join('\n')).toBe('')
  })

  it('has no default exports, and no classes in domain, plan, checks, model and binder', () => {
    const exporting = sources.filter(({ path, hasDefaultExport }) => hasDefaultExport && !path.endsWith('.d.ts'))
    const classes = sources.filter(
      ({ path, hasClass }) => hasClass && /^src\/(?:domain|plan|checks|model|binder)\//u.test(path)
    )
    expect(exporting.map(({ path }) => path)).toEqual([])
    expect(classes.map(({ path }) => path)).toEqual([])
  })

  it('is made of small files: the middle one is under 60 lines', () => {
    const sizes = sources.map(({ lines }) => lines).sort((a, b) => a - b)
    const largest = sources.toSorted((a, b) => b.lines - a.lines).slice(0, 8)
    const report = `${sizes.length} files; longest: ${largest.map(({ path, lines }) => `${path} ${lines}`).join(', ')}`
    process.stdout.write(`${report}\n`)
    expect(sizes[Math.floor(sizes.length / 2)], report).toBeLessThan(60)
  })
})

describe('the tests', () => {
  it('are all run: none is skipped, singled out, put off or expected to fail', () => {
    const set =
      /^(?:it|test|describe|suite)\.(?:[\w.()]*\.)?(?:skip|only|todo|fails|skipIf|runIf)\b|^(?:xit|xdescribe|xtest|fit|fdescribe)$|\.skip$/u
    const aside = tests.flatMap(({ path, calls }) =>
      calls.filter(({ name }) => set.test(name)).map(({ name, line }) => `${path}:${line} ${name}`)
    )
    expect(aside.join('\n')).toBe('')
  })
})

describe('the rules themselves', () => {
  const file = (path: string, text: string) => readSource(path, text)

  it('say in a sentence why an arrow up is refused, for types too', () => {
    const [said] = upwardArrows(file('src/domain/a.ts', "import type { Site } from '../model/site.ts'"))
    expect(said).toContain('src/domain/a.ts:1 takes src/model/site.ts.')
    expect(said).toContain('domain is of rank 3, and model stands above it (rank 4)')
  })

  it.each([
    ['src/load/a.ts', '../plan/plan.ts', 'beside it'],
    ['src/checks/wire/a.ts', '../../binder/blocks.ts', 'beside it'],
    ['src/units/a.ts', '../diagnostics/finding.ts', 'beside it'],
    ['src/render/a.ts', '../build/clock.ts', 'above it']
  ])('refuse %s -> %s', (path, to, where) => {
    expect(upwardArrows(file(path, `export { x } from '${to}'`)).join()).toContain(where)
    expect(upwardArrows(file(path, `const x = await import('${to}')`))).toHaveLength(1)
    expect(upwardArrows(file(path, `type X = import('${to}').X`))).toHaveLength(1)
  })

  it('let a file take from below, from its own room, and from packages', () => {
    const text = "import { a } from '../domain/a.ts'\nimport { b } from './b.ts'\nimport { z } from 'zod'"
    expect(upwardArrows(file('src/plan/x.ts', text))).toEqual([])
  })

  it('refuse a file in no room, and the setup from below', () => {
    expect(upwardArrows(file('src/helpers/a.ts', ''))[0]).toContain('no room of this house')
    expect(upwardArrows(file('src/domain/a.ts', "import { PROJECT } from '../../setup/browser.mjs'"))).toHaveLength(1)
  })

  it.each([
    'Date.now()',
    'new Date()',
    'new Date',
    'Date()',
    'Temporal.Now.plainDateISO()',
    'performance.now()',
    'Math.random()',
    'crypto.randomUUID()',
    "import { randomInt } from 'node:crypto'",
    "import crypto from 'node:crypto'",
    'process.env.HOME',
    'console.log(1)',
    "fetch('x')",
    'x.toLocaleString()',
    'a.localeCompare(b)',
    'new Intl.NumberFormat()',
    'new Date(0)',
    "const fs = await import('node:fs')",
    "import { readFileSync } from 'fs'",
    'const now = Date.now',
    'const options = { console }'
  ])('refuse %s in the domain', text => {
    expect(strayEffects(file('src/domain/a.ts', text))).toHaveLength(1)
  })

  it.each([
    '// Date.now() and process.env in a comment',
    'const text = "console.log(new Date())"',
    'const { process } = steps',
    'interface A { readonly console: string; fetch(): void }',
    'const x = site.process + site.console.volume + { fetch: 1 }.fetch',
    'Math.round(x)',
    "import type { Stats } from 'node:fs'",
    "import { createHash } from 'node:crypto'",
    'function f(date: Date): void {}'
  ])('have nothing against %s', text => {
    expect(strayEffects(file('src/domain/a.ts', text))).toEqual([])
  })

  it('let the one file of dates count days, and not ask for today', () => {
    expect(strayEffects(file('src/units/date.ts', 'Date.UTC(y, m, d); new Date(day * 86_400_000)'))).toEqual([])
    expect(strayEffects(file('src/units/date.ts', 'new Date()'))).toHaveLength(1)
    expect(strayEffects(file('src/units/other.ts', 'new Date(0)'))).toHaveLength(1)
    expect(strayEffects(file('src/build/clock.ts', 'new Date()'))).toEqual([])
    expect(strayEffects(file('src/build/other.ts', 'new Date()'))).toHaveLength(1)
  })

  it('find a ring of imports, and take no offence at a ring of types', () => {
    const ring = (keyword: string) => [
      file('src/plan/a.ts', "import { b } from './b.ts'"),
      file('src/plan/b.ts', "import { c } from './c.ts'"),
      file('src/plan/c.ts', `import ${keyword}{ a } from './a.ts'`)
    ]
    expect(importRing(ring(''))).toBe('src/plan/a.ts -> src/plan/b.ts -> src/plan/c.ts -> src/plan/a.ts')
    expect(importRing(ring('type '))).toBeUndefined()
  })
})
