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
/** What a coil of three leads has twice: to open under the first name, to close under a second one. */
const HALVES: Readonly<Record<string, string>> = { loop: 'closing-loop', coil: 'closing-coil' }
/** What a valve did when told to open and to close; the empty one stands for "not tried". */
const ANSWERS = ['', 'as told', 'opens only', 'closes only', 'not at all'] as const

const UNITS = {
  metric: { flow: 'L/min', pressure: 'bar', meter: 'm³', temperature: '°C' },
  us: { flow: 'gpm', pressure: 'psi', meter: 'gal', temperature: '°F' }
} as const

/** Makes the printed list of what to note into a form whose slip can be sent. */
export function startVisitForm(data: PageData, today: IsoDate): void {
  const form = one('[data-visit]') as HTMLFormElement | null
  const slip = one('[data-slip]')
  if (!form || !slip) return
  for (const set of all('[data-visit-station]', form)) set.append(...stationFields(data, 'halves' in set.dataset))
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

function stationFields(data: PageData, halves: boolean): HTMLElement[] {
  const answers = make('select') as HTMLSelectElement
  answers.name = 'answers'
  answers.append(
    ...ANSWERS.map((value, index) => Object.assign(make('option', fill(data.words[`answer${index}`])), { value }))
  )
  const number = (name: string, text: string) => {
    const input = make('input') as HTMLInputElement
    input.name = name
    input.inputMode = 'decimal'
    return labelled(text, input)
  }
  const inputs = OF_STATION.flatMap(name => {
    const what = fill(data.words[name])
    const closing = halves && HALVES[name]
    if (!closing) return [number(name, what)]
    return [number(name, fill(data.words['toOpen'], { what })), number(closing, fill(data.words['toClose'], { what }))]
  })
  const pairs = make('div', '', 'two')
  pairs.append(...inputs)
  return [labelled(fill(data.words['answers']), answers), pairs]
}

function labelled(text: string, field: HTMLElement): HTMLElement {
  const label = make('label')
  label.append(make('span', text), field)
  return label
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
    temperature: value('temperature'),
    temperatureUnit: units.temperature,
    repaired: all('[name=repaired]:checked', form).map(jobOf),
    batteries: all('[data-visit-battery]', form).map(set => ({
      controller: set.dataset['visitBattery'] ?? '',
      kind: valueOf(set, 'kind'),
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
      closingLoop: valueOf(set, 'closing-loop'),
      closingCoil: valueOf(set, 'closing-coil'),
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
  return all('[name]', form) as Field[]
}

const isTick = (field: Field): field is HTMLInputElement => field.type === 'checkbox'

/** The same field keeps its key on a page that was made anew, and in another language: whose it is, and its name; of a job, its words. */
function keyOf(field: Field): string {
  const of = field.closest<HTMLElement>('fieldset, [data-visit-supply]')
  return [...Object.values(of?.dataset ?? {}), field.name === 'repaired' ? jobOf(field) : field.name].join(' ')
}

function jobOf(tick: HTMLElement): string {
  return tick.parentElement?.textContent?.trim() ?? ''
}

function valuesOf(form: HTMLFormElement): Record<string, string> {
  return Object.fromEntries(
    fieldsIn(form).map(field => [keyOf(field), isTick(field) ? (field.checked ? '1' : '') : field.value])
  )
}

/** A field of which nothing is kept shows what it was printed with: the set that is fitted. */
function restore(form: HTMLFormElement, values: Readonly<Record<string, string>>, today: IsoDate): void {
  for (const field of fieldsIn(form)) {
    const kept = values[keyOf(field)]
    if (isTick(field)) field.checked = kept === '1'
    else
      field.value = (kept ?? ('defaultValue' in field ? field.defaultValue : '')) || (field.name === 'on' ? today : '')
  }
}
