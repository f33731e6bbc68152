/**
 * "412 passed, 0 failed" from what vitest reports. A test file that could not even be loaded counts as one failure, and so does a
 * run that says it did not succeed without naming a test, or that left no report.
 */
export function closingLine(results) {
  if (!results) return { line: '0 passed, 1 failed', failed: true }
  const unloaded = results.testResults.filter(
    file => file.status === 'failed' && file.assertionResults.every(test => test.status !== 'failed')
  )
  let failed = results.numFailedTests + unloaded.length
  if (failed === 0 && !results.success) failed = 1
  const skipped = results.numPendingTests + results.numTodoTests
  const line = `${results.numPassedTests} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`
  return { line, failed: failed > 0 || results.numPassedTests === 0 }
}
