/// <reference lib="dom" />
import { all, attempt, one } from './dom.ts'
import { findTag } from './find-tag.ts'

/* Opens the page of a tag typed by hand. The list of tags on the page is all it knows. */

function start(): void {
  const form = one('[data-entry]') as HTMLFormElement | null
  const input = form && (one('[name=tag]', form) as HTMLInputElement | null)
  const unknown = form && one('.entry-unknown', form)
  if (!form || !input) return
  const links = new Map(all('.tags a').map(link => [link.textContent ?? '', (link as HTMLAnchorElement).href]))
  form.addEventListener('submit', event => {
    event.preventDefault()
    const tag = findTag(input.value, [...links.keys()])
    const href = tag === undefined ? undefined : links.get(tag)
    if (href !== undefined) location.href = href
    else if (unknown) unknown.hidden = false
  })
  input.addEventListener('input', () => {
    if (unknown) unknown.hidden = true
  })
  document.documentElement.classList.add('js')
}

attempt(start)
