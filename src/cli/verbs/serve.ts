import { join } from 'node:path'
import type { Command } from 'commander'
import { Refusal } from '../../base/refusal.ts'
import { editedSite } from '../../build/edited-site.ts'
import { separateBuild } from '../../build/separate-build.ts'
import { serve } from '../../build/serve.ts'
import { PROJECT } from '../../../setup/browser.mjs'
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
      const { sites, out } = options
      const build = separateBuild({ sites, out, ...(options.on === undefined ? {} : { on: options.on }) })
      const rebuild = async (): Promise<boolean> => {
        const { isBuilt, said } = await build.run()
        // A preview goes on where nothing was built: the next edit may mend what this one broke.
        if (isBuilt) say(said)
        else complain(said)
        return isBuilt
      }
      const edited = editedSite({ sites, out, on: () => dayOf(options) })
      await Promise.all([rebuild(), edited.ready().catch(() => undefined)])
      const serving = await serve({
        root: options.out,
        home: '/office/',
        watch: [options.sites, join(PROJECT, 'templates')],
        // What cannot be made ahead is told of by the build that follows.
        ahead: changed => edited.pages(changed).catch(() => []),
        rebuild,
        port
      })
      say(`Preview: ${serving.url}  (stop with Ctrl-C)`)
      process.once('SIGINT', () => {
        build.stop()
        void serving.close().then(() => process.exit(0))
      })
    })
}
