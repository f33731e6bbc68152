import { spawnSync } from 'node:child_process'
import { appendFileSync, readdirSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { PROJECT, projectCopy } from './project-copy.ts'

const MAIN = `import { words } from './words.ts'
const where: string = import.meta.url
console.log(words, where)
if (process.argv[2] === 'later') console.log((await import('./later.ts')).later)
`
let copy = ''

beforeEach(() => {
  copy = projectCopy({
    'src/cli/main.ts': MAIN,
    'src/cli/words.ts': "export const words: string = 'good morning'\n",
    'src/cli/later.ts': "export const later: string = 'good evening'\n",
    'src/build/work-process.ts': 'export {}\n'
  })
  rmSync(join(copy, 'node_modules'), { recursive: true })
  symlinkSync(join(PROJECT, 'node_modules'), join(copy, 'node_modules'))
})
afterEach(() => rmSync(copy, { recursive: true, force: true }))

function start(...args: readonly string[]) {
  const env = { ...process.env, NODE_OPTIONS: '' }
  const run = spawnSync(process.execPath, [join(copy, 'setup', 'underlid.mjs'), ...args], { env, encoding: 'utf8' })
  return { ...run, kept: keptNames() }
}

function keptNames(): string[] {
  try {
    return readdirSync(join(copy, '.cache', 'program'))
  } catch {
    return []
  }
}

describe('the program as it is started', () => {
  it('is put together once, and taken from there the next time', () => {
    const first = start()
    const second = start('later')
    expect(first.stdout).toContain('good morning')
    expect(second.stdout).toContain('good evening')
    expect(second.kept).toEqual(first.kept)
    expect(first.kept).toHaveLength(1)
  })

  it('is another one as soon as a source is', () => {
    const before = start().kept
    writeFileSync(join(copy, 'src/cli/words.ts'), "export const words: string = 'good night'\n")
    const { stdout, kept } = start()
    expect(stdout).toContain('good night')
    expect(kept).toHaveLength(2)
    expect(kept).toEqual(expect.arrayContaining(before))
  })

  it('finds what stands beside a source where the source stands', () => {
    expect(start().stdout).toContain(new URL('src/cli/main.ts', `file://${copy}/`).href)
  })

  it('is read as it stands where nothing can be put beside it', () => {
    writeFileSync(join(copy, '.cache'), 'a file where a folder is due')
    const { stdout, status } = start()
    expect(stdout).toContain('good morning')
    expect(status).toBe(0)
  })

  it('says whose fault it is where a source cannot be read, and keeps nothing of it', () => {
    appendFileSync(join(copy, 'src/cli/words.ts'), 'const = 1\n')
    const { stderr, status, kept } = start()
    expect(stderr).toContain('This is a fault of Underlid')
    expect(status).toBe(3)
    expect(kept).toEqual([])
  })

  it('forgets what was put together more than a day ago', () => {
    const [old = ''] = start().kept
    const dayBefore = new Date(Date.now() - 2 * 86_400_000)
    utimesSync(join(copy, '.cache', 'program', old), dayBefore, dayBefore)
    appendFileSync(join(copy, 'src/cli/words.ts'), '// changed\n')
    const { kept } = start()
    expect(kept).toHaveLength(1)
    expect(kept).not.toContain(old)
  })
})
