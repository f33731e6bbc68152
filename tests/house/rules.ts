import type { Source } from './read-sources.ts'

/** Rooms by rank. A file takes from a lower rank or from its own room; types count. */
export const RANKS: Readonly<Record<string, number>> = {
  base: 0,
  units: 1,
  diagnostics: 1,
  reference: 2,
  domain: 3,
  model: 4,
  words: 4,
  load: 5,
  plan: 5,
  checks: 6,
  binder: 6,
  render: 7,
  export: 7,
  report: 7,
  page: 7,
  build: 8,
  cli: 9
}

const room = (path: string): string => path.split('/')[1] ?? ''

/** In words, each arrow of a file that points up or sideways. */
export function upwardArrows({ path, imports }: Source): string[] {
  const own = room(path)
  const rank = RANKS[own]
  if (rank === undefined)
    return [`${path}: "${own}" is no room of this house. Put the file into one of ${Object.keys(RANKS).join(', ')}.`]
  return imports.flatMap(({ to, line }) => {
    if (to.startsWith('setup/'))
      return rank >= 7 ? [] : [`${path}:${line} takes ${to}. Only render, build and cli know the setup.`]
    if (!to.startsWith('src/')) return []
    const other = room(to)
    const otherRank = RANKS[other]
    if (other === own || (otherRank !== undefined && otherRank < rank)) return []
    const where = otherRank === rank ? 'beside it' : 'above it'
    return [
      `${path}:${line} takes ${to}. ${own} is of rank ${rank}, and ${other} stands ${where} (rank ${otherRank}): ` +
        `a file takes from a lower rank or from its own room, so that facts go one way. Move what is shared down, or hand it in as an argument.`
    ]
  })
}

type Effect = 'files' | 'network' | 'clock' | 'chance' | 'process' | 'console' | 'locale' | 'days'

const EFFECTS: Readonly<Record<string, Effect>> = {
  'Date.now': 'clock',
  'new Date()': 'clock',
  'Date()': 'clock',
  'Temporal.Now': 'clock',
  performance: 'clock',
  'Date.UTC': 'days',
  'Date.parse': 'days',
  'new Date(…)': 'days',
  'Math.random': 'chance',
  crypto: 'chance',
  process: 'process',
  console: 'console',
  Intl: 'locale',
  fetch: 'network',
  XMLHttpRequest: 'network',
  WebSocket: 'network',
  EventSource: 'network',
  navigator: 'process',
  localStorage: 'files'
}

const MODULES: readonly (readonly [RegExp, Effect])[] = [
  [/^(?:node:)?fs(?:\/promises)?$/u, 'files'],
  [/^(?:node:)?(?:http2?|https|net|tls|dns|dgram)$/u, 'network'],
  [/^(?:node:)?(?:perf_hooks|timers)(?:\/promises)?$/u, 'clock'],
  [
    /^(?:node:)?(?:child_process|process|os|worker_threads|cluster|readline|repl|vm|module)(?:\/promises)?$/u,
    'process'
  ],
  [/^(?:node:)?console$/u, 'console'],
  [/^(?:esbuild|puppeteer|@11ty\/eleventy)$/u, 'process']
]

/**
 * The few named places, and what each may touch. All else gets it as an argument. `days` is Date as plain arithmetic on a number of
 * days, which asks no clock and knows no time zone.
 */
const PLACES: readonly (readonly [RegExp, readonly Effect[]])[] = [
  [/^src\/units\/date\.ts$/u, ['days']],
  // Asked for every day of a year by every rule: too often to go through text.
  [/^src\/domain\/schedule\/days\.ts$/u, ['days']],
  [/^src\/render\/(?:pdf|browser|eleventy)[\w-]*\.ts$/u, ['files', 'process']],
  [
    /^src\/render\/(?:page-script|bundled-packages|styles|font-faces|template-helpers|template-environment)\.ts$/u,
    ['files', 'process']
  ],
  // The box page asks the phone for the day it is read on.
  // The worker of the public folder, and the page in its other language.
  [/^src\/page\/(?:worker|languages)\.ts$/u, ['network', 'files', 'process', 'clock']],
  [/^src\/page\//u, ['clock', 'days', 'locale', 'files', 'process']],
  [/^src\/build\/clock\.ts$/u, ['clock']],
  [/^src\/build\/random\.ts$/u, ['chance']],
  [/^src\/build\/serve\.ts$/u, ['files', 'network']],
  [/^src\/build\//u, ['files', 'process']],
  [/^src\/cli\//u, ['files', 'process', 'console']]
]

/** In words, what a file touches that is not its place to touch. */
export function strayEffects({ path, imports, effects }: Source): string[] {
  const allowed = new Set(PLACES.find(([place]) => place.test(path))?.[1] ?? [])
  const touched = [
    ...imports.flatMap(({ to, line, typeOnly }) => {
      const effect = typeOnly ? undefined : MODULES.find(([name]) => name.test(to))?.[1]
      return effect ? [{ name: to, effect, line }] : []
    }),
    ...effects.map(({ name, line }) => ({ name, effect: EFFECTS[name] ?? 'locale', line }))
  ]
  return touched
    .filter(({ effect }) => !allowed.has(effect))
    .map(
      ({ name, effect, line }) =>
        `${path}:${line} uses ${name} (${effect}). Only a few named places touch that; hand in what is needed as an argument.`
    )
}

/** One ring of imports, as "a -> b -> a", or nothing. What is only a type is gone at run time and makes no ring. */
export function importRing(sources: readonly Source[]): string | undefined {
  const links = new Map(
    sources.map(source => [source.path, source.imports.filter(link => !link.typeOnly).map(link => link.to)])
  )
  const settled = new Set<string>()
  const follow = (path: string, trail: readonly string[]): string | undefined => {
    if (trail.includes(path)) return [...trail.slice(trail.indexOf(path)), path].join(' -> ')
    if (settled.has(path)) return undefined
    for (const next of links.get(path) ?? []) {
      const ring = follow(next, [...trail, path])
      if (ring) return ring
    }
    settled.add(path)
    return undefined
  }
  for (const path of links.keys()) {
    const ring = follow(path, [])
    if (ring) return ring
  }
  return undefined
}
