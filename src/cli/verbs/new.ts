import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { Option } from 'commander'
import type { Command } from 'commander'
import { Refusal } from '../../base/refusal.ts'
import { assessFleet } from '../../build/assess.ts'
import { randomBelow } from '../../build/random.ts'
import { writeSiteFiles } from '../../build/write-site-file.ts'
import { freshTag } from '../../domain/tags/fresh-tag.ts'
import { newSiteText } from '../../load/new-site.ts'
import { writeRegister } from '../../load/register.ts'
import { PLACES } from '../../model/site.ts'
import type { SitePlace } from '../../model/site.ts'
import type { RegisteredTag } from '../../model/fleet.ts'
import type { UnitSystem } from '../../units/show.ts'
import { refuseBrokenRegister } from '../register-guard.ts'
import { dayOf, withCommonOptions } from '../options.ts'
import type { CommonOptions } from '../options.ts'
import { makeOutput } from '../output.ts'

interface NewOptions extends CommonOptions {
  readonly title?: string
  readonly units: UnitSystem
  readonly place: SitePlace
  readonly timeZone?: string
}

/** The id of the first box, as `newSiteText` writes it. */
const FIRST_BOX = 'VB1'

export function addNew(program: Command): void {
  withCommonOptions(
    program
      .command('new')
      .description('start a site folder to be filled in')
      .argument('<site>', 'name of the folder: quay-street')
  )
    .option('--title <title>', 'name of the site as people say it')
    .addOption(new Option('--units <units>', 'units of its pages').choices(['metric', 'us']).default('metric'))
    .addOption(new Option('--place <place>', 'kind of place').choices(PLACES).default('other'))
    .option('--time-zone <zone>', 'such as America/Denver')
    .action((site: string, options: NewOptions) => start(site, options))
}

function start(site: string, options: NewOptions): void {
  const { say, aside } = makeOutput(options)
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/u.test(site))
    throw new Refusal(
      `"${site}" cannot be the name of a site folder.`,
      'Use small letters, digits and hyphens: quay-street'
    )
  const file = `${options.sites}/${site}/site.md`
  if (existsSync(join(options.sites, site)))
    throw new Refusal(
      `There is a folder ${options.sites}/${site} already.`,
      'Take another name, or edit the site that is there.'
    )
  const on = dayOf(options)
  const assessment = existsSync(options.sites) ? assessFleet(options.sites, on) : undefined
  if (assessment) refuseBrokenRegister(assessment)
  const fleet = assessment?.fleet ?? { sites: [], register: [] }
  const tag = freshTag(fleet, randomBelow)
  const entry: RegisteredTag = { tag, site, box: FIRST_BOX, state: 'live', issued: on, at: { file: '', path: [] } }
  const text = newSiteText({
    title: options.title ?? titleOf(site),
    units: options.units,
    place: options.place,
    tag,
    ...(options.timeZone ? { timeZone: options.timeZone } : {})
  })
  writeSiteFiles([
    { file, text, isNew: true },
    { file: `${options.sites}/tags.csv`, text: writeRegister([...fleet.register, entry]) }
  ])
  say(`Started ${file}. Its first box has the tag ${tag}.`)
  aside(
    `Fill in what is marked, then: npx underlid check ${site}${options.sites === 'sites' ? '' : ` --sites ${options.sites}`}`
  )
}

/** "quay-street" is titled "Quay Street" until somebody says otherwise. */
function titleOf(site: string): string {
  return site.replaceAll('-', ' ').replace(/\b[a-z]/gu, letter => letter.toUpperCase())
}
