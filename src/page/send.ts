/// <reference lib="dom" />
import type { PageData } from './data.ts'
import { make, one, setText } from './dom.ts'
import { publicFolder } from './offline.ts'
import type { DrawSlip } from './slip-code.ts'
import { fill } from './words.ts'
import type { ScriptWords } from './words.ts'

/**
 * The ways a slip leaves the phone, each without a server of ours: copied, mailed, handed to another program, or shown as a code for the
 * phone of somebody who has a signal.
 */
export function addSendButtons(slip: HTMLElement, data: PageData, clear: () => void): void {
  const { words } = data
  const text = (): string => one('pre', slip)?.textContent ?? ''
  const subject = (): string => fill(words['subject'], { site: data.site, box: data.box, tag: data.tag })
  const row = make('p', '', 'slip-buttons')
  const place = make('div', '', 'slip-code')
  const copy = button(fill(words['copy']), 'main')
  const mail = make('a', fill(words['mail'])) as HTMLAnchorElement
  const share = button(fill(words['share']))
  const code = button(fill(words['code']))
  const empty = button(fill(words['clear']))
  copy.addEventListener('click', () => copyText(text(), slip, done => setText(copy, fill(words[done]))))
  mail.href = 'mailto:'
  mail.addEventListener('click', () => {
    mail.href = `mailto:?subject=${encodeURIComponent(subject())}&body=${encodeURIComponent(text())}`
  })
  share.addEventListener('click', () => void navigator.share({ title: subject(), text: text() }).catch(() => undefined))
  code.addEventListener('click', () => showCode(text(), data.tag, place, words))
  empty.addEventListener('click', () => {
    place.replaceChildren()
    setText(copy, fill(words['copy']))
    clear()
  })
  row.append(copy, mail, ...('share' in navigator ? [share] : []), ...(publicFolder(data.tag) ? [code] : []), empty)
  slip.append(row, place)
}

function button(text: string, className = ''): HTMLButtonElement {
  const made = make('button', text, className) as HTMLButtonElement
  made.type = 'button'
  return made
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

/** The drawing of codes is fetched when it is first asked for; the worker keeps it for where there is no signal. */
function showCode(text: string, tag: string, place: HTMLElement, words: ScriptWords): void {
  const drawer = (): DrawSlip | undefined => (window as unknown as { underlidSlip?: DrawSlip }).underlidSlip
  const show = (): void => {
    const code = drawer()?.(text)
    place.replaceChildren(code ? drawing(code.side, code.path, fill(words['code'])) : make('p', fill(words['noCode'])))
  }
  if (drawer()) return show()
  const script = document.createElement('script')
  script.src = `${publicFolder(tag) ?? ''}slip-code.js`
  script.onload = script.onerror = show
  document.head.append(script)
}

function drawing(side: number, path: string, label: string): Element {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg')
  const ink = document.createElementNS('http://www.w3.org/2000/svg', 'path')
  svg.setAttribute('viewBox', `0 0 ${side} ${side}`)
  svg.setAttribute('role', 'img')
  svg.setAttribute('aria-label', label)
  svg.setAttribute('shape-rendering', 'crispEdges')
  ink.setAttribute('d', path)
  svg.append(ink)
  return svg
}
