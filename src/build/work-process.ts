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
  } catch (error) {
    process.send?.({ fault: (error as Error).stack ?? String(error) })
  }
}
