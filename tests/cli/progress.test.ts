import { afterEach, describe, expect, it, vi } from 'vitest'
import { makeOutput } from '../../src/cli/output.ts'

const isTerminal = process.stderr.isTTY

afterEach(() => {
  vi.restoreAllMocks()
  vi.useRealTimers()
  process.stderr.isTTY = isTerminal
})

/** What stands on standard error after a hundred sites, one each ten milliseconds. */
async function written(options: { readonly quiet?: boolean; readonly terminal: boolean }): Promise<string> {
  vi.useFakeTimers({ toFake: ['performance', 'setTimeout'] })
  process.stderr.isTTY = options.terminal
  let text = ''
  vi.spyOn(process.stderr, 'write').mockImplementation(chunk => {
    text += String(chunk)
    return true
  })
  const { progress } = makeOutput(options)
  for (let done = 1; done <= 100; done += 1) {
    await vi.advanceTimersByTimeAsync(10)
    progress('Sites', done, 100)
  }
  return text
}

describe('progress of long work', () => {
  it('stands in one line of a terminal, not oftener than an eye can follow, and is gone at the end', async () => {
    const text = await written({ terminal: true })
    expect(text).toContain('\r\u001b[KSites: 10 of 100')
    expect(text.match(/Sites: /gu)?.length).toBeLessThanOrEqual(10)
    expect(text.endsWith('\r\u001b[K')).toBe(true)
    expect(text).not.toContain('\n')
  })

  it('says nothing in a pipe, and nothing with --quiet', async () => {
    expect(await written({ terminal: false })).toBe('')
    expect(await written({ terminal: true, quiet: true })).toBe('')
  })
})
