// A second process of a large build. It reads the program as the first one does.
const { startProgram } = await import('./program.mjs')
await startProgram('worker')
