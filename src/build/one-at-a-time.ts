/** Work that is asked for again and again: never twice at once; asked for meanwhile, once more at its end. */
export function oneAtATime(work: () => Promise<void>): () => void {
  let busy = false
  let again = false
  const start = (): void => {
    if (busy) return void (again = true)
    busy = true
    again = false
    void work().finally(() => {
      busy = false
      if (again) start()
    })
  }
  return start
}
