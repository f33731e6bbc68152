/// <reference lib="dom" />
import { monthOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { batteryToday } from './battery.ts'
import type { PageData } from './data.ts'
import { all, attempt, make, one, setText } from './dom.ts'
import { startLanguages } from './languages.ts'
import { localDay, namedDay } from './local-day.ts'
import { keepOffline } from './offline.ts'
import { monthLine, todayLines } from './today.ts'
import { startVisitForm } from './visit-form.ts'
import { fill } from './words.ts'

/* Puts the day on which the page is read in the place of the day on which it was made. */

function start(): void {
  const data = JSON.parse(one('#box-data')?.textContent ?? '') as PageData
  const today = localDay(new Date())
  for (const { controller, due } of data.batteries) attempt(() => showBattery(controller, due as IsoDate, today, data))
  for (const controller of data.controllers) attempt(() => showToday(controller, today, data))
  attempt(() => markMonth(today, data))
  attempt(showPhoto)
  attempt(() => startVisitForm(data, today))
  attempt(() => startLanguages(() => attempt(start)))
  attempt(() => keepOffline(data))
  document.documentElement.classList.add('js')
}

function showToday(controller: PageData['controllers'][number], today: IsoDate, { words }: PageData): void {
  const place = all('[data-today]').find(element => element.dataset['today'] === controller.controller)
  if (!place) return
  setText(one('.as-of', place), fill(words['today'], { date: namedDay(today, words) }))
  const now = new Date()
  const nowS = (now.getHours() * 60 + now.getMinutes()) * 60
  const lines = [...todayLines(controller, today, words, nowS), ...monthLine(controller, today, words)]
  one('.today-lines', place)?.replaceChildren(...lines.map(lineOf))
}

/**
 * The picture comes when the page is there: on a thin line it would take from it. Without script it stands in the page; where it cannot be had,
 * its place goes.
 */
function showPhoto(): void {
  const link = one('.thumb')
  if (!link) return
  link.innerHTML = one('noscript', link)?.innerHTML ?? ''
  one('img', link)?.addEventListener('error', () => link.remove())
}

const DATE = /(\d{4}-\d\d-\d\d)/u

/** A date stays in one piece, and what is not of today stands back. */
function lineOf(text: string): HTMLElement {
  const parts = text.split(DATE)
  const line = make('li', '', parts.length > 1 ? 'later' : '')
  line.append(...parts.map((part, index) => (index % 2 === 1 ? make('span', part, 'date') : part)))
  return line
}

function showBattery(controller: string, due: IsoDate | undefined, today: IsoDate, data: PageData): void {
  const place = all('[data-battery]').find(element => element.dataset['battery'] === controller)
  const word = place && one('.state-word', place)
  if (!place || !word) return
  const { state, word: text, days } = batteryToday(due, today, data.words)
  word.className = `state-word state-${state}`
  one('path', word)?.setAttribute('d', data.shapes[state] ?? '')
  setText(one('b', word), text)
  setText(one('.battery-days', place), days)
}

/** Months stand in their order in each table, twelve a controller. */
function markMonth(today: IsoDate, { words }: PageData): void {
  for (const rows of all('.months tbody').map(body => all('tr', body))) {
    const row = rows[monthOf(today) - 1]
    if (!row) continue
    row.classList.add('now')
    one('th', row)?.append(' ', make('span', fill(words['thisMonth']), 'now-word'))
  }
}

attempt(start)
