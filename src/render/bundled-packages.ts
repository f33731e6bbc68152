import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { PROJECT } from '../../setup/browser.mjs'

/** Packages of which parts stand in the scripts of the pages; a test holds the list against what is put together. */
export const BUNDLED_PACKAGES = [
  'dijkstrajs',
  'js-quantities',
  'qrcode',
  'temporal-polyfill',
  'temporal-utils'
] as const

/** Their licenses, which ask to go along with every copy. */
export function bundledLicenses(): string {
  return [
    'The scripts of these pages hold parts of the packages below, each under its own license.\n',
    ...BUNDLED_PACKAGES.map(licenseOf)
  ].join('\n')
}

function licenseOf(name: string): string {
  const folder = join(PROJECT, 'node_modules', name)
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string }
  const file = readdirSync(folder).find(one => /^licen[cs]e(?:\.\w+)?$/iu.test(one))
  if (file === undefined) throw new Error(`${folder} has no file with its license.`)
  const text = readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim()
  return `== ${name} ${version}\n\n${text}\n`
}
