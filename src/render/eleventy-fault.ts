export interface TemplateFault {
  /** The file, as Nunjucks found it, else as it was asked for. */
  readonly template: string
  readonly line?: number
  readonly column?: number
  readonly reason: string
}

/**
 * Nunjucks says "(path) [Line 3, Column 5]" and, on the next line, what is wrong. It counts lines from 1 in what it cannot read, and
 * from 0 in what fails while it runs; the latter reads "Error: …".
 */
export function templateFault(error: unknown, template: string): TemplateFault {
  const text = error instanceof Error ? error.message : String(error)
  const file = /\(([^()\n]+\.\w+)\)/u.exec(text)?.[1] ?? template
  const place = /\[Line (\d+), Column (\d+)\]/u.exec(text)
  const last = text.split('\n').at(-1)?.trim() ?? text
  const reason = last.replace(/^(?:\w*[Ee]rror: )+/u, '')
  if (!place) return { template: file, reason }
  return { template: file, line: Number(place[1]) + (reason === last ? 0 : 1), column: Number(place[2]), reason }
}
