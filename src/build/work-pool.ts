import { fork } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import type { WorkAnswer, WorkOrder, WorkTask } from './work-order.ts'
import { doTask } from './work-order.ts'

/**
 * MB. What a site is made of lives as long as its task, longer than the young memory of Node is made for: so much of it took a tenth off the time,
 * and twice as much took no more off and held 90 MB.
 */
const YOUNG_MEMORY = '--max-semi-space-size=32'

/** A second process costs about as much to start as this many sites to make. */
const TASKS_WORTH_A_PROCESS = 3

/** Works through tasks, in other processes where there is enough to do. Answers are given to `take` as they come. */
export async function workThrough(
  order: WorkOrder,
  tasks: readonly WorkTask[],
  take: (answer: WorkAnswer) => void
): Promise<void> {
  const processes = Math.min(availableParallelism(), Math.floor(tasks.length / TASKS_WORTH_A_PROCESS))
  if (processes < 2) {
    for (const task of tasks) take(await doTask(order, task))
    return
  }
  const left = [...tasks]
  await Promise.all(Array.from({ length: processes }, () => inProcess(order, left, take)))
}

function inProcess(order: WorkOrder, left: WorkTask[], take: (answer: WorkAnswer) => void): Promise<void> {
  const child = fork(fileURLToPath(new URL('../../setup/worker.mjs', import.meta.url)), {
    cwd: process.cwd(),
    serialization: 'advanced',
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    execArgv: [...process.execArgv, YOUNG_MEMORY, '--expose-gc']
  })
  return new Promise<void>((resolve, reject) => {
    let ended = false
    const next = (): void => {
      const task = left.shift()
      if (task) send(child, { task })
      else {
        ended = true
        child.disconnect()
      }
    }
    child.on('message', (message: { answer?: WorkAnswer; fault?: string }) => {
      if (message.answer) {
        take(message.answer)
        return next()
      }
      ended = true
      child.kill()
      left.length = 0
      reject(new Error(message.fault ?? 'a process gave no answer'))
    })
    child.once('error', reject)
    child.once('exit', code => (ended ? resolve() : reject(new Error(`A process of the build ended with ${code}.`))))
    send(child, { order })
    next()
  })
}

function send(child: ChildProcess, message: object): void {
  child.send(message)
}
