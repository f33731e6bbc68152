/// <reference lib="dom" />
import { monthOf } from '../units/date.ts'
import type { IsoDate } from '../units/date.ts'
import { batteryToday } from './battery.ts'
import type { PageData } from './data.ts'
import { all, attempt, make, one, setText } from './dom.ts'
import { localDay, namedDay } from './local-day.ts'
import { todayLines } from './today.ts'
import { startVisitForm } from './visit-form.ts'
import { fill } from './words.ts'

/* Puts the day on which the page is read in the place of the day on which it was made. */

function start(): void {
  const data = JSON.parse(one('#box-data')?.textContent ?? '') as PageData
  const today = localDay(new Date())
  for (const { controller, due } of data.batteries) attempt(() => showBattery(controller, due as IsoDate, today, data))
  for (const controller of data.controllers) {
    attempt(() => {
      const place = all('[data-today]').find(element => element.dataset['today'] === controller.controller)
      if (!place) return
      setText(one('.as-of', place), fill(data.words['today'], { date: namedDay(today, data.words) }))
      const lines = todayLines(controller, today, data.words).map(line => make('li', line))
      one('.today-lines', place)?.replaceChildren(...lines)
    })
  }
  attempt(() => markMonth(today, data))
  attempt(() => startVisitForm(data, today))
  document.documentElement.classList.add('js')
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

function markMonth(today: IsoDate, data: PageData): void {
  const name = fill(data.words['months']).split(' ')[monthOf(today) - 1] ?? ''
  for (const row of all('[data-month]')) {
    if (!(row.dataset['month'] ?? '').startsWith(name)) continue
    row.classList.add('now')
    one('th', row)?.append(make('span', fill(data.words['thisMonth']), 'now-word'))
  }
}

attempt(start)
