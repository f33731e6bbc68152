import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'
import { join, relative } from 'node:path'
import { PROJECT } from './browser.mjs'
import { prepare } from './prepare.mjs'
import { tell } from './tell.mjs'

// npm start: whatever the machine lacks is brought in, then the sites here are built and printed.
const browser = await prepare()
const verb = browser ? 'print' : 'build'
const options = process.argv.slice(2)
const result = spawnSync(process.execPath, [join(PROJECT, 'setup', 'underlid.mjs'), verb, ...options], {
  cwd: PROJECT,
  stdio: 'inherit'
})
const out = join(PROJECT, optionValue(options, '--out') ?? 'dist')
if (existsSync(out)) for (const line of whereToLook(out)) tell(line)
process.exitCode = result.status ?? 3

function whereToLook(folder) {
  const pages = ['office/index.html', 'public/index.html'].filter(path => existsSync(join(folder, path)))
  const prints = existsSync(join(folder, 'print'))
    ? readdirSync(join(folder, 'print'))
        .filter(name => name.endsWith('.pdf'))
        .sort()
        .map(name => `print/${name}`)
    : []
  return [
    '',
    'Open in a browser or a PDF reader:',
    ...[...pages, ...prints].map(path => `  ${relative(PROJECT, join(folder, path))}`),
    'Live preview that follows edits: npx underlid serve',
    'All there is to do:              npx underlid --help'
  ]
}

function optionValue(args, name) {
  const joined = args.find(arg => arg.startsWith(`${name}=`))
  if (joined) return joined.slice(name.length + 1)
  const at = args.indexOf(name)
  return at === -1 ? undefined : args[at + 1]
}
