import { defineConfig } from 'vitest/config'

/** Rooms whose tests leave the process as they found it: they share one as well, with its reader of TypeScript. */
const TIDY = 'render,page'
const tidy = `tests/{${TIDY}}/**/*.test.ts`

/** Rooms whose tests touch nothing but their arguments: they share a process, so that the sources are read once. */
const PURE = 'base,units,diagnostics,reference,domain,model,words,load,plan,checks,binder,published,export,report'
const pure = `tests/{${PURE}}/**/*.test.ts`

/** Eleventy and the command load TypeScript on their own, outside of vitest. */
const READS_TYPESCRIPT = ['--import', 'tsx']

export default defineConfig({
  test: {
    // Many tests wait for a command or a browser; two would leave a third of two cores idle.
    maxWorkers: 3,
    testTimeout: 180_000,
    hookTimeout: 180_000,
    allowOnly: false,
    passWithNoTests: false,
    projects: [
      { extends: true, test: { name: 'pure', include: [pure], isolate: false } },
      { extends: true, test: { name: 'tidy', include: [tidy], isolate: false, execArgv: READS_TYPESCRIPT } },
      {
        extends: true,
        test: {
          name: 'machine',
          include: ['tests/**/*.test.ts'],
          exclude: [pure, tidy],
          execArgv: READS_TYPESCRIPT
        }
      }
    ]
  }
})
