import { describe, expect, it } from 'vitest'
import { setupFile } from './setup-file.ts'

interface Results {
  success: boolean
  numPassedTests: number
  numFailedTests: number
  numPendingTests: number
  numTodoTests: number
  testResults: { status: string; assertionResults: { status: string }[] }[]
}
const { closingLine } = await setupFile<{
  closingLine: (results: Results | undefined) => { line: string; failed: boolean }
}>('closing-line.mjs')

const results = (changes: Partial<Results>): Results => ({
  success: true,
  numPassedTests: 7,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [],
  ...changes
})

describe('the last line of npm test', () => {
  it('counts what passed and what failed', () => {
    expect(closingLine(results({}))).toEqual({ line: '7 passed, 0 failed', failed: false })
    const failing = results({ success: false, numFailedTests: 2 })
    expect(closingLine(failing)).toEqual({ line: '7 passed, 2 failed', failed: true })
  })

  it('counts a test file that could not be loaded as a failure', () => {
    const unloaded = results({ success: false, testResults: [{ status: 'failed', assertionResults: [] }] })
    expect(closingLine(unloaded)).toEqual({ line: '7 passed, 1 failed', failed: true })
  })

  it('does not count a file twice whose tests failed', () => {
    const file = { status: 'failed', assertionResults: [{ status: 'failed' }] }
    expect(closingLine(results({ success: false, numFailedTests: 1, testResults: [file] })).line).toBe(
      '7 passed, 1 failed'
    )
  })

  it('never says that all is well of a run that did not succeed, ran nothing, or left no report', () => {
    expect(closingLine(results({ success: false })).line).toBe('7 passed, 1 failed')
    expect(closingLine(results({ numPassedTests: 0 })).failed).toBe(true)
    expect(closingLine(undefined)).toEqual({ line: '0 passed, 1 failed', failed: true })
  })

  it('names what was passed over', () => {
    expect(closingLine(results({ numPendingTests: 3 })).line).toBe('7 passed, 0 failed, 3 skipped')
  })
})
