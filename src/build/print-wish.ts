import type { LabelWish } from '../binder/make-labels.ts'

/** What is printed, where anything is. */
export interface PrintWish {
  readonly binders: boolean
  readonly labels: boolean
  readonly charts?: boolean
  readonly restricted: boolean
  /** Another size of label, or each on a sheet of its own; shapes the page of labels too. */
  readonly labelWish?: LabelWish
}
