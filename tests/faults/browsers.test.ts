import { spawnSync } from 'node:child_process'
import {
  closeSync,
  constants,
  lstatSync,
  openSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync
} from 'node:fs'
import { open } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { withStage } from '../../src/build/output-stage.ts'
import { printDocuments } from '../../src/build/print-documents.ts'
import type { DocumentToPrint, PrintReport } from '../../src/build/print-documents.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from '../build/temporary-folder.ts'
import { browsersOf } from './state.ts'

// The long run, through the command: npx tsx tests/faults/run.ts --browsers 100 --seed 1

const folder = temporaryFolder()
const dist = (path: string): string => folder.path('dist', path)
const MINE = `underlid-browser-${process.pid}-`
const PICTURE = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64'
)

const before = process.env['UNDERLID_PRINT_SECONDS']
beforeEach(() => void (process.env['UNDERLID_PRINT_SECONDS'] = '10'))
afterEach(() => {
  if (before === undefined) delete process.env['UNDERLID_PRINT_SECONDS']
  else process.env['UNDERLID_PRINT_SECONDS'] = before
})

const page = (words: string, picture = ''): string =>
  `<!doctype html><html lang="en-US"><title>${words}</title><style>@page { size: A4 }</style><h1>${words}</h1>${picture}</html>`
const documents = ['quay', 'roof'].map<DocumentToPrint>(site => ({
  html: `office/${site}.html`,
  pdf: `print/${site}.pdf`,
  paper: 'A4',
  on: date('2026-05-01')
}))

/**
 * Prints two documents. The first shows a picture that is a pipe: a browser that opens it is in the middle of the document, and is then
 * harmed, `times` times; after that the picture is one.
 */
async function printing(words: string, harm: (pids: Pids) => void, times: number): Promise<PrintReport> {
  const { result } = await withStage(folder.path('dist'), async stage => {
    stage.write({ path: 'office/quay.html', content: page(words, '<img src="pipe.png" alt="">') })
    stage.write({ path: 'office/roof.html', content: page(words) })
    stage.write({ path: 'office/pipe.png', content: PICTURE })
    const pipe = join(stage.folder, 'office/pipe.png')
    const harming = harmReaders(pipe, harm, times)
    const report = await printDocuments(stage, documents, { base: 'HTTPS://EXAMPLE.ORG' })
    // Whoever still waits for a browser to read is let go, and tells that none came.
    if (lstatSync(pipe).isFIFO()) closeSync(openSync(pipe, constants.O_RDONLY | constants.O_NONBLOCK))
    await harming
    rmSync(pipe, { force: true })
    writeFileSync(pipe, PICTURE)
    return report
  })
  return result
}

interface Pids {
  readonly browser: readonly number[]
  readonly helpers: readonly number[]
}

async function harmReaders(pipe: string, harm: (pids: Pids) => void, times: number): Promise<void> {
  for (let time = 0; time < times; time += 1) {
    rmSync(pipe, { force: true })
    expect(spawnSync('mkfifo', [pipe]).status).toBe(0)
    // Answers as soon as somebody reads.
    const writer = await open(pipe, 'w')
    const browser = browsersOf(MINE).filter(pid => /^(?!.*--type=)./su.test(lineOf(pid)))
    const helpers = browser.flatMap(groupOf).filter(pid => lineOf(pid).includes('--type=renderer'))
    // In one step: another browser may ask for it at any moment.
    if (time === times - 1) {
      writeFileSync(`${pipe}.next`, PICTURE)
      renameSync(`${pipe}.next`, pipe)
    }
    harm({ browser, helpers })
    await writer.close()
  }
}

/** Nothing of a process that has just ended. */
function lineOf(pid: number): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8')
  } catch {
    return ''
  }
}

/** Processes of the group that a browser leads: not every browser names its folder to its helpers. */
function groupOf(leader: number): number[] {
  const { stdout } = spawnSync('ps', ['-eo', 'pid=,pgid='], { encoding: 'utf8' })
  const rows = stdout
    .trim()
    .split('\n')
    .map(row => row.trim().split(/\s+/u).map(Number))
  return rows.flatMap(([pid = 0, group]) => (group === leader && pid !== leader ? [pid] : []))
}

/** Helpers come and go by themselves; one at least is there. */
const signal = (pids: readonly number[], name: NodeJS.Signals): void =>
  expect(pids.filter(pid => reached(pid, name)).length, 'browsers that came to read').toBeGreaterThan(0)

function reached(pid: number, name: NodeJS.Signals): boolean {
  try {
    return process.kill(pid, name)
  } catch {
    return false
  }
}

async function nothingLeft(): Promise<void> {
  for (let wait = 0; wait < 50 && browsersOf(MINE).length > 0; wait += 1)
    await new Promise(resolve => setTimeout(resolve, 100))
  expect(browsersOf(MINE)).toEqual([])
  expect(readdirSync(tmpdir()).filter(name => name.startsWith(MINE))).toEqual([])
}

const BOTH = ['print/quay.pdf', 'print/roof.pdf']

describe('a browser that comes to harm while it prints', () => {
  it.each<[string, (pids: Pids) => void]>([
    ['killed', ({ browser }) => signal(browser, 'SIGKILL')],
    ['whose helper is killed', ({ helpers }) => signal(helpers, 'SIGKILL')],
    ['that hangs', ({ browser }) => signal(browser, 'SIGSTOP')],
    ['whose helper hangs', ({ helpers }) => signal(helpers, 'SIGSTOP')]
  ])('one %s: what it left undone is printed by another one, and nothing stays behind', async (_, harm) => {
    expect(await printing('Quay', harm, 1)).toEqual({ printed: BOTH, reused: [], failed: [] })
    await nothingLeft()
  })

  it('two that hang: both are ended, the last print stays, it is said what to do, and the next run prints', async () => {
    const hang = ({ browser }: Pids): void => signal(browser, 'SIGSTOP')
    expect((await printing('Quay', () => undefined, 0)).printed).toEqual(BOTH)
    const last = readFileSync(dist('print/quay.pdf'))
    const { printed, failed } = await printing('Changed', hang, 2)
    expect(printed).toEqual(['print/roof.pdf'])
    expect(failed.map(one => one.pdf)).toEqual(['print/quay.pdf'])
    expect(failed[0]?.reason).toMatch(
      /^The browser gave no answer within \d+ s, and neither did a second one \(\/.*\)\. The last print stays\. Print again; .*UNDERLID_PRINT_SECONDS=120, or set UNDERLID_BROWSER/u
    )
    expect(readFileSync(dist('print/quay.pdf')).equals(last)).toBe(true)
    await nothingLeft()
    expect((await printing('Changed', () => undefined, 0)).printed).toEqual(['print/quay.pdf'])
  })
})
