/// <reference lib="dom" />
import { all, one } from './dom.ts'
import { keepSetting, readSetting } from './draft.ts'

const KEY = 'language'

/**
 * Makes the links to the page's other languages into switches: the other page is fetched ahead, while there is a signal, and takes the place of
 * this one without a reload. Where that cannot be, on a memory stick, the link is followed. `onSwitch` starts the page anew.
 */
export function startLanguages(onSwitch: () => void): void {
  const links = all('.languages a') as HTMLAnchorElement[]
  const wanted = readSetting(KEY)
  for (const link of links) {
    const { href, lang } = link
    const page = location.protocol === 'file:' ? undefined : fetched(href)
    const show = (html: string | undefined): void => {
      if (html === undefined) location.href = href
      else if (swapIn(html)) onSwitch()
    }
    link.addEventListener('click', event => {
      keepSetting(KEY, lang)
      if (!page) return
      event.preventDefault()
      void page.then(show)
    })
    if (page && wanted === lang && document.documentElement.lang !== lang)
      void page.then(html => html !== undefined && show(html))
  }
}

function fetched(href: string): Promise<string | undefined> {
  return fetch(href).then(
    response => (response.ok ? response.text() : undefined),
    () => undefined
  )
}

/** Puts what the other page says into this one. Its styles and script are the same. */
function swapIn(html: string): boolean {
  // Its style sheets are not applied, but the policy of this page would complain of them; those of this page stay.
  const next = new DOMParser().parseFromString(html.replace(/<style>[^]*?<\/style>/gu, ''), 'text/html')
  const parts = ['main', '#box-data'].map(name => [one(name), next.querySelector(name)] as const)
  if (parts.some(([mine, other]) => !mine || !other)) return false
  document.head.append(...all('main style'))
  for (const [mine, other] of parts) if (mine && other) mine.replaceWith(other)
  document.documentElement.toggleAttribute('data-stored', next.documentElement.hasAttribute('data-stored'))
  document.documentElement.lang = next.documentElement.lang
  document.title = next.title
  return true
}
