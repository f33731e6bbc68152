import { ES } from './es/index.ts'
import { EN_US } from './words.ts'
import type { Words } from './words.ts'

/** Every catalogue, the first language first. A new language is one import and one entry here. */
export const CATALOGUES: readonly Words[] = [EN_US, ES]

export const LANGUAGES: readonly string[] = CATALOGUES.map(one => one.language)

/** The catalogue of a language; the first one where there is none of that name. */
export function wordsOf(language: string | undefined): Words {
  return CATALOGUES.find(one => one.language === language) ?? EN_US
}
