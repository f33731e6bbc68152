import type { QrSpec, Standing, State, Value } from '../../src/binder/blocks.ts'

/* Short ways to write values by hand for the invented pages of tests/look. */
const of =
  (standing: Standing) =>
  (text: string, note?: string): Value => ({ text, standing, ...(note ? { note } : {}) })

export const stated = of('stated')
export const measured = (text: string, note?: string): Value => ({ ...of('measured')(text, note), mono: true })
export const computed = (text: string, note?: string): Value => ({ ...of('computed')(text, note), mono: true })
export const plate = of('data-plate')
export const common = of('common-practice')
export const standard = of('default')
export const gap = (): Value => of('not-supplied')('not supplied')
export const open = (why: string): Value => of('not-computed')('not computed', why)
export const mono = (text: string): Value => ({ ...stated(text), mono: true })
export const withState = (value: Value, state: State): Value => ({ ...value, state })

export function qr(tag: string, host = 'EXAMPLE.ORG'): QrSpec {
  return { text: `HTTPS://${host}/B/${tag}/`, level: 'H', moduleMm: 1.1, version: 3, sideMm: 1.1 * 37 }
}

/** A drawn stand-in for a photograph: a lid, open, with two valves. */
export const PHOTO = `data:image/svg+xml,${encodeURIComponent(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 300"><rect width="400" height="300" fill="#8a8174"/><rect x="60" y="50" width="280" height="200" rx="6" fill="#2b2620"/><circle cx="150" cy="150" r="46" fill="#5d564c"/><circle cx="260" cy="150" r="46" fill="#5d564c"/><path d="M40 60L0 0M60 50L20 0" stroke="#4a4238" stroke-width="8"/></svg>'
)}`
