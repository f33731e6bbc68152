import { describe, expect, it } from 'vitest'
import { setupFile } from './setup-file.ts'

const { nodeProblem } = await setupFile<{ nodeProblem: (version: string) => string | undefined }>('node-version.mjs')

describe('the Node that runs us', () => {
  it.each(['20.19.0', '20.20.2', '22.0.0', '30.1.0'])('%s will do', version => {
    expect(nodeProblem(version)).toBeUndefined()
  })

  it.each(['20.18.3', '20.9.0', '18.20.4', '9.11.2'])('%s is too old, and the message names both versions', version => {
    expect(nodeProblem(version)).toContain('Node 20.19 or newer')
    expect(nodeProblem(version)).toContain(version)
  })
})
