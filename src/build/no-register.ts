import { isTag } from '../domain/tags/tag.ts'
import type { Fault } from '../load/loaded.ts'
import type { LoadedRegister } from '../load/register.ts'
import type { FleetSources } from './read-fleet.ts'
import { tagsOfSites } from './rivals.ts'

/** A register that is not there, or that holds no line, while sites carry tags: told once, not at each box. */
export function noRegisterFaults(
  { folder, register, shared, sites }: Pick<FleetSources, 'folder' | 'register' | 'shared' | 'sites'>,
  { tags: registered, faults }: LoadedRegister
): Fault[] {
  // What is wrong with its lines is told at them.
  if (registered.length > 0 || faults.length > 0) return []
  const carrying = [...tagsOfSites({ sites, shared })].filter(([, { tags }]) => tags.some(isTag)).map(([id]) => id)
  if (carrying.length === 0) return []
  const file = register?.file ?? `${folder}/tags.csv`
  return [
    {
      code: 'tag/no-register',
      subject: '',
      place: { file, line: 1, column: 1, length: 0, text: '' },
      details: { file, isThere: register !== undefined, sites: carrying },
      fatal: false
    }
  ]
}
