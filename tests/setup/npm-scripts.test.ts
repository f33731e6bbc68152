import { spawnSync } from 'node:child_process'
import { existsSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { projectCopy } from './project-copy.ts'

const copies: string[] = []
afterEach(() => {
  for (const copy of copies.splice(0)) rmSync(copy, { recursive: true, force: true })
})

/** Runs a script of the setup in a copy where no browser is wanted, so that nothing is installed. */
function run(script: string, files: Readonly<Record<string, string>>, args: readonly string[] = [], env: object = {}) {
  const copy = projectCopy(files)
  copies.push(copy)
  const result = spawnSync(process.execPath, [join(copy, 'setup', script), ...args], {
    cwd: copy,
    encoding: 'utf8',
    env: { ...process.env, NODE_OPTIONS: '', UNDERLID_BROWSER: 'none', ...env }
  })
  return { ...result, lines: result.stdout.trimEnd().split('\n'), copy }
}

const REPORT = {
  success: true,
  numPassedTests: 3,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: []
}

/** Tools that say their name and end as told; the last leaves a report. */
function tools(
  codes: { types?: number; lint?: number; format?: number; tests?: number },
  report: object | null = REPORT
) {
  const tool = (name: string, code = 0): string =>
    `console.log('${name} ran', process.env.NO_COLOR, process.argv.slice(2).join(' ')); process.exitCode = ${code}`
  const leave = report
    ? `;const out = process.argv.find(arg => arg.startsWith('--outputFile.json=')).slice(18)
       ;(await import('node:fs')).writeFileSync(out, ${JSON.stringify(JSON.stringify(report))})`
    : ''
  return {
    'node_modules/typescript/bin/tsc': tool('tsc', codes.types),
    'node_modules/typescript/package.json': '{ "type": "module" }',
    'node_modules/eslint/bin/eslint.js': tool('eslint', codes.lint),
    'node_modules/eslint/package.json': '{ "type": "module" }',
    'node_modules/prettier/bin/prettier.cjs': tool('prettier', codes.format),
    'node_modules/vitest/vitest.mjs': tool('vitest', codes.tests) + leave
  }
}

describe('npm test', () => {
  it('runs types, lint, format and tests, announces each with its time, and ends with the counts alone on a line', () => {
    const { lines, status } = run('test.mjs', tools({}))
    const steps = lines.filter(line => /^(?:Types|Lint|Format|Tests): in order, [\d.]+ s$/u.test(line))
    expect(steps.map(line => line.split(':')[0])).toEqual(['Tests', 'Types', 'Lint', 'Format'])
    expect(lines.at(-1)).toBe('3 passed, 0 failed')
    expect(status).toBe(0)
  })

  it.each(['types', 'lint', 'format', 'tests'] as const)(
    'ends with 1 where %s fails, having run the others all the same',
    step => {
      const { stdout, lines, status } = run('test.mjs', tools({ [step]: 1 }))
      for (const tool of ['tsc', 'eslint', 'prettier', 'vitest']) expect(stdout).toContain(`${tool} ran`)
      expect(stdout.toLowerCase()).toContain(`not in order: ${step}`)
      expect(lines.at(-1)).toMatch(/^3 passed, \d failed$/u)
      expect(status).toBe(1)
    }
  )

  it('says that something failed where the tests left no report, also where an old one lies about', () => {
    const old = { '.cache/test-results.json': JSON.stringify(REPORT) }
    const { lines, status } = run('test.mjs', { ...tools({ tests: 1 }, null), ...old })
    expect(lines.at(-1)).toBe('0 passed, 1 failed')
    expect(status).toBe(1)
  })

  it('hands its arguments to the tests, and has no colors where nobody looks on', () => {
    const { stdout } = run('test.mjs', tools({}), ['tests/units'], { FORCE_COLOR: '1' })
    expect(stdout).toMatch(/vitest ran 1 run .* tests\/units$/mu)
    expect(stdout).not.toContain('\u001b')
  })

  it('says why there is no browser, and goes on', () => {
    expect(run('test.mjs', tools({})).stdout).toContain('UNDERLID_BROWSER is "none"')
  })
})

/** A command that makes an output, as the real one would, and says what it was asked. */
const COMMAND = {
  'setup/underlid.mjs': `import { mkdirSync, writeFileSync } from 'node:fs'
    console.log('asked to', process.argv.slice(2).join(' '))
    const out = process.argv.includes('--out') ? process.argv[process.argv.indexOf('--out') + 1] : 'dist'
    for (const path of ['office/index.html', 'public/index.html', 'print/quay-binder.pdf', 'print/quay-binder.txt']) {
      mkdirSync(out + '/' + path.split('/')[0], { recursive: true })
      writeFileSync(out + '/' + path, '')
    }
    process.exitCode = Number(process.env.ENDS_WITH ?? 0)`
}

describe('npm start', () => {
  it('without a browser builds the pages, and says where to look and how to go on', () => {
    const { stdout, status } = run('start.mjs', COMMAND)
    expect(stdout).toContain('asked to build')
    for (const path of [
      'dist/office/index.html',
      'dist/public/index.html',
      'dist/print/quay-binder.pdf',
      'underlid serve'
    ])
      expect(stdout).toContain(path)
    expect(stdout).not.toContain('.txt')
    expect(status).toBe(0)
  })

  it('hands its options on, looks where they say, and ends as the command did', () => {
    const { stdout, status, copy } = run('start.mjs', COMMAND, ['--out', 'elsewhere', '--on', '2026-05-01'], {
      ENDS_WITH: '2'
    })
    expect(stdout).toContain('asked to build --out elsewhere --on 2026-05-01')
    expect(stdout).toContain('elsewhere/office/index.html')
    expect(existsSync(join(copy, 'dist'))).toBe(false)
    expect(status).toBe(2)
  })

  it('where the packages cannot be had says so in the words of npm, and ends with 2', () => {
    const needs = { lost: 'file:lost.tgz' }
    const packages = {
      '': { dependencies: needs },
      'node_modules/lost': { version: '1.0.0', resolved: 'file:lost.tgz' }
    }
    const files = {
      ...COMMAND,
      'package.json': JSON.stringify({ type: 'module', dependencies: needs }),
      'package-lock.json': JSON.stringify({ lockfileVersion: 3, packages })
    }
    const { stderr, status } = run('start.mjs', files)
    expect(stderr).toContain('The packages could not be installed. npm said:')
    expect(stderr).not.toMatch(/^\s+at /mu)
    expect(status).toBe(2)
  })
})
