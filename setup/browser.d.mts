/** One place to look for a browser. */
export interface BrowserPlace {
  readonly path: string
  /** In words: PATH, a folder, a setting. */
  readonly from: string
  /** Added to the environment it is started with. */
  readonly env?: Readonly<Record<string, string>>
  readonly shell?: boolean
}

export interface BrowserFailure {
  readonly path: string
  readonly reason: string
}

export interface LookOptions {
  readonly env?: Readonly<Record<string, string | undefined>>
  readonly platform?: string
  readonly home?: string
}

export const PROJECT: string
export const EMBEDDED: string
export const UNPACKED: string
export function browserPlaces(options?: LookOptions): BrowserPlace[]
export function browsersThere(options?: LookOptions): BrowserPlace[]
export function noBrowserMessage(failures?: readonly BrowserFailure[], options?: LookOptions): string[]
