import { readFileSync } from 'node:fs'
import { assessFleet } from '../../src/build/assess.ts'
import { calendarOf } from '../../src/build/due-outputs.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { dueItems } from '../../src/binder/due-items.ts'
import type { DueItem } from '../../src/binder/due-items.ts'
import { sortedDue } from '../../src/binder/make-fleet-page.ts'
import { EN_US } from '../../src/words/words.ts'
import { date } from '../../src/units/date.ts'

export const ON = date('2026-05-01')
const assessment = assessFleet('sites', ON)
export const contexts = assessment.sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG'))
export const demoDue = sortedDue(contexts.flatMap(context => dueItems({ ...context, words: EN_US })))
export const calendar = (items: readonly DueItem[], on = ON) => calendarOf(items, contexts, on)

/** What the six open sites must need, as it was agreed outside of this code. */
export const agreed = JSON.parse(readFileSync('tests/fixtures/site-findings.json', 'utf8')) as {
  readonly sites: Readonly<Record<string, { readonly due_within_60_days?: Agreed }>>
}

export interface Agreed {
  readonly battery: Readonly<Record<string, number>>
  readonly out_of_service_excluded: readonly string[]
}

export function item(stated: Partial<DueItem> = {}): DueItem {
  return {
    site: 'a',
    siteTitle: 'Site A',
    subject: 'K1',
    kind: 'battery',
    what: 'Battery, 1 × 9 V alkaline',
    dueOn: date('2026-05-20'),
    state: 'due-soon',
    needs: [{ item: '9 V alkaline', count: 1 }],
    ...stated
  }
}
