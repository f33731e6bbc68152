import { Command, CommanderError } from 'commander'
import { Refusal } from '../base/refusal.ts'
import { toolVersion } from '../build/tool-version.ts'
import { addBuild, addPrint } from './verbs/build.ts'
import { addCalc } from './verbs/calc.ts'
import { addCheck } from './verbs/check.ts'
import { addDue } from './verbs/due.ts'
import { addExplain } from './verbs/explain.ts'
import { addHandover } from './verbs/handover.ts'
import { addImport } from './verbs/import.ts'
import { addMerge } from './verbs/merge.ts'
import { addNew } from './verbs/new.ts'
import { addRecord } from './verbs/record.ts'
import { addServe } from './verbs/serve.ts'
import { addTag } from './verbs/tag.ts'
import { harmless } from '../report/harmless.ts'
import { EXIT } from './output.ts'

const program = new Command('underlid')
  .description('Maintenance binders, box pages and lid labels for battery-run irrigation.')
  .version(toolVersion())
  .configureHelp({ sortSubcommands: false })

for (const add of [
  addNew,
  addImport,
  addCheck,
  addTag,
  addBuild,
  addPrint,
  addMerge,
  addServe,
  addDue,
  addRecord,
  addHandover,
  addCalc,
  addExplain
])
  add(program)
const configured = [program, ...program.commands]
for (const command of configured) {
  command
    .exitOverride()
    .showHelpAfterError(`("underlid ${command === program ? '' : `${command.name()} `}--help" says all there is)`)
  command.configureOutput({ outputError: (text, write) => write(harmless(plainly(text))) })
}

/** A sentence, without the word that the library puts before it. */
function plainly(text: string): string {
  const bare = text.replace(/^error: /u, '')
  return bare.charAt(0).toUpperCase() + bare.slice(1)
}

try {
  await program.parseAsync()
} catch (error) {
  if (error instanceof Refusal) {
    process.stderr.write(`${harmless(error.lines.join('\n'))}\n`)
    process.exitCode = EXIT.refused
  } else if (error instanceof CommanderError) {
    process.exitCode = error.exitCode === 0 ? EXIT.done : EXIT.refused
  } else {
    const { stack, message } = error as Error
    process.stderr.write(
      `This is a fault of Underlid, not of your files. Please report it with the text below.\n${stack ?? message}\n`
    )
    process.exitCode = EXIT.ours
  }
}
