/// <reference lib="dom" />
import type { IsoDate } from '../units/date.ts'
import type { PageData } from './data.ts'
import { all, make, one, setText } from './dom.ts'
import { dropDraft, keepDraft, readDraft } from './draft.ts'
import { addSendButtons } from './send.ts'
import { slipText } from './slip.ts'
import type { SlipFields } from './slip.ts'
import { fill } from './words.ts'

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement

/** Fields of every station; made here, since each would else weigh on the page once a station. */
const OF_STATION = ['flow', 'pressure', 'loop', 'coil'] as const
/** What a valve did when told to open and to close; the empty one stands for "not tried". */
const ANSWERS = ['', 'as told', 'opens only', 'closes only', 'not at all'] as const

const UNITS = {
  metric: { flow: 'L/min', pressure: 'bar', meter: 'm³' },
  us: { flow: 'gpm', pressure: 'psi', meter: 'gal' }
} as const

/** Makes the printed list of what to note into a form whose slip can be sent. */
export function startVisitForm(data: PageData, today: IsoDate): void {
  const form = one('[data-visit]') as HTMLFormElement | null
  const slip = one('[data-slip]')
  if (!form || !slip) return
  for (const set of all('[data-visit-station]', form)) set.append(...stationFields(data))
  const key = `visit ${data.tag}`
  restore(form, readDraft(key), today)
  const show = () => {
    keepDraft(key, valuesOf(form))
    setText(one('pre', slip), slipText(fieldsOf(form, data)))
  }
  form.addEventListener('input', show)
  form.addEventListener('submit', event => event.preventDefault())
  const clear = () => {
    dropDraft(key)
    restore(form, {}, today)
    show()
  }
  addSendButtons(slip, data, clear)
  show()
}

function stationFields(data: PageData): HTMLElement[] {
  const answers = make('select') as HTMLSelectElement
  answers.name = 'answers'
  answers.append(...ANSWERS.map((value, index) => Object.assign(worded('option', `answer${index}`, data), { value })))
  const inputs = OF_STATION.map(name => {
    const input = make('input') as HTMLInputElement
    input.name = name
    input.inputMode = 'decimal'
    return labelled(name, input, data)
  })
  const pairs = make('div', '', 'two')
  pairs.append(...inputs)
  return [labelled('answers', answers, data), pairs]
}

function labelled(word: string, field: HTMLElement, data: PageData): HTMLElement {
  const label = make('label')
  label.append(worded('span', word, data), field)
  return label
}

function worded(name: string, word: string, { words }: PageData): HTMLElement {
  return make(name, fill(words[word]))
}

function fieldsOf(form: HTMLFormElement, data: PageData): SlipFields {
  const units = UNITS[data.units]
  const value = (name: string) => valueOf(form, name)
  return {
    site: data.site,
    box: data.box,
    tag: data.tag,
    on: value('on'),
    arrived: value('arrived'),
    left: value('left'),
    by: value('by'),
    reason: value('reason'),
    batteries: all('[data-visit-battery]', form).map(set => ({
      controller: set.dataset['visitBattery'] ?? '',
      kind: set.dataset['kind'] ?? '',
      changed: isTicked(set, 'changed'),
      rest: valueOf(set, 'rest'),
      load: valueOf(set, 'load')
    })),
    programs: all('[data-visit-program]', form).map(set => ({
      controller: set.dataset['visitProgram'] ?? '',
      clock: valueOf(set, 'clock'),
      found: valueOf(set, 'as-found'),
      left: valueOf(set, 'as-left')
    })),
    readings: all('[data-visit-station]', form).map(set => ({
      station: set.dataset['visitStation'] ?? '',
      answers: valueOf(set, 'answers'),
      loop: valueOf(set, 'loop'),
      coil: valueOf(set, 'coil'),
      flow: valueOf(set, 'flow'),
      pressure: valueOf(set, 'pressure'),
      flowUnit: units.flow,
      pressureUnit: units.pressure
    })),
    meters: all('[data-visit-supply]', form).map(set => ({
      supply: set.dataset['visitSupply'] ?? '',
      meter: valueOf(set, 'meter'),
      unit: units.meter
    })),
    found: value('found'),
    done: value('done'),
    parts: value('parts'),
    photos: value('photos'),
    open: value('open'),
    owner: value('owner'),
    drawingChange: isTicked(form, 'drawing')
  }
}

function valueOf(within: HTMLElement, name: string): string {
  return (one(`[name=${name}]`, within) as Field | null)?.value.trim() ?? ''
}

function isTicked(within: HTMLElement, name: string): boolean {
  return (one(`[name=${name}]`, within) as HTMLInputElement | null)?.checked === true
}

function fieldsIn(form: HTMLFormElement): Field[] {
  return all('input, textarea, select', form) as Field[]
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
