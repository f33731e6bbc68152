/** Replaced by the full register. */
export type CautionId = string
