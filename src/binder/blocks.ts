/**
 * A binder as plain data: what stands on the page, in order, without a word of HTML. Renderers print these and compute nothing.
 * All text is final: numbers are rounded, units are attached, words come from the catalogue.
 */

import type { PressureWayFigure } from './figures/pressure-way.ts'
import type { BatteryYearFigure } from './figures/battery-year.ts'
import type { NeedGivenFigure } from './figures/need-given.ts'
import type { StripLoadFigure, WeekStripFigure } from './figures/week-strip.ts'
import type { FaultStepBlock } from './fault-step-block.ts'
import type { PlanFigure } from './figures/plan.ts'
import type { BoxFindBlock, ChartBlock, SheetBlock } from './sheet-blocks.ts'
import type { WiringFigure } from './figures/wiring.ts'

/** How a value came to be known. Each looks different in print, and never by colour alone. */
export type Standing =
  'stated' | 'measured' | 'computed' | 'data-plate' | 'common-practice' | 'default' | 'not-supplied' | 'not-computed'

export interface Value {
  readonly text: string
  readonly standing: Standing
  /** Why it is not there, or which calculation made it. */
  readonly note?: string
  /** Set in the monospaced cut: tags, times, readings. */
  readonly mono?: boolean
  /** A state that must be seen, by word and shape first: "OVERDUE". */
  readonly state?: State
  /** A blank that is written in or ticked, on paper or on a screen; its text, where there is one, is what to expect there. */
  readonly blank?: 'text' | 'tick'
}

/** The shape beside the word: a filled square, a half-filled one, a crossed-out one, an empty one. */
export type State = 'good' | 'soon' | 'bad' | 'unknown'

export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE'

export interface CautionBlock {
  readonly kind: 'caution'
  readonly signal: SignalWord
  readonly title: string
  readonly hazard: string
  readonly consequence: string
  readonly avoidance: readonly string[]
  /** Standard or code with its edition; empty where common practice. */
  readonly edition: string
  readonly deference: string
}

export interface TableBlock {
  readonly kind: 'table'
  readonly caption?: string
  readonly columns: readonly {
    readonly label: string
    readonly unit?: string
    readonly align?: 'left' | 'right' | 'center'
  }[]
  readonly rows: readonly (readonly Value[])[]
  readonly notes?: readonly string[]
  /** Rows, from 0, that head the next one and stay with it. */
  readonly leads?: readonly number[]
  /** Set sideways where the table is wider than a portrait page. */
  readonly wide?: boolean
  /** Empty ruled lines to be filled in by hand. */
  readonly blankRows?: number
  /** What its blanks are named after, where its caption does not say it. */
  readonly sheet?: string
}

export interface FindingBlock {
  readonly kind: 'finding'
  readonly code: string
  readonly severity: 'error' | 'warning' | 'note'
  readonly severityWord: string
  readonly subject: string
  readonly message: string
  readonly why: string
  readonly source: string
  readonly fix: string
  readonly place: string
}

/** One calculation shown with its numbers, for "how these numbers were made". */
export interface WorkingBlock {
  readonly kind: 'working'
  readonly name: string
  readonly title: string
  readonly does: string
  readonly steps: readonly { readonly subject: string; readonly lines: readonly string[] }[]
  readonly sources: readonly string[]
  readonly limits?: string
}

/** A page of a file that is bound in at its place. */
export interface AttachmentBlock {
  readonly kind: 'attachment'
  /** Path beside the document. */
  readonly file: string
  /** A picture is shown; a page of a PDF is put in when the document is printed. */
  readonly picture: boolean
  /** From 1. */
  readonly page: number
  readonly wide: boolean
  readonly caption: string
}

/** Names with the headings that they are told of under; the pages are filled in when it is printed. */
export interface IndexBlock {
  readonly kind: 'index'
  readonly entries: readonly { readonly name: string; readonly kind: string; readonly targets: readonly string[] }[]
}

export type FigureSpec =
  | WeekStripFigure
  | NeedGivenFigure
  | PressureWayFigure
  | WiringFigure
  | PlanFigure
  | BatteryYearFigure
  /** The year, month by month: bars with the number above each. */
  | {
      readonly figure: 'months'
      readonly title: string
      readonly unit: string
      readonly months: readonly { readonly label: string; readonly value: number; readonly text: string }[]
    }
  /** A day as a strip from noon to noon: windows as a band, runs as bars, one lane a station. */
  | {
      readonly figure: 'day-strip'
      readonly title: string
      readonly hours: readonly { readonly minute: number; readonly label: string }[]
      readonly fromMinute: number
      readonly toMinute: number
      readonly windows: readonly { readonly from: number; readonly to: number; readonly label: string }[]
      readonly lanes: readonly {
        readonly label: string
        readonly bars: readonly { readonly from: number; readonly to: number; readonly label: string }[]
      }[]
      /** What is drawn meanwhile, below the lanes. */
      readonly load?: StripLoadFigure
    }
  /** A wire run from controller to coil: segments with size and length. */
  | {
      readonly figure: 'wire-run'
      readonly title: string
      readonly from: string
      readonly to: string
      readonly segments: readonly { readonly label: string; readonly share: number }[]
      readonly splices: number
      readonly verdict: string
      readonly state: State
    }

export type Block =
  | { readonly kind: 'paragraph'; readonly text: string; readonly small?: boolean }
  | { readonly kind: 'heading'; readonly id: string; readonly text: string }
  /** The writer's own Markdown: rendered without raw HTML. */
  | { readonly kind: 'prose'; readonly markdown: string }
  | {
      readonly kind: 'facts'
      readonly caption?: string
      readonly rows: readonly { readonly label: string; readonly value: Value }[]
    }
  | TableBlock
  | FaultStepBlock
  | { readonly kind: 'list'; readonly lead?: string; readonly ordered: boolean; readonly items: readonly string[] }
  /** `sheet` names its boxes to tick and the blanks in its lines. */
  | { readonly kind: 'checklist'; readonly sheet: string; readonly lead?: string; readonly items: readonly string[] }
  | CautionBlock
  | FindingBlock
  | WorkingBlock
  | IndexBlock
  | AttachmentBlock
  | SheetBlock
  | BoxFindBlock
  | ChartBlock
  | { readonly kind: 'figure'; readonly figure: FigureSpec; readonly caption: string }
  | { readonly kind: 'picture'; readonly file: string; readonly alt: string; readonly caption: string }
  | { readonly kind: 'not-supplied'; readonly text: string }
  | {
      readonly kind: 'tag-plate'
      readonly tag: string
      readonly box: string
      readonly site: string
      readonly url: string
      readonly qr: QrSpec
    }
  | {
      readonly kind: 'signatures'
      /** What its blanks are named after. */
      readonly sheet: string
      readonly rows: readonly { readonly role: string; readonly fields: readonly string[] }[]
    }
  | ProgramCardBlock
  /** Two cards beside each other: as it is set, and what would be better. */
  | { readonly kind: 'card-pair'; readonly left: ProgramCardBlock; readonly right: ProgramCardBlock }

/** The settings of one program in the order a person keys them in. */
export interface ProgramCardBlock {
  readonly kind: 'program-card'
  readonly title: string
  readonly lines: readonly { readonly label: string; readonly value: string }[]
  readonly stations: readonly { readonly station: string; readonly waters: string; readonly runTime: string }[]
  readonly foot?: string
}

export interface QrSpec {
  /** Text in the code, upper case, so that it prints in the smaller alphanumeric mode. */
  readonly text: string
  readonly level: 'L' | 'M' | 'Q' | 'H'
  readonly moduleMm: number
  readonly version: number
  /** Side of the symbol with its quiet zone, mm. */
  readonly sideMm: number
  /** Light modules on every side; left out where they are the four that the standard asks for. */
  readonly quietModules?: number
}

export interface Section {
  /** Anchor and file-stable name: "wire-schedule". */
  readonly id: string
  readonly title: string
  readonly blocks: readonly Block[]
  /** Starts a new sheet. */
  readonly newPage: boolean
  /** True where nothing was supplied for it, for the list of what is missing. */
  readonly notSupplied?: boolean
}

export interface Binder {
  readonly site: string
  readonly title: string
  readonly subtitle: string
  readonly language: string
  readonly paper: 'A4' | 'Letter'
  /** Printed at the foot of every page: data date, revision, site. */
  readonly running: { readonly left: string; readonly right: string }
  readonly cover: {
    readonly lines: readonly { readonly label: string; readonly value: string }[]
    readonly company: string
    readonly dataDate: string
    readonly revision: string
    readonly counts: readonly { readonly label: string; readonly value: string }[]
    readonly openItems: string
    readonly tags: readonly { readonly box: string; readonly tag: string }[]
  }
  readonly contentsTitle: string
  readonly sections: readonly Section[]
}
