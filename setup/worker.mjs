// A second process of a large build. It reads TypeScript as the first one does.
const { register } = await import('tsx/esm/api')
register()
await import('../src/build/work-process.ts')
