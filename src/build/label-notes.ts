import type { Label, LabelSheet } from '../binder/pages.ts'
import { labelView } from '../render/label-view.ts'
import type { Words } from '../words/words.ts'

/** What a label had no room for: some of its stations, or so much that it is not made. */
export interface LabelNote {
  readonly box: string
  readonly stations: number
  /** Stations that stand on it; absent where the label is left out. */
  readonly shown?: number
  /** Whether the plan code that was wished is not on it. */
  readonly noPlan?: true
}

/** Labels that were made, and what the sheet had no room for. */
export interface LabelTally {
  readonly made: number
  readonly notes: readonly LabelNote[]
}

/** The sheet without the labels whose words do not fit, and what is to be told of the others. */
export function roomyLabels(sheet: LabelSheet, words: Words): { sheet: LabelSheet; notes: readonly LabelNote[] } {
  const looked = sheet.labels.map(label => ({ label, note: noteOf(label, sheet, words) }))
  const labels = looked.filter(({ note }) => !note || note.shown !== undefined).map(({ label }) => label)
  return { sheet: { ...sheet, labels }, notes: looked.flatMap(({ note }) => note ?? []) }
}

function noteOf(label: Label, { cut }: LabelSheet, words: Words): LabelNote | undefined {
  const { fits, stations } = labelView(label, { ...words.label, ...words.pages.label }, cut)
  const note = { box: label.box, stations: label.stations.length }
  if (!fits) return note
  const noPlan = cut?.planMm !== undefined && !label.plan
  if (stations.length === note.stations && !noPlan) return undefined
  return { ...note, shown: stations.length, ...(noPlan ? { noPlan } : {}) }
}

const WHAT_TO_DO = 'Shorten the shut-off or the title in the site file, or ask for a larger one with --label-size.'

/** For the end of a print: a line for each label, one for all where none of a site fits. */
export function labelNoteTexts(site: string, { made, notes }: LabelTally): readonly string[] {
  if (made > 0 || notes.length < 2) return notes.map(note => labelNoteText(site, note))
  return [`Not printed: the lid labels of ${site}: the words of none of the ${notes.length} fit. ${WHAT_TO_DO}`]
}

function labelNoteText(site: string, { box, stations, shown, noPlan }: LabelNote): string {
  const label = `the lid label of ${site} ${box}`
  if (shown === undefined) return `Not printed: ${label}: its words do not fit. ${WHAT_TO_DO}`
  const plan = noPlan ? [`On ${label} there is no plan code: not even name, shut-off and battery fit in it.`] : []
  const lines =
    shown < stations ? [`On ${label} stand ${shown} of ${stations} stations; the others are on its page.`] : []
  return [...lines, ...plan].join('\n')
}
