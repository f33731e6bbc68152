import { randomInt } from 'node:crypto'

/** A whole number from 0 to one less than `below`, each as likely: the one source of chance. Tags are drawn with it. */
export function randomBelow(below: number): number {
  return randomInt(below)
}
