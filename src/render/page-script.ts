import { fileURLToPath } from 'node:url'
import { buildSync } from 'esbuild'

type ScriptName = 'box' | 'tag-entry'

const made = new Map<ScriptName, string>()

/** The script of the box page as one small text, for ES2019 and later; made once a process. */
export function pageScript(): string {
  return bundled('box')
}

/** The script of the page where a tag is typed by hand. */
export function tagEntryScript(): string {
  return bundled('tag-entry')
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
    target: 'es2019',
    charset: 'ascii',
    legalComments: 'none',
    logLevel: 'silent'
  })
  const text = (outputFiles[0]?.text ?? '').trim().replaceAll('</', '<\\/')
  made.set(name, text)
  return text
}
