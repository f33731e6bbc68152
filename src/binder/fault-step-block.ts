/** A step of fault finding below its heading: why, and what to do beside what to look for. */
export interface FaultStepBlock {
  readonly kind: 'fault-step'
  readonly why: string
  /** Cautions that Safety first has in full, in one line. */
  readonly caution?: string
  readonly doLead: string
  readonly todo: readonly string[]
  readonly seenLead: string
  readonly seen: readonly string[]
}
