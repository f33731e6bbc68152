import type { Browser, LaunchOptions } from 'puppeteer'

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

export interface Started {
  readonly browser?: Browser
  readonly place?: BrowserPlace
  readonly failures: readonly BrowserFailure[]
}

export const PROJECT: string
export const EMBEDDED: string
export const UNPACKED: string
export function browserPlaces(options?: LookOptions): BrowserPlace[]
export function browsersThere(options?: LookOptions): BrowserPlace[]
export function noBrowserMessage(failures?: readonly BrowserFailure[], options?: LookOptions): string[]
export function startFirst(
  launch: (options: LaunchOptions) => Promise<Browser>,
  places: readonly BrowserPlace[]
): Promise<Started>
export function reasonOf(error: unknown): string
