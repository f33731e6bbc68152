import { adviceWords } from './advice.ts'
import { binderWords } from './binder.ts'
import { boxPageWords } from './box-page.ts'
import { budgetWords } from './budget.ts'
import { cautionWords } from './cautions.ts'
import { changesWords } from './changes.ts'
import { checklistWords } from './checklists.ts'
import { climateWords } from './climate.ts'
import { closeoutWords } from './closeout.ts'
import { drawingWords } from './drawing.ts'
import { dueWords } from './due.ts'
import { faultWords } from './faults.ts'
import { fleetWords } from './fleet.ts'
import { handoverWords } from './handover.ts'
import { labelWords } from './label.ts'
import { officeWords } from './office.ts'
import { pageWords } from './pages.ts'
import { powerWords } from './power.ts'
import { pressureWords } from './pressure.ts'
import { stripWords } from './strips.ts'
import { timeWords } from './time.ts'
import { totalsWords } from './totals.ts'
import { unitWords } from './units.ts'
import { waterWords } from './water.ts'
import { wiringWords } from './wiring.ts'
import type { Words } from '../words.ts'

/** Spanish, in the terms of docs/terms-es.md. Figures and units stand as in every language. */
export const ES: Words = {
  language: 'es',
  name: 'Español',
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
