import { posix } from 'node:path'
import { sortedBy } from '../base/collections.ts'
import { SEVERITIES } from '../diagnostics/finding.ts'
import type { Finding } from '../diagnostics/finding.ts'
import { underPolicy } from '../render/page-policy.ts'
import type { Words } from '../words/words.ts'

const LINK = /\s(href|src)="([^"]*)"/gu
const ELSEWHERE = /^(?:[a-z]+:|#|\/\/)/iu

/** A page that opens from a folder: links to files of the package stay, links to what is not in it become plain text. */
export function selfContained(html: string, path: string, there: ReadonlySet<string>): string {
  return html.replace(LINK, (all, name: string, target: string) => {
    if (target === '' || ELSEWHERE.test(target)) return all
    const [file = ''] = target.split(/[#?]/u)
    const leadsTo = posix.normalize(posix.join(posix.dirname(path), decoded(file)))
    // The list of all sites is not handed over; its place is taken by the page that the package opens with.
    if (leadsTo === 'office/index.html') return ` ${name}="${posix.relative(posix.dirname(path), 'index.html')}"`
    return there.has(leadsTo) ? all : ''
  })
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path)
  } catch {
    return path
  }
}

/** What was open on the day, the gravest first, as text, with lines to sign on. */
export function openItemsText(title: string, on: string, findings: readonly Finding[], words: Words): string {
  const w = words.handover.package
  const items = sortedBy(findings, one => SEVERITIES.indexOf(one.severity)).map(
    ({ severity, code, subject, message, fix }, index) =>
      `${index + 1}. ${[words.binder.open.severities[severity], code, subject].filter(Boolean).join(' ')}\n   ${message}\n   ${fix}`
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

/** A sheet of the house for pages that stand alone: black on warm white, a bar at the head, links that a finger finds. */
const STYLE =
  '<style>html{background:#faf6ec;color:#17130d;-webkit-text-size-adjust:100%}' +
  'body{font:1rem/1.5 system-ui,-apple-system,"Segoe UI",Roboto,Arial,sans-serif;max-width:44rem;margin:0 auto;padding:1rem}' +
  'h1{border-top:.5rem solid;padding:.8rem 0 0;margin:0;font-size:1.9rem;line-height:1.15}' +
  'p{margin:.6rem 0 1.2rem}ul{list-style:none;margin:0;padding:0;border-top:.2rem solid}' +
  'li{border-bottom:1px solid #8d8475}li a{display:block;padding:.7rem 0;color:#7a2e0c;text-decoration:none}li b{text-decoration:underline}' +
  'li span{display:block;color:#4a4238}.date{white-space:nowrap}' +
  'pre{white-space:pre-wrap;overflow-wrap:anywhere;font:inherit}@media print{html{background:#fff}}</style>'

const alonePage = (title: string, language: string, body: string): string =>
  underPolicy(
    `<!doctype html><html lang="${language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escaped(title)}</title>${STYLE}<body>${body}</body></html>\n`
  )

/** A day is one word. */
const DATE = /\b\d{4}-\d{2}-\d{2}\b/gu

/** The text as a page to look at and to print. Its first line is its title. */
export function plainPage(title: string, text: string, language: string): string {
  const rest = text.startsWith(`${title}\n`) ? text.slice(title.length).trimStart() : text
  return alonePage(
    title,
    language,
    `<h1>${escaped(title)}</h1><pre>${escaped(rest).replace(DATE, '<span class="date">$&</span>')}</pre>`
  )
}

export interface StartLink {
  readonly href: string
  readonly label: string
  readonly note: string
}

/** The first page: what it is, of which day, and where things are. */
export function startPage(title: string, lead: string, links: readonly StartLink[], language: string): string {
  const items = links
    .map(
      ({ href, label, note }) =>
        `<li><a href="${escaped(href)}"><b>${escaped(label)}</b> <span>${escaped(note)}</span></a></li>`
    )
    .join('')
  return alonePage(title, language, `<h1>${escaped(title)}</h1><p>${escaped(lead)}</p><ul>${items}</ul>`)
}
