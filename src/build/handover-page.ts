import { posix } from 'node:path'
import type { Finding } from '../diagnostics/finding.ts'
import { underPolicy } from '../render/page-policy.ts'
import type { Words } from '../words/words.ts'

const LINK = /\s(href|src)="([^"]*)"/gu
const ELSEWHERE = /^(?:[a-z]+:|#|\/\/)/iu

/** A page that opens from a folder: links to files of the package stay, links to what is not in it become plain text. */
export function selfContained(html: string, path: string, there: ReadonlySet<string>): string {
  return html.replace(LINK, (all, name: string, target: string) => {
    const bound = /^attach:(.+)\/(\d+)$/u.exec(target)
    if (bound) return ` ${name}="${decodeURIComponent(bound[1] ?? '')}#page=${bound[2]}"`
    if (target === '' || ELSEWHERE.test(target)) return all
    const [file = ''] = target.split(/[#?]/u)
    return there.has(posix.normalize(posix.join(posix.dirname(path), file))) ? all : ''
  })
}

/** What was open on the day, as text, with lines to sign on. */
export function openItemsText(title: string, on: string, findings: readonly Finding[], words: Words): string {
  const w = words.handover.package
  const items = findings.map(
    ({ severity, code, subject, message, fix }, index) =>
      `${index + 1}. ${words.binder.open.severities[severity]} ${code} ${subject}\n   ${message}\n   ${fix}`
  )
  return [
    w.openItems,
    '',
    w.lead(title, on),
    '',
    ...(items.length === 0 ? [w.none] : items),
    '',
    w.sign,
    '',
    ...w.signatures.flatMap(role => [w.line(role), '']),
    ''
  ]
    .join('\n')
    .replaceAll('\u00a0', ' ')
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

/** The text as a page to look at and to print. */
export function plainPage(title: string, text: string, language: string): string {
  return underPolicy(
    `<!doctype html><html lang="${language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(title)}</title><body><pre style="white-space:pre-wrap;font:1rem/1.5 sans-serif;max-width:44rem;margin:1rem auto;padding:0 1rem">${escaped(text)}</pre></body></html>\n`
  )
}

/** The first page: where things are. */
export function startPage(title: string, links: readonly (readonly [string, string])[], language: string): string {
  const items = links.map(([href, label]) => `<li><a href="${escaped(href)}">${escaped(label)}</a></li>`).join('')
  return underPolicy(
    `<!doctype html><html lang="${language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(title)}</title><body style="font:1rem/1.6 sans-serif;max-width:44rem;margin:1rem auto;padding:0 1rem"><h1>${escaped(title)}</h1><ul>${items}</ul></body></html>\n`
  )
}
