import { BATTERIES } from '../../reference/batteries.ts'
import type { BatteryKind } from '../../reference/batteries.ts'

/** The kind that a site file means by "9 V alkaline", "6LR61" or "AA alkaline"; undefined where the words are no kind known here. */
export function batteryKind(written: string): BatteryKind | undefined {
  const bare = plain(written)
  return BATTERIES.find(kind => [kind.name, ...kind.aliases].some(name => plain(name) === bare))
}

/** Two writings of one kind: "9V Alkaline" and "6LR61". Kinds not known here are compared by their words. */
export function sameBattery(one: string, other: string): boolean {
  const [left, right] = [batteryKind(one), batteryKind(other)]
  return left || right ? left === right : plain(one) === plain(other)
}

const plain = (text: string): string => text.toLowerCase().replaceAll(/[\s\u00a0-]+/gu, '')
