import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type { PageContext } from '../binder/context.ts'

/** Prints that the page of a site leads to. */
export const LINKED = ['binder', 'labels'] as const

/** The PDFs of a site that stand in the output, and those that this build is asked for. */
export function printsThere(
  site: string,
  out: string,
  asked: { readonly binder: boolean; readonly labels: boolean } = { binder: false, labels: false }
): PageContext['prints'] {
  return LINKED.filter(name => asked[name] || existsSync(join(out, `print/${site}-${name}.pdf`)))
}
