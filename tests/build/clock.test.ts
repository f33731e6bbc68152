import { spawnSync } from 'node:child_process'
import { describe, expect, it, vi } from 'vitest'
import { stopwatch, today } from '../../src/build/clock.ts'
import { randomBelow } from '../../src/build/random.ts'

describe('the clock', () => {
  it.each([
    ['Pacific/Kiritimati', '2026-05-02'],
    ['Pacific/Pago_Pago', '2026-04-30'],
    ['UTC', '2026-05-01']
  ])('tells the day on the calendar of %s', (zone, day) => {
    const module = new URL('../../src/build/clock.ts', import.meta.url).href
    const script = `const at = Date.parse('2026-05-01T10:30:00Z')
      globalThis.Date = class extends Date { constructor(...given) { super(...(given.length ? given : [at])) } }
      console.log((await import('${module}')).today())`
    const args = ['--import', import.meta.resolve('tsx'), '--input-type=module', '-e', script]
    const { stdout } = spawnSync(process.execPath, args, { env: { ...process.env, TZ: zone }, encoding: 'utf8' })
    expect(stdout.trim()).toBe(day)
  })

  it('pads months, days, and years before 1000', () => {
    vi.useFakeTimers({ now: new Date(2026, 0, 2, 3), toFake: ['Date'] })
    expect(today()).toBe('2026-01-02')
    vi.useRealTimers()
  })

  it('measures forward', async () => {
    const passed = stopwatch()
    await new Promise(resolve => setTimeout(resolve, 20))
    expect(passed()).toBeGreaterThan(15)
  })
})

describe('chance', () => {
  it('stays below the number given and meets all that are', () => {
    const drawn = Array.from({ length: 2000 }, () => randomBelow(5))
    expect([...new Set(drawn)].sort()).toEqual([0, 1, 2, 3, 4])
  })
})
