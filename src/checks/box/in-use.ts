import type { Box, Site } from '../../model/site.ts'

/** Boxes that are where the file says: none of a site that is removed, and none with a status of its own, such as "taken away". */
export function boxesInUse(site: Site): readonly Box[] {
  return site.status === 'removed' ? [] : site.boxes.filter(box => box.status === undefined)
}
