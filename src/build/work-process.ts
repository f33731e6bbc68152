import { doTask } from './work-order.ts'
import type { WorkOrder, WorkTask } from './work-order.ts'

let order: WorkOrder | undefined
let queue = Promise.resolve()

process.on('message', (message: { order?: WorkOrder; task?: WorkTask }) => {
  if (message.order) order = message.order
  const { task } = message
  if (task) queue = queue.then(() => answer(task))
})

async function answer(task: WorkTask): Promise<void> {
  try {
    if (!order) throw new Error('a task came before its order')
    const done = await doTask(order, task)
    process.send?.({ answer: done })
    // What a task leaves behind is not kept until the machine runs short: several processes share it.
    globalThis.gc?.()
  } catch (error) {
    process.send?.({ fault: (error as Error).stack ?? String(error) })
  }
}
