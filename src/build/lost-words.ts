import type { BrowserLost } from '../render/browser-lost.ts'

export interface LostBrowser {
  readonly path: string
  readonly reason: BrowserLost
}

const HELP: Readonly<Record<BrowserLost['how'], string>> = {
  ended: 'Print again; where it ends again, free memory, or set UNDERLID_BROWSER to the path of another browser.',
  broke:
    'Print again; where it breaks down again, free memory, or set UNDERLID_BROWSER to the path of another browser.',
  silent:
    'Print again; on a slow machine allow more seconds with UNDERLID_PRINT_SECONDS=120, or set UNDERLID_BROWSER to the path of another browser.'
}

/** Why a document was not printed by two browsers, and what to do. */
export function lostWords({ path, reason }: LostBrowser, stays: string): string {
  const { how, seconds } = reason
  const what = {
    ended: 'The browser ended while it printed this, and so did a second one',
    broke: 'The browser broke down over this, and so did a second one',
    silent: `The browser gave no answer within ${seconds} s, and neither did a second one`
  }[how]
  return `${what} (${path}).${stays} ${HELP[how]}`
}

/** The same where nothing more was tried, since one browser after the other was lost. */
export function gaveUpWords({ path, reason }: LostBrowser, stays: string): string {
  return `One browser after the other was lost, the last one so: ${reason.message} (${path}).${stays} ${HELP[reason.how]}`
}
