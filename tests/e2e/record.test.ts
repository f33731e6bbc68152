import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, readdirSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { slipText } from '../../src/page/slip.ts'
import { PROJECT, underlid, workFolder } from './support.ts'

const folder = workFolder(['kestrel-cross', 'brindle-common'])
const visits = join(folder, 'sites/kestrel-cross/visits')
const names = () => readdirSync(visits).sort()
const record = (...args: string[]) => underlid(['record', 'kestrel-cross', '--on', '2026-05-04', ...args], folder)
const pasted = (text: string, ...args: string[]) =>
  spawnSync(
    process.execPath,
    [join(PROJECT, 'setup/underlid.mjs'), 'record', 'kestrel-cross', '--slip', '-', ...args],
    {
      cwd: folder,
      input: text,
      encoding: 'utf8'
    }
  )

const slip = (station: string, found = 'Z3 opens slowly') =>
  slipText({
    site: 'Kestrel Cross Roundabout',
    box: 'VB2',
    tag: 'MHQ8SXJ',
    on: '2026-06-01',
    by: 'M. Example',
    reason: 'call',
    batteries: [],
    readings: [{ station, loop: '6.1', coil: '', flow: '', flowUnit: 'L/min' }],
    found,
    done: '',
    open: ''
  })

describe('underlid record, from flags', () => {
  it('shows what it would write and writes nothing', () => {
    const before = names()
    expect(record('--reason', 'route', '--battery', 'K1', '--dry-run').out).toContain('kind: 9 V alkaline')
    expect(names()).toEqual(before)
  })

  it('writes the visit and says what it changes', () => {
    const { out, code } = record(
      '--by',
      'M. Example',
      '--reason',
      'Route 7!',
      '--battery',
      'K1=9 V alkaline',
      '--repaired',
      'coil of Z3'
    )
    expect(code).toBe(0)
    expect(out).toContain('K1 battery: 2026-04-14 -> 2027-05-04')
    expect(out).toContain('closed  coil of Z3 to be read and swapped if it says AC (open since 2025-10-20)')
    expect(out).toContain('gone    power/battery-overdue K1')
    expect(names()).toContain('2026-05-04-route-7.md')
    expect(underlid(['due', 'kestrel-cross', '--on', '2026-05-04', '--format', 'json'], folder).out).not.toContain(
      '"battery"'
    )
  })

  it('gives a second visit of the day another name, and takes one visit only once', () => {
    const first = readFileSync(join(visits, '2026-05-04-route-7.md'), 'utf8')
    expect(record('--reason', 'route 7', '--found', 'lid of VB2 cracked').code).toBe(0)
    expect(names()).toContain('2026-05-04-route-7-2.md')
    expect(readFileSync(join(visits, '2026-05-04-route-7.md'), 'utf8')).toBe(first)
    const again = record('--reason', 'route 7', '--found', 'lid of VB2 cracked')
    expect([again.code, again.err]).toEqual([
      2,
      expect.stringContaining('recorded already: sites/kestrel-cross/visits/2026-05-04-route-7-2.md')
    ])
  })

  it.each([
    [['--reading', 'K1/9=4.4ohm'], 'There is no station K1/9'],
    [['--battery', 'K4=9 V alkaline'], 'There is no controller K4'],
    [['--reading', 'K1/1=44'], 'Write it like this: --reading K1/1=4.4ohm'],
    [['--repaired', 'the moon'], 'No open job holds "the moon"'],
    [['--found', 'depot locker 14, code 7719'], 'Say it without the private word'],
    [[], 'Nothing is said of the visit']
  ])('refuses %j with what to do, and writes nothing', (args, words) => {
    const before = names()
    const { code, err } = record('--reason', 'slip of the pen', ...args)
    expect(code).toBe(2)
    expect(err).toContain(words)
    expect(names()).toEqual(before)
  })

  it('never leaves the visits folder, whatever the reason is called', () => {
    expect(record('--reason', '../../../etc/x', '--found', 'a').out).toContain('visits/2026-05-04-etc-x.md')
    expect(record('--reason', '...', '--found', 'b').out).toContain('visits/2026-05-04-visit.md')
  })
})

describe('underlid record, from a slip of the box page', () => {
  it('records it with the box it was written at', () => {
    const { status, stdout } = pasted(`Hello\n\n${slip('K1/2')}\nM.\n`, '--on', '2026-06-02')
    expect([status, stdout]).toEqual([
      0,
      expect.stringContaining('Recorded sites/kestrel-cross/visits/2026-06-01-call.md')
    ])
    const text = readFileSync(join(visits, '2026-06-01-call.md'), 'utf8')
    expect(text).toContain('# from the slip of VB2, tag MHQ8SXJ')
    expect(text).toContain('boxes:\n  - VB2')
  })

  it('tells an unknown station with its line in the pasted text', () => {
    const { status, stderr } = pasted(`Hello\n\n${slip('K1/7')}`, '--on', '2026-06-02')
    expect(status).toBe(2)
    expect(stderr).toMatch(/^slip:9:\d+/u)
    expect(stderr).toContain('There are K1/1, K1/2, K1/3 and K1/4.')
  })

  it.each([
    [
      'a slip of another site',
      slip('K1/2', 'a').replace('MHQ8SXJ', tagOf('brindle-common')),
      'was written at a box of brindle-common'
    ],
    ['a tag that nobody issued', slip('K1/2', 'b').replace('MHQ8SXJ', '2222222'), 'which was never issued'],
    ['a day to come', slip('K1/2', 'c').replace('on: 2026-06-01', 'on: 2026-06-03'), 'which is after 2026-06-02'],
    ['private lines', slip('K1/2', 'd').replace('found:', 'private: { keys: x }\nfound:'), 'holds nothing private'],
    ['no slip', 'battery changed, all well', 'There is no visit slip']
  ])('refuses %s', (_, text, words) => {
    const before = names()
    const { status, stderr } = pasted(text, '--on', '2026-06-02')
    expect([status, stderr]).toEqual([2, expect.stringContaining(words)])
    expect(names()).toEqual(before)
  })

  it('says what no form asks for, and calls the box by its own name whatever the slip says', () => {
    const forged = slip('K1/2', 'e')
      .replace('· VB2 ·', '· \u001b[2JVB9 ·')
      .replace('found:', 'tests:\n  - { supply: S1, passed: yes }\nfound:')
    const { status, stdout } = pasted(forged, '--on', '2026-06-02', '--dry-run')
    expect([status, stdout]).toEqual([0, expect.stringContaining('does not ask for tests: see that it is true.')])
    expect(stdout).toContain('# from the slip of VB2, tag MHQ8SXJ')
    expect(stdout).not.toContain('\u001b')
  })

  it.each([
    ['a key twice', 'found:', 'on: 2026-06-01\nfound:'],
    ['an alias', 'found:', 'found: &a ["x"]\ndone: *a\nopen:'],
    ['a tag of another language', 'found:', 'owner: !!js/function "x"\nfound:'],
    ['a key that no visit has', 'found:', 'constructor: x\nfound:'],
    ['a job that nobody left open', 'found:', 'repaired: ["the moon"]\nfound:']
  ])('refuses a forged slip with %s, in words', (_, from, to) => {
    const before = names()
    const { status, stderr } = pasted(slip('K1/2', 'f').replace(from, to), '--on', '2026-06-02')
    expect([status, stderr.length > 20, /\n\s+at /u.test(stderr)]).toEqual([2, true, false])
    expect(names()).toEqual(before)
  })

  it('takes hostile words as words: no mark-up, no control of the terminal, no key', () => {
    const words = '"><script>alert(1)</script> {{ 7*7 }} \u001b[2J\u202e ${x} =cmd|x'
    const { status, stdout } = pasted(slip('K1/2', words), '--on', '2026-06-02')
    expect(status).toBe(0)
    expect(stdout).not.toContain('\u001b')
    underlid(['build', 'kestrel-cross', '--on', '2026-06-02'], folder)
    const page = readFileSync(join(folder, 'dist/office/kestrel-cross/binder.html'), 'utf8')
    expect(page).toMatch(/&(?:lt|#60);script&(?:gt|#62);alert\(1\)&(?:lt|#60);\/script&(?:gt|#62); \{\{ 7\*7 \}\}/u)
    expect(page).not.toContain('<script>alert')
  })
})

describe('underlid record, where it cannot write', () => {
  it('leaves everything as it was', () => {
    renameSync(visits, `${visits}-away`)
    writeFileSync(visits, 'in the way')
    const before = readdirSync(join(folder, 'sites/kestrel-cross')).sort()
    const { code, err } = record('--reason', 'route', '--found', 'never written')
    expect(code).toBe(2)
    expect(err).not.toMatch(/ at .*\.ts/u)
    expect(readdirSync(join(folder, 'sites/kestrel-cross')).sort()).toEqual(before)
    expect(readFileSync(visits, 'utf8')).toBe('in the way')
    expect(existsSync(join(folder, 'dist/visits'))).toBe(false)
  })
})

function tagOf(site: string): string {
  const line = readFileSync(join(PROJECT, 'sites/tags.csv'), 'utf8')
    .split('\n')
    .find(one => one.includes(`,${site},`))
  return line?.slice(0, 7) ?? ''
}
