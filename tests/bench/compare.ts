const WARM_UP = 10
const ROUNDS = 31

/**
 * Prints the median processor time of some work, and how many times that of a bare loop it is. Processor time, so that what else runs on
 * the machine counts less; one after the other, so that what the loop leaves for the garbage collector is not charged to the work.
 */
export function compare(name: string, work: () => unknown, bare: () => unknown): void {
  const [own, loop] = [median(timed(work)), median(timed(bare))]
  process.stdout.write(
    `${name}: ${own.toFixed(1)} ms, ${(own / loop).toFixed(2)} times a bare loop (${loop.toFixed(1)} ms)\n`
  )
}

function timed(work: () => unknown): number[] {
  for (let round = 0; round < WARM_UP; round += 1) work()
  return Array.from({ length: ROUNDS }, () => milliseconds(work))
}

function milliseconds(work: () => unknown): number {
  const began = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(began)
  return (user + system) / 1000
}

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0
