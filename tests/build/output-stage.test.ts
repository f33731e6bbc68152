import { spawnSync } from 'node:child_process'
import {
  existsSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  renameSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync
} from 'node:fs'
import { describe, expect, it } from 'vitest'
import { Refusal } from '../../src/base/refusal.ts'
import { withStage, writeOutputs } from '../../src/build/output-stage.ts'
import { filesIn, put, temporaryFolder } from './temporary-folder.ts'

const folder = temporaryFolder()
const dist = (...parts: readonly string[]): string => folder.path('dist', ...parts)
const files = (texts: Record<string, string>) => Object.entries(texts).map(([path, content]) => ({ path, content }))
/** What stands beside the output folder: nothing, once a run has ended. */
const beside = (): string[] => readdirSync(folder.path()).filter(name => name.startsWith('dist.'))

describe('writing the outputs', () => {
  it('makes the folder, parents included, with every file in its place', async () => {
    const out = folder.path('a', 'b', 'dist')
    const report = await writeOutputs(out, files({ 'public/B/7KQ3F9X/index.html': '<p>', 'data/fleet.json': '{}' }))
    expect(filesIn(out)).toEqual({ 'public/B/7KQ3F9X/index.html': '<p>', 'data/fleet.json': '{}' })
    expect(report.changed).toEqual(['data/fleet.json', 'public/B/7KQ3F9X/index.html'])
  })

  it('leaves the date of a file alone whose bytes did not change, and tells the two apart', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'same', 'b.html': 'old', 'c.html': 'four' }))
    const long = new Date('2001-02-03T04:05:06Z')
    for (const name of ['a.html', 'b.html', 'c.html']) utimesSync(dist(name), long, long)
    const report = await writeOutputs(dist(), files({ 'a.html': 'same', 'b.html': 'new', 'c.html': 'five' }))
    expect(statSync(dist('a.html')).mtime).toEqual(long)
    expect(statSync(dist('b.html')).mtime).not.toEqual(long)
    expect(statSync(dist('c.html')).mtime).not.toEqual(long)
    expect(report).toMatchObject({ changed: ['b.html', 'c.html'], unchanged: ['a.html'] })
    expect(filesIn(dist())).toEqual({ 'a.html': 'same', 'b.html': 'new', 'c.html': 'five' })
  })

  it('takes away what is no longer written, and keeps what it is told to keep', async () => {
    const first = {
      'office/quay/index.html': 'q',
      'office/quays/index.html': 'qs',
      'print/quay-binder.pdf': 'p',
      'public/B/A/index.html': 'a'
    }
    await writeOutputs(dist(), files(first))
    const report = await writeOutputs(dist(), files({ 'index.html': 'i' }), ['office/quay/*', 'print/quay-binder.pdf'])
    expect(Object.keys(filesIn(dist()))).toEqual(['index.html', 'office/quay/index.html', 'print/quay-binder.pdf'])
    expect(report.kept).toEqual(['office/quay/index.html', 'print/quay-binder.pdf'])
    expect(report.removed).toEqual(['office/quays/index.html', 'public/B/A/index.html'])
  })

  it('prefers what is written over what is kept', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'old' }))
    await writeOutputs(dist(), files({ 'a.html': 'new' }), ['*'])
    expect(filesIn(dist())).toEqual({ 'a.html': 'new' })
  })

  it('takes the characters of a kept path as they are', async () => {
    await writeOutputs(dist(), files({ 'a+b.html': '1', 'aab.html': '2', 'a.html': '3', axhtml: '4' }))
    await writeOutputs(dist(), [], ['a+b.html', 'a.html'])
    expect(Object.keys(filesIn(dist()))).toEqual(['a+b.html', 'a.html'])
  })

  it('leaves files of your own in place', async () => {
    await writeOutputs(dist(), files({ 'public/index.html': '1' }))
    put(dist('public', '.well-known', 'note.txt'), 'mine')
    await writeOutputs(dist(), files({ 'public/index.html': '2' }))
    expect(filesIn(dist())).toEqual({ 'public/.well-known/note.txt': 'mine', 'public/index.html': '2' })
  })

  it('writes the same bytes for the same files, its marker included', async () => {
    const texts = { 'b/x.html': 'x', 'a.html': 'a' }
    await writeOutputs(dist(), files(texts))
    await writeOutputs(folder.path('other'), files(texts).toReversed())
    expect(readFileSync(dist('.underlid'), 'utf8')).toBe(readFileSync(folder.path('other', '.underlid'), 'utf8'))
  })

  it('follows a link to the folder and leaves the link', async () => {
    mkdirSync(folder.path('elsewhere'))
    symlinkSync(folder.path('elsewhere'), dist())
    await writeOutputs(dist(), files({ 'a.html': 'a' }))
    expect(filesIn(folder.path('elsewhere'))).toEqual({ 'a.html': 'a' })
    expect(lstatSync(dist()).isSymbolicLink()).toBe(true)
  })

  it('takes the same file twice, and refuses two on one path and a path that leaves the folder', async () => {
    await expect(writeOutputs(dist(), [...files({ 'a.html': '1' }), ...files({ 'a.html': '2' })])).rejects.toThrow(
      'written twice'
    )
    await expect(writeOutputs(dist(), files({ '../a.html': '1' }))).rejects.toThrow('no path below')
    expect(existsSync(dist())).toBe(false)
    const report = await writeOutputs(dist(), [...files({ 'a.html': '1' }), ...files({ 'a.html': '1' })])
    expect(report.changed).toEqual(['a.html'])
  })
})

describe('a folder that is not ours', () => {
  it('is refused with words, and nothing in it is touched', async () => {
    put(dist('letter.txt'), 'dear')
    await expect(writeOutputs(dist(), files({ 'a.html': 'a' }))).rejects.toThrow(Refusal)
    await expect(writeOutputs(dist(), files({ 'a.html': 'a' }))).rejects.toThrow(/letter\.txt.*--out/su)
    expect(filesIn(dist())).toEqual({ 'letter.txt': 'dear' })
    expect(beside()).toEqual([])
  })

  it('that is empty is taken', async () => {
    mkdirSync(dist())
    await writeOutputs(dist(), files({ 'a.html': 'a' }))
    expect(filesIn(dist())).toEqual({ 'a.html': 'a' })
  })

  it('that is a file is refused', async () => {
    put(dist(), 'a file')
    await expect(writeOutputs(dist(), [])).rejects.toThrow('is a file')
    expect(readFileSync(dist(), 'utf8')).toBe('a file')
  })

  it('with a marker that nobody can read is ours all the same', async () => {
    put(dist('.underlid'), '{ broken')
    put(dist('old.html'), 'old')
    await writeOutputs(dist(), files({ 'a.html': 'a' }))
    expect(filesIn(dist())).toEqual({ 'a.html': 'a' })
  })
})

describe('a build that fails', () => {
  it('leaves the last output as it was, and nothing beside it', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'good', 'b.html': 'good' }))
    const failing = withStage(dist(), stage => {
      stage.write({ path: 'a.html', content: 'half' })
      throw new Error('a fault of ours')
    })
    await expect(failing).rejects.toThrow('a fault of ours')
    expect(filesIn(dist())).toEqual({ 'a.html': 'good', 'b.html': 'good' })
    expect(beside()).toEqual([])
  })

  it('for want of room says so, and that the last output is as it was', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'good' }))
    const full = Object.assign(new Error('ENOSPC: no space left on device, write'), {
      code: 'ENOSPC',
      path: 'dist.next/a.html'
    })
    const failing = withStage(dist(), () => {
      throw full
    })
    await expect(failing).rejects.toThrow(
      /^The disk is full: dist\.next\/a\.html\.\nThe last output in .* is as it was\.$/u
    )
    await expect(failing).rejects.toThrow(Refusal)
    expect(filesIn(dist())).toEqual({ 'a.html': 'good' })
  })

  it('at a limit of the machine leaves the last output as it was', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'good' }))
    const module = new URL('../../src/build/output-stage.ts', import.meta.url).href
    const script = `import { writeOutputs } from '${module}'
      process.on('SIGXFSZ', () => undefined)
      const big = 'x'.repeat(4_000_000)
      await writeOutputs(process.argv[1], [{ path: 'a.html', content: 'bad' }, { path: 'b.html', content: big }])
        .catch(error => { console.log(error.name, error.message); process.exit(2) })`
    const shell = `ulimit -f 1000; exec "$0" --import tsx --input-type=module -e "$1" "$2"`
    const { stdout, status } = spawnSync('bash', ['-c', shell, process.execPath, script, dist()], { encoding: 'utf8' })
    expect(stdout).toMatch(/^Refusal A file grew past the limit/u)
    expect(status).toBe(2)
    expect(filesIn(dist())).toEqual({ 'a.html': 'good' })
    expect(beside()).toEqual([])
  })
})

describe('what a killed run left', () => {
  const GONE = 2 ** 22 + 1

  it('a new output that was whole is moved in where the old one had been moved aside', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'new' }))
    renameSync(dist(), folder.path(`dist.next-${GONE}`))
    put(folder.path(`dist.old-${GONE}`, 'a.html'), 'old')
    const { result } = await withStage(dist(), () => filesIn(dist()))
    expect(result).toEqual({ 'a.html': 'new' })
    expect(beside()).toEqual([])
  })

  it('the old output goes back where the new one was not whole', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'old' }))
    renameSync(dist(), folder.path(`dist.old-${GONE}`))
    put(folder.path(`dist.next-${GONE}`, 'a.html'), 'half')
    const { result } = await withStage(dist(), () => filesIn(dist()))
    expect(result).toEqual({ 'a.html': 'old' })
  })

  it('half an output beside a good one is swept away', async () => {
    await writeOutputs(dist(), files({ 'a.html': 'good' }))
    put(folder.path(`dist.next-${GONE}`, 'a.html'), 'half')
    put(folder.path('dist.next-notes', 'a.txt'), 'somebody else')
    await writeOutputs(dist(), [], ['*'])
    expect(filesIn(dist())).toEqual({ 'a.html': 'good' })
    expect(beside()).toEqual(['dist.next-notes'])
  })

  it('of a run that is still going is left alone, and the second run waits for nobody', async () => {
    put(folder.path(`dist.next-${process.ppid}`, 'a.html'), 'at work')
    await expect(writeOutputs(dist(), [])).rejects.toThrow(`Another run (process ${process.ppid})`)
    expect(readFileSync(folder.path(`dist.next-${process.ppid}`, 'a.html'), 'utf8')).toBe('at work')
  })
})

describe('a run that is killed at any moment', () => {
  it('leaves one whole output: all of the last, or all of the new', async () => {
    const module = new URL('../../src/build/output-stage.ts', import.meta.url).href
    const script = folder.path('write.mjs')
    writeFileSync(
      script,
      `import { writeOutputs } from '${module}'
       for (let round = 1; ; round += 1) {
         if (round === 2) console.log('going')
         await writeOutputs(process.argv[2], Array.from({ length: 60 }, (_, i) => ({ path: 'p/' + i + '.html', content: 'round ' + round })))
       }`
    )
    for (let kill = 0; kill < 6; kill += 1) {
      // The delay falls anywhere within several rounds; bash kills by itself, so that no shutdown of ours has a say.
      const shell = `"$0" --import tsx "$1" "$2" > "$3" & while ! grep -q going "$3"; do sleep 0.02; done; sleep 0.0${kill}7; kill -9 $!; wait`
      spawnSync('bash', ['-c', shell, process.execPath, script, dist(), folder.path('said')])
      await writeOutputs(dist(), [], ['*'])
      const texts = Object.values(filesIn(dist()))
      expect(texts).toHaveLength(60)
      expect(new Set(texts).size).toBe(1)
      expect(beside()).toEqual([])
    }
  })
})
