import { binderWords } from './en-US/binder.ts'
import { boxPageWords } from './en-US/box-page.ts'
import { climateWords } from './en-US/climate.ts'
import { closeoutWords } from './en-US/closeout.ts'
import { faultWords } from './en-US/faults.ts'
import { labelWords } from './en-US/label.ts'
import { officeWords } from './en-US/office.ts'
import { waterWords } from './en-US/water.ts'
import { wiringWords } from './en-US/wiring.ts'

/** All words of the outputs in one language. Another language is another object of this shape. */
export interface Words {
  readonly language: string
  readonly binder: typeof binderWords
  readonly boxPage: typeof boxPageWords
  readonly climate: typeof climateWords
  readonly closeout: typeof closeoutWords
  readonly faults: typeof faultWords
  readonly label: typeof labelWords
  readonly office: typeof officeWords
  readonly water: typeof waterWords
  readonly wiring: typeof wiringWords
}

export const EN_US: Words = {
  language: 'en-US',
  binder: binderWords,
  boxPage: boxPageWords,
  climate: climateWords,
  closeout: closeoutWords,
  faults: faultWords,
  label: labelWords,
  office: officeWords,
  water: waterWords,
  wiring: wiringWords
}
