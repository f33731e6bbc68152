/// <reference lib="dom" />
import type { IsoDate } from '../units/date.ts'
import type { PageData } from './data.ts'
import { all, make, one, setText } from './dom.ts'
import { dropDraft, keepDraft, readDraft } from './draft.ts'
import { slipText } from './slip.ts'
import type { SlipFields } from './slip.ts'
import { fill } from './words.ts'

type Field = HTMLInputElement | HTMLTextAreaElement

/** Makes the printed list of what to note into a form whose slip can be copied or mailed. */
export function startVisitForm(data: PageData, today: IsoDate): void {
  const form = one('[data-visit]') as HTMLFormElement | null
  const slip = one('[data-slip]')
  if (!form || !slip) return
  const key = `visit ${data.tag}`
  restore(form, readDraft(key), today)
  const show = () => {
    keepDraft(key, valuesOf(form))
    setText(one('pre', slip), slipText(fieldsOf(form, data)))
  }
  form.addEventListener('input', show)
  form.addEventListener('submit', event => event.preventDefault())
  slip.append(buttons(form, slip, data, today, key, show))
  show()
}

function buttons(
  form: HTMLFormElement,
  slip: HTMLElement,
  data: PageData,
  today: IsoDate,
  key: string,
  show: () => void
): HTMLElement {
  const row = make('p', '', 'slip-buttons')
  const copy = make('button', fill(data.words['copy']), 'main') as HTMLButtonElement
  const mail = make('a', fill(data.words['mail'])) as HTMLAnchorElement
  const clear = make('button', fill(data.words['clear'])) as HTMLButtonElement
  copy.type = clear.type = 'button'
  const text = () => one('pre', slip)?.textContent ?? ''
  copy.addEventListener('click', () => copyText(text(), slip, done => setText(copy, fill(data.words[done]))))
  mail.addEventListener('click', () => {
    const subject = fill(data.words['subject'], { site: data.site, box: data.box, tag: data.tag })
    mail.href = `mailto:?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(text())}`
  })
  mail.href = 'mailto:'
  clear.addEventListener('click', () => {
    dropDraft(key)
    restore(form, {}, today)
    setText(copy, fill(data.words['copy']))
    show()
  })
  row.append(copy, mail, clear)
  return row
}

/** Where the browser does not let a page copy, the slip is selected for the person to copy. */
function copyText(text: string, slip: HTMLElement, done: (word: 'copied' | 'selected') => void): void {
  const select = () => {
    const pre = one('pre', slip)
    if (pre) getSelection()?.selectAllChildren(pre)
    done('selected')
  }
  if (!navigator.clipboard) return select()
  navigator.clipboard.writeText(text).then(() => done('copied'), select)
}

function fieldsOf(form: HTMLFormElement, data: PageData): SlipFields {
  return {
    site: data.site,
    box: data.box,
    tag: data.tag,
    on: valueOf(form, 'on'),
    by: valueOf(form, 'by'),
    reason: valueOf(form, 'reason'),
    batteries: all('[data-visit-battery]', form).map(set => ({
      controller: set.dataset['visitBattery'] ?? '',
      kind: set.dataset['kind'] ?? '',
      changed: (one('[name=changed]', set) as HTMLInputElement | null)?.checked === true,
      rest: valueOf(set, 'rest'),
      load: valueOf(set, 'load')
    })),
    readings: all('[data-visit-station]', form).map(set => ({
      station: set.dataset['visitStation'] ?? '',
      loop: valueOf(set, 'loop'),
      coil: valueOf(set, 'coil'),
      flow: valueOf(set, 'flow'),
      flowUnit: data.controllers[0]?.units === 'us' ? 'gpm' : 'L/min'
    })),
    found: valueOf(form, 'found'),
    done: valueOf(form, 'done'),
    open: valueOf(form, 'open')
  }
}

function valueOf(within: HTMLElement, name: string): string {
  return (one(`[name=${name}]`, within) as Field | null)?.value.trim() ?? ''
}

function fieldsIn(form: HTMLFormElement): Field[] {
  return all('input, textarea', form) as Field[]
}

const isTick = (field: Field): field is HTMLInputElement => field.type === 'checkbox'

/** By place in the form: a field's name may stand in several sets. */
function valuesOf(form: HTMLFormElement): Record<string, string> {
  return Object.fromEntries(
    fieldsIn(form).map((field, index) => [`${index}`, isTick(field) ? (field.checked ? '1' : '') : field.value])
  )
}

function restore(form: HTMLFormElement, values: Readonly<Record<string, string>>, today: IsoDate): void {
  for (const [index, field] of fieldsIn(form).entries()) {
    const value = values[index] ?? ''
    if (isTick(field)) field.checked = value === '1'
    else field.value = value || (field.name === 'on' ? today : '')
  }
}
