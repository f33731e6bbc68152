import type { z } from 'zod'
import { nearest } from '../improve/nearest.ts'
import { field, taken, wrong } from './field.ts'

const TEXT = { type: ['string', 'number'] } as const

export function text(does: string, example: string): z.ZodType<string> {
  return field({ does, example }, TEXT, value =>
    typeof value === 'boolean'
      ? wrong('file/wrong-shape', { expected: 'text', got: 'true or false', example }, `"${value}"`)
      : taken(String(value).trim())
  )
}

/** A telephone number as it is dialed or said. An email address there would become a number that nobody answers. */
export function phone(does: string, example: string): z.ZodType<string> {
  return field({ does, example }, TEXT, value => {
    const written = String(value).trim()
    return /^\S+@\S+\.\S+$/u.test(written)
      ? wrong('file/not-understood', { expected: 'a telephone number; an email address stands under "email"', example })
      : taken(written)
  })
}

/**
 * A name that other records point to. It must be text: 7 and 07 would be one number and are two names, so a number is refused and the
 * writer told to put it in quotes.
 */
export function id(does: string, example: string): z.ZodType<string> {
  return field({ does, example }, { type: 'string' }, value =>
    typeof value === 'string'
      ? taken(value.trim())
      : wrong('file/wrong-shape', { expected: 'a name', got: 'a bare number', example }, `"${value}"`)
  )
}

/** One of a few words. Case is the writer's own business. */
export function choice<const T extends string>(does: string, of: readonly T[], example: NoInfer<T>): z.ZodType<T> {
  return field({ does, example }, { enum: [...of] }, value => {
    const written = String(value).replace(/\s+/gu, ' ').trim()
    const found = of.find(one => one.toLowerCase() === written.toLowerCase())
    if (found !== undefined) return taken(found)
    const near = nearest(written, of)
    return wrong('file/not-one-of', { known: of, ...(near === undefined ? {} : { nearest: near }) }, near)
  })
}

/** yes or no; true and false are as good. */
export function yesNo(does: string, example: 'yes' | 'no'): z.ZodType<boolean> {
  return field({ does, example }, { enum: ['yes', 'no', true, false] }, value => {
    const word = String(value).toLowerCase()
    if (word === 'yes' || word === 'true') return taken(true)
    if (word === 'no' || word === 'false') return taken(false)
    return wrong('file/not-one-of', { known: ['yes', 'no'] })
  })
}

/** Text that must have a form of its own: a slope, the name of a station. */
export function pattern(does: string, example: string, form: RegExp, expected: string): z.ZodType<string> {
  return field({ does, example }, { type: ['string', 'number'], pattern: form.source }, value => {
    const written = String(value).trim()
    return form.test(written) ? taken(written) : wrong('file/not-understood', { expected, example })
  })
}

const CAPITALS =
  'an address in capitals behind the host: the codes are printed so, and the folder of the host has to be named alike'

/**
 * The address that printed codes lead to. They are set in capitals throughout, which is the same host and, on most servers, another path; and
 * without http a phone shows words and opens nothing.
 */
export function codedAddress(does: string, example: string): z.ZodType<string> {
  return field({ does, example }, { type: 'string', format: 'uri' }, value => {
    const written = String(value).trim()
    const path = pathBehindHost(written)
    if (path === undefined) {
      const whole = `https://${written}`
      const expected = 'an address that a phone opens: https:// and the host'
      const isHost = pathBehindHost(whole) === ''
      return wrong('file/not-understood', { expected, example }, isHost ? `"${whole}"` : undefined)
    }
    if (path === path.toUpperCase()) return taken(written)
    const inCapitals = written.slice(0, written.length - path.length) + path.toUpperCase()
    return wrong('file/not-understood', { expected: CAPITALS, example }, `"${inCapitals}"`)
  })
}

/** What stands behind the host and its port, as it is written; undefined where it is no address of a host in plain letters, or asks for more. */
function pathBehindHost(written: string): string | undefined {
  if (!URL.canParse(written)) return undefined
  const { origin, search, hash } = new URL(written)
  const isPlain = /^https?:\/\//iu.test(written) && written.toLowerCase().startsWith(origin) && search + hash === ''
  const slash = written.indexOf('/', origin.indexOf('//') + 2)
  return isPlain ? written.slice(slash < 0 ? written.length : slash) : undefined
}

/** A file that is bound into the binder: a PDF or a picture beside the site file or in a folder below. No dots lead elsewhere. */
export function attachment(does: string, example: string): z.ZodType<string> {
  const form = /^(?!.*(?:^|\/)\.)[^/\\][^\\]*\.(?:pdf|jpe?g|png)$/iu
  return pattern(does, example, form, 'the name of a PDF, JPEG or PNG file beside the site file')
}

/** The path of a file in sites/_shared/. */
export function sharedFile(does: string, example: string): z.ZodType<string> {
  return pattern(does, example, /\.md$/u, 'the path of a shared file')
}
