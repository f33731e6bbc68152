import type { Finding } from '../diagnostics/finding.ts'

interface Changes {
  readonly due: readonly {
    readonly subject: string
    readonly kind: string
    readonly before?: string
    readonly after?: string
  }[]
  readonly repaired: readonly { readonly text: string; readonly since: string }[]
  readonly open: readonly { readonly text: string }[]
  readonly gone: readonly Finding[]
  readonly come: readonly Finding[]
}

/** What a visit changed, a line for each. */
export function recordText({ due, repaired, open, gone, come }: Changes): string {
  const rows = [
    ...due.map(one => ['due', `${one.subject} ${one.kind}: ${one.before ?? 'no date'} -> ${one.after ?? 'no date'}`]),
    ...repaired.map(one => ['closed', `${one.text} (open since ${one.since})`]),
    ...open.map(one => ['open', one.text]),
    ...gone.map(one => ['gone', `${one.code} ${one.subject}`]),
    ...come.map(one => ['new', `${one.severity} ${one.code} ${one.subject}: ${one.message}`])
  ]
  if (rows.length === 0) return '  No due date, open job or finding changes.'
  return rows.map(([word = '', text]) => `  ${word.padEnd(7)} ${text}`).join('\n')
}

export function recordJson(
  {
    site,
    file,
    written,
    photos
  }: { readonly site: string; readonly file: string; readonly written: boolean; readonly photos: readonly string[] },
  visit: object,
  { due, repaired, open, gone, come }: Changes
): object {
  const short = ({ code, severity, subject, message }: Finding) => ({ code, severity, subject, message })
  return {
    schema: 1,
    site,
    file,
    written,
    photos,
    visit,
    due: due.map(({ subject, kind, before, after }) => ({
      subject,
      kind,
      due_before: before ?? null,
      due_after: after ?? null
    })),
    closed: repaired.map(one => one.text),
    open: open.map(one => one.text),
    findings: { gone: gone.map(short), new: come.map(short) }
  }
}
