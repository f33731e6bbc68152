import { adviceWords } from './en-US/advice.ts'
import { binderWords } from './en-US/binder.ts'
import { budgetWords } from './en-US/budget.ts'
import { boxPageWords } from './en-US/box-page.ts'
import { changesWords } from './en-US/changes.ts'
import { climateWords } from './en-US/climate.ts'
import { checklistWords } from './en-US/checklists.ts'
import { closeoutWords } from './en-US/closeout.ts'
import { dueWords } from './en-US/due.ts'
import { faultWords } from './en-US/faults.ts'
import { handoverWords } from './en-US/handover.ts'
import { labelWords } from './en-US/label.ts'
import { officeWords } from './en-US/office.ts'
import { stripWords } from './en-US/strips.ts'
import { pressureWords } from './en-US/pressure.ts'
import { powerWords } from './en-US/power.ts'
import { totalsWords } from './en-US/totals.ts'
import { unitWords } from './en-US/units.ts'
import { waterWords } from './en-US/water.ts'
import { wiringWords } from './en-US/wiring.ts'
import { cautionWords } from './en-US/cautions.ts'
import type { CautionWords } from './en-US/cautions.ts'
import { pageWords } from './en-US/pages.ts'
import type { Translated } from './translated.ts'

/** All words of the outputs in one language. Another language is another object of this shape. */
export interface Words {
  /** As a page says it to the browser: "en-US". */
  readonly language: string
  /** Its name in itself, for the link that switches to it. */
  readonly name: string
  readonly cautions: CautionWords
  readonly pages: Translated<typeof pageWords>
  readonly advice: typeof adviceWords
  readonly binder: typeof binderWords
  readonly boxPage: typeof boxPageWords
  readonly budget: typeof budgetWords
  readonly changes: typeof changesWords
  readonly climate: typeof climateWords
  readonly checklists: typeof checklistWords
  readonly closeout: typeof closeoutWords
  readonly due: typeof dueWords
  readonly faults: typeof faultWords
  readonly handover: typeof handoverWords
  readonly label: typeof labelWords
  readonly office: typeof officeWords
  readonly strips: typeof stripWords
  readonly power: typeof powerWords
  readonly pressure: typeof pressureWords
  readonly totals: typeof totalsWords
  readonly units: typeof unitWords
  readonly water: typeof waterWords
  readonly wiring: typeof wiringWords
}

export const EN_US: Words = {
  language: 'en-US',
  name: 'English',
  cautions: cautionWords,
  pages: pageWords,
  advice: adviceWords,
  binder: binderWords,
  boxPage: boxPageWords,
  budget: budgetWords,
  changes: changesWords,
  climate: climateWords,
  checklists: checklistWords,
  closeout: closeoutWords,
  due: dueWords,
  faults: faultWords,
  handover: handoverWords,
  label: labelWords,
  office: officeWords,
  power: powerWords,
  pressure: pressureWords,
  strips: stripWords,
  totals: totalsWords,
  units: unitWords,
  water: waterWords,
  wiring: wiringWords
}
