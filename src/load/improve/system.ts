import { wrong } from '../schema/field.ts'
import type { Wrong } from '../schema/field.ts'

const US_UNITS = ['ft', 'in', 'ft²', 'gal', 'gpm', 'gph', 'psi', '°F', 'in/h', 'lbf']

/** A missing unit is proposed in the system of the site: the fault's units stand metric first. */
export function inSystem(found: Wrong, system: unknown): Wrong {
  const { units } = found.details
  if (found.code !== 'file/unit-missing' || !Array.isArray(units) || found.value === undefined || system !== 'us')
    return found
  const [metric = ''] = units as string[]
  const us = (units as string[]).find(unit => US_UNITS.includes(unit))
  if (us === undefined) return found
  const ordered = [us, ...(units as string[]).filter(unit => unit !== us)]
  return wrong(found.code, { ...found.details, units: ordered }, found.value.replace(new RegExp(`${metric}$`, 'u'), us))
}
