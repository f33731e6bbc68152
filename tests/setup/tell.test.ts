import { describe, expect, it } from 'vitest'
import { setupFile } from './setup-file.ts'

interface Tell {
  duration: (ms: number) => string
  childEnv: (env: Record<string, string>, isTerminal: boolean) => Record<string, string>
}
const { duration, childEnv } = await setupFile<Tell>('tell.mjs')

describe('what the setup says', () => {
  it('tells times as people do', () => {
    expect(duration(0)).toBe('0.0 s')
    expect(duration(412)).toBe('0.4 s')
    expect(duration(59_499)).toBe('59.5 s')
    expect(duration(59_500)).toBe('1 min 0 s')
    expect(duration(72_300)).toBe('1 min 12 s')
  })

  it('has no colors where nobody looks on', () => {
    expect(childEnv({ FORCE_COLOR: '1' }, false)).toMatchObject({ NO_COLOR: '1' })
    expect(childEnv({ FORCE_COLOR: '1' }, false)).not.toHaveProperty('FORCE_COLOR')
    expect(childEnv({}, true)).not.toHaveProperty('NO_COLOR')
    expect(childEnv({ NO_COLOR: '1' }, true)).toHaveProperty('NO_COLOR')
  })
})
