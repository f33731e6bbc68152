/// <reference lib="dom" />
import { all, attempt, one } from './dom.ts'

/* Narrows the list of sites by choices and by words. The list is whole without it. */

declare const underlidSearch: Readonly<Record<string, string>> | undefined

function start(): void {
  const form = one('[data-filters]') as HTMLFormElement | null
  const told = one('[data-shown]')
  const rows = all('[data-site]') as HTMLElement[]
  if (!form) return
  const texts = typeof underlidSearch === 'undefined' ? {} : underlidSearch
  const textOf = (row: HTMLElement): string =>
    `${row.textContent ?? ''} ${texts[row.dataset['site'] ?? ''] ?? ''}`.toLowerCase()
  const update = (): void => {
    const choices = (all('select', form) as HTMLSelectElement[]).filter(select => select.value !== '')
    const words = ((one('[name=words]', form) as HTMLInputElement | null)?.value ?? '')
      .toLowerCase()
      .split(/\s+/)
      .filter(Boolean)
    let shown = 0
    for (const row of rows) {
      const text = words.length > 0 ? textOf(row) : ''
      const fits =
        choices.every(select => row.dataset[select.name] === select.value) && words.every(word => text.includes(word))
      row.hidden = !fits
      if (fits) shown += 1
    }
    if (told)
      told.textContent = (told.dataset['shown'] ?? '')
        .replace('{shown}', String(shown))
        .replace('{all}', String(rows.length))
  }
  form.addEventListener('input', update)
  form.addEventListener('submit', event => event.preventDefault())
  form.hidden = false
  update()
}

attempt(start)
