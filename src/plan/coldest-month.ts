import { isAbsent } from '../base/absent.ts'
import { coldShare } from '../domain/power/cell-climate.ts'
import type { Controller, Site } from '../model/site.ts'
import type { ColdestMonth } from './power-plan.ts'
import { monthMeansC } from './site-means.ts'

/** The coldest month in which a valve is worked; undefined where the temperature is not known, or nothing is worked. */
export function coldestMonth(
  site: Site,
  { sheet }: Controller,
  kind: string,
  pulses: readonly number[]
): ColdestMonth | undefined {
  const means = monthMeansC(site.climate)
  if (isAbsent(means)) return undefined
  const worked = means.flatMap((meanC, index) => ((pulses[index] ?? 0) > 0 ? [{ meanC, month: index + 1 }] : []))
  if (worked.length === 0) return undefined
  const coldest = worked.reduce((least, one) => (one.meanC < least.meanC ? one : least))
  const stated = sheet?.battery?.cold
  // Lithium stands the cold better than alkaline; by how much is not known here, so nothing is taken off.
  if (!stated && /lithium/iu.test(kind)) return { ...coldest, share: 1, by: 'not known' }
  const point = stated ? { atC: stated.at.si, share: stated.capacity.si } : undefined
  return { ...coldest, share: coldShare(coldest.meanC, point), by: stated ? 'sheet' : 'rule' }
}
