import type { Page } from 'puppeteer'
import { GOES_ON } from '../binder/index-entries.ts'

/*
 * Runs in the page. An entry of the index leads to the heading under which a thing is told of; on paper that may be sheets before the row
 * that names it. Each link is led on to the first row, line or figure below its heading that holds the name as a word of its own, and gives
 * that its page number.
 */
const LEAD_ON = `(() => {
  const GOES_ON = ${GOES_ON}
  const UNITS = 'h1, h2, h3, tr, li, p, dt, dd, svg text'
  const holds = (text, name) => {
    if (name === '') return false
    for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1))
      if (!GOES_ON.test(text[at - 1] ?? '') && !GOES_ON.test(text[at + name.length] ?? '')) return true
    return false
  }
  // Cells stand beside each other without a blank, and a name may be set in parts: both readings count.
  const textOf = element => {
    const parts = []
    const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT)
    while (walker.nextNode()) parts.push(walker.currentNode.data)
    return parts.join('') + ' ' + parts.join(' ')
  }
  const links = [...document.querySelectorAll('.index a')]
  const targetOf = link => decodeURIComponent(link.getAttribute('href').slice(1))
  const below = new Map(links.map(link => [targetOf(link), []]))
  let current
  for (const element of document.querySelectorAll('[id], ' + UNITS)) {
    if (below.has(element.id)) current = below.get(element.id)
    if (element.closest('.index')) continue
    if (current && element.matches(UNITS)) current.push([element, textOf(element)])
  }
  let count = 0
  for (const link of links) {
    const name = link.closest('li').querySelector('.index-name').textContent
    const [found] = below.get(targetOf(link)).find(([, text]) => holds(text, name)) ?? []
    if (!found) continue
    const place = found.closest('.framed') ?? found.closest('svg') ?? found
    if (!place.id) place.id = 'index-place-' + (count += 1)
    link.setAttribute('href', '#' + place.id)
    link.querySelector('.page-number').dataset.target = place.id
  }
})()`

/** Leads the index of a document to the places where things are named. To be asked once, before anything else is. */
export async function leadIndexOn(page: Page): Promise<void> {
  await page.evaluate(LEAD_ON)
}
