import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { Refusal } from '../../src/base/refusal.ts'
import { buildLog, writeLog } from '../../src/build/build-log.ts'
import type { BuildResult } from '../../src/build/pipeline.ts'
import type { Finding } from '../../src/diagnostics/finding.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from './temporary-folder.ts'

const temporary = temporaryFolder()
const fault = (site: string): Finding => ({
  code: 'file/yaml',
  severity: 'error',
  site,
  subject: '',
  message: 'm',
  why: 'w',
  sources: [],
  fix: 'f',
  place: { file: 'x', line: 1, column: 1, length: 1, text: '' },
  related: [],
  values: {}
})
const result = (more: Partial<BuildResult> = {}): BuildResult => ({
  on: date('2026-05-01'),
  findings: [],
  built: [],
  leftOut: [],
  made: [],
  same: [],
  notAsked: [],
  report: { changed: [], unchanged: [], kept: [], removed: [] },
  ...more
})

describe('the log of a build', () => {
  it('says of each site and print what became of it, and why one was skipped', () => {
    const log = buildLog(
      result({
        made: ['b-site', 'broken'],
        same: ['a-site'],
        leftOut: ['broken'],
        notAsked: ['c-site'],
        findings: [fault('broken'), fault('broken'), fault('a-site')],
        report: { changed: [], unchanged: [], kept: [], removed: ['office/gone/index.html'] },
        prints: {
          printed: ['print/b-site-binder.pdf'],
          reused: ['print/a-site-binder.pdf'],
          failed: [{ pdf: 'print/b-site-labels.pdf', reason: 'the browser ended' }]
        } as unknown as NonNullable<BuildResult['prints']>
      })
    )
    expect(log.split('\n')).toEqual([
      'As of 2026-05-01: 2 made, 1 unchanged, 1 left out, 1 not asked for.',
      'a-site: skipped, since nothing that shapes it changed',
      'b-site: made, since something that shapes it changed or it was never made here',
      'broken: left out, since its files have 2 faults; the last good pages stay',
      'c-site: skipped, since it was not asked for; the last pages stay',
      'office/gone/index.html: taken away, since nothing makes it any more',
      'print/a-site-binder.pdf: skipped, since its document did not change',
      'print/b-site-binder.pdf: printed',
      'print/b-site-labels.pdf: not printed: the browser ended',
      ''
    ])
  })

  it('is one line and the same bytes where there is nothing to tell', () => {
    expect(buildLog(result())).toBe('As of 2026-05-01: 0 made, 0 unchanged, 0 left out, 0 not asked for.\n')
  })

  it('is written where it is asked for, folders and all, over an older one', () => {
    const file = temporary.path('logs', 'today', 'build.log')
    writeLog(file, 'one\n')
    writeLog(file, 'two\n')
    expect(readFileSync(file, 'utf8')).toBe('two\n')
  })

  it('that cannot be written is told in words that say what is written all the same', () => {
    writeFileSync(temporary.path('taken'), '')
    expect(() => writeLog(temporary.path('taken', 'build.log'), 'x')).toThrow(Refusal)
    mkdirSync(temporary.path('folder'))
    expect(() => writeLog(temporary.path('folder'), 'x')).toThrow(/only the log is not/u)
    expect(existsSync(temporary.path('taken', 'build.log'))).toBe(false)
  })
})
