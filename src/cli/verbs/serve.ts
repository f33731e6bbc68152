import { join } from 'node:path'
import type { Command } from 'commander'
import { Refusal } from '../../base/refusal.ts'
import { serve } from '../../build/serve.ts'
import { PROJECT } from '../../../setup/browser.mjs'
import { countsText } from '../../report/text.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { makeOutput } from '../output.ts'

interface ServeOptions extends CommonOptions {
  readonly port: string
}

export function addServe(program: Command): void {
  withCommonOptions(program.command('serve').description('preview on this machine that follows edits'))
    .option('--port <port>', 'port of the preview', '4600')
    .action(async (options: ServeOptions) => {
      const { say, complain } = makeOutput(options)
      const port = Number(options.port)
      if (!Number.isInteger(port) || port < 0 || port > 65_535)
        throw new Refusal(`"${options.port}" is no port.`, 'Use a number from 0 to 65535.')
      const { buildFleet } = await import('../../build/pipeline.ts')
      const rebuild = async (): Promise<boolean> => {
        try {
          const { findings, leftOut } = await buildFleet({
            sites: options.sites,
            out: options.out,
            on: dayOf(options)
          })
          say(
            `Built. ${countsText(findings)}.${leftOut.length > 0 ? ` Left out: ${leftOut.join(', ')}; see "npx underlid check".` : ''}`
          )
          return true
        } catch (error) {
          // A preview goes on: the next edit may mend what this one broke.
          complain(error instanceof Refusal ? error.lines.join('\n') : (error as Error).message)
          return false
        }
      }
      await rebuild()
      const serving = await serve({
        root: options.out,
        home: '/office/',
        watch: [options.sites, join(PROJECT, 'templates')],
        rebuild,
        port
      })
      say(`Preview: ${serving.url}  (stop with Ctrl-C)`)
      process.once('SIGINT', () => void serving.close().then(() => process.exit(0)))
    })
}
