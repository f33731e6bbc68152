/** The terminals of one controller with what hangs on each, as a line drawing. All text is final. */
export interface WiringFigure {
  readonly figure: 'wiring'
  readonly title: string
  /** The drawing in a sentence or two, for those who cannot see it. */
  readonly alt: string
  readonly controller: string
  readonly rows: readonly WiringRow[]
  /** One wire back for all rows that are `shared`; left out where each has a pair of its own. */
  readonly common?: {
    readonly terminal: string
    readonly label: string
    /** Contacts that lie in it, so that any of them stops all stations. */
    readonly sensors: readonly { readonly name: string; readonly contact: 'closed' | 'open' }[]
  }
}

export interface WiringRow {
  readonly terminal: string
  /** Colors by word, "red / white"; then size and length. */
  readonly wires: string
  /** Wires of its own, without a shared common: 1 to 3. */
  readonly conductors: number
  readonly shared: boolean
  /** Box or place of each splice, in order. */
  readonly splices: readonly string[]
  readonly end: WiringEnd
  readonly name: string
  readonly place: string
  readonly note: string
}

/** What stands at the far end: one coil, coils side by side, a coil with two windings, a relay, a contact. */
export type WiringEnd = 'coil' | 'coils' | 'three leads' | 'relay' | 'closed contact' | 'open contact'
