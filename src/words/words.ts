import { adviceWords } from './en-US/advice.ts'
import { binderWords } from './en-US/binder.ts'
import { budgetWords } from './en-US/budget.ts'
import { boxPageWords } from './en-US/box-page.ts'
import { changesWords } from './en-US/changes.ts'
import { climateWords } from './en-US/climate.ts'
import { checklistWords } from './en-US/checklists.ts'
import { closeoutWords } from './en-US/closeout.ts'
import { drawingWords } from './en-US/drawing.ts'
import { dueWords } from './en-US/due.ts'
import { faultWords } from './en-US/faults.ts'
import { fleetWords } from './en-US/fleet.ts'
import { handoverWords } from './en-US/handover.ts'
import { labelWords } from './en-US/label.ts'
import { officeWords } from './en-US/office.ts'
import { stripWords } from './en-US/strips.ts'
import { pressureWords } from './en-US/pressure.ts'
import { powerWords } from './en-US/power.ts'
import { timeWords } from './en-US/time.ts'
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
  readonly cautions: Translated<CautionWords>
  readonly pages: Translated<typeof pageWords>
  readonly advice: Translated<typeof adviceWords>
  readonly binder: Translated<typeof binderWords>
  readonly boxPage: Translated<typeof boxPageWords>
  readonly budget: Translated<typeof budgetWords>
  readonly changes: Translated<typeof changesWords>
  readonly climate: Translated<typeof climateWords>
  readonly checklists: Translated<typeof checklistWords>
  readonly closeout: Translated<typeof closeoutWords>
  readonly drawing: Translated<typeof drawingWords>
  readonly due: Translated<typeof dueWords>
  readonly faults: typeof faultWords
  readonly fleet: Translated<typeof fleetWords>
  readonly handover: Translated<typeof handoverWords>
  readonly label: Translated<typeof labelWords>
  readonly office: Translated<typeof officeWords>
  readonly strips: Translated<typeof stripWords>
  readonly power: Translated<typeof powerWords>
  readonly pressure: Translated<typeof pressureWords>
  readonly time: Translated<typeof timeWords>
  readonly totals: Translated<typeof totalsWords>
  readonly units: Translated<typeof unitWords>
  readonly water: Translated<typeof waterWords>
  readonly wiring: Translated<typeof wiringWords>
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
  drawing: drawingWords,
  due: dueWords,
  faults: faultWords,
  fleet: fleetWords,
  handover: handoverWords,
  label: labelWords,
  office: officeWords,
  power: powerWords,
  pressure: pressureWords,
  strips: stripWords,
  time: timeWords,
  totals: totalsWords,
  units: unitWords,
  water: waterWords,
  wiring: wiringWords
}
