import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // Eleventy and the command load TypeScript on their own, outside of vitest.
    execArgv: ['--import', 'tsx'],
    allowOnly: false,
    passWithNoTests: false
  }
})
