import { Session } from 'node:inspector/promises'
import { writeFileSync } from 'node:fs'
import { readKeptFleet } from './src/build/kept-fleet.ts'
import { makeSites } from './src/build/site-work.ts'
const fleet = readKeptFleet('/dev/shm/fl', '2026-05-01' as never, () => [])
const units = fleet.units
const session = new Session(); session.connect(); await session.post('Profiler.enable')
const N = Number(process.argv[2] ?? 160)
let t0 = 0
for (let i = 0; i < N; i += 16) {
  if (i === 48) { await session.post('Profiler.start'); t0 = performance.now() }
  await makeSites(units.slice(i, i + 16), fleet.common)
}
console.error(((performance.now() - t0) / (N - 48)).toFixed(1), 'ms/site')
const { profile } = await session.post('Profiler.stop')
writeFileSync('/tmp/lead/steady.cpuprofile', JSON.stringify(profile))
