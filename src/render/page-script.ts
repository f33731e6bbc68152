import { fileURLToPath } from 'node:url'
import { buildSync } from 'esbuild'
import { bundledLicenses } from './bundled-packages.ts'

type ScriptName = 'box' | 'fleet' | 'tag-entry' | 'worker' | 'slip-code'

const made = new Map<ScriptName, string>()

/** The script of the box page as one small text, for browsers of 2020 and later; made once a process. */
export function pageScript(): string {
  return bundled('box')
}

/** The script of the page where a tag is typed by hand. */
export function tagEntryScript(): string {
  return bundled('tag-entry')
}

/** The script of the list of all sites. */
export function fleetScript(): string {
  return bundled('fleet')
}

/** Files of the public folder beside its pages: the worker, the drawing of a slip as a code, and whose work is in the scripts. */
export function publicScripts(): readonly { readonly path: string; readonly content: string }[] {
  return [
    { path: 'public/worker.js', content: bundled('worker') },
    { path: 'public/slip-code.js', content: bundled('slip-code') },
    { path: 'public/licenses.txt', content: bundledLicenses() }
  ]
}

function bundled(name: ScriptName): string {
  const known = made.get(name)
  if (known !== undefined) return known
  const entry = fileURLToPath(new URL(`../page/${name}.ts`, import.meta.url))
  const { outputFiles } = buildSync({
    entryPoints: [entry],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: 'es2020',
    charset: 'ascii',
    legalComments: 'none',
    logLevel: 'silent'
  })
  const text = (outputFiles[0]?.text ?? '').trim().replaceAll('</', '<\\/')
  made.set(name, text)
  return text
}
