import { attachmentFaults } from '../../src/build/attachments.ts'
import { goneSiteFaults } from '../../src/build/gone-sites.ts'
import { noRegisterFaults } from '../../src/build/no-register.ts'
import { photoFaults } from '../../src/build/photos.ts'
import { unreadTextFaults } from '../../src/build/unread-texts.ts'
import { isSiteCheck, runChecks, wordFault } from '../../src/checks/run.ts'
import type { Check } from '../../src/checks/check.ts'
import type { Finding } from '../../src/diagnostics/finding.ts'
import type { Fault, LoadedSite, SourceText } from '../../src/load/loaded.ts'
import { loadRegister } from '../../src/load/register.ts'
import { loadSite } from '../../src/load/site.ts'
import type { Site } from '../../src/model/site.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { date } from '../../src/units/date.ts'
import { BASE_FILE, BASE_ID, BASE_ON, baseRegister, baseSite } from '../support/base-site.ts'
import type { SiteInput } from '../support/base-site.ts'
import type { Case, Named } from './page.ts'

/** Sheets that the worked cases of the cards name. */
const WORKED_SHEETS: readonly Named[] = [
  {
    name: 'charge',
    keys: 'battery: { kind: 9 V alkaline, count: 1, interval: 12 months, capacity: 550 mAh }\ndrain: 60 µA\npulse: { charge: 60 mC }\nvalve-on-low-battery: stays as it is\n'
  },
  {
    name: 'panel',
    keys: 'battery:\ndrain: 60 µA\npulse: { charge: 60 mC }\nsolar: { panel: 30 mW, battery: { volts: 3.6 V, capacity: 600 mAh } }\n'
  },
  { name: 'loop-limit', keys: 'limits: { loop: 10 ohm }\n' },
  { name: 'length-cap', keys: 'limits: { lengths: [{ length: 100 ft }] }\n' },
  { name: 'weekdays-only', keys: 'day-rules: [weekdays]\n' },
  { name: 'on-a-wall', keys: 'mounting: on a wall or a post\n' },
  { name: 'three-a-day', keys: 'starts-a-day: 3\n' },
  { name: 'no-cycles', keys: 'cycle-soak: no\n' },
  { name: 'two-leads', keys: 'three-lead: no\nmaster-output: no\npump-output: no\nsensor-inputs: 1\n' },
  { name: 'by-radio', keys: 'set-by: radio\nrange: 10 m\n' }
]

/** A curb near the base site, and the same with its degrees the wrong way round: what the worked case of a card names. */
const curb = (...corners: readonly (readonly [number, number])[]): string =>
  JSON.stringify({
    type: 'FeatureCollection',
    features: [
      { type: 'Feature', properties: { kind: 'curb' }, geometry: { type: 'LineString', coordinates: corners } }
    ]
  })
const WORKED_PLANS: readonly Named[] = [
  { name: 'plan.geojson', keys: curb([-1.61, 54.97], [-1.6098, 54.97]) },
  { name: 'swapped.geojson', keys: curb([54.97, -1.61], [54.97, -1.6098]) }
]

/** Pictures and sheets that lie in the folder of the base site. */
const OTHERS = [
  'photos/vb1-open.jpg',
  'photos/vb2-open.jpg',
  'photos/vb1-open.heic',
  'record-drawing.pdf',
  'scan.jpg',
  'cut-off.pdf',
  'reports/pressure.pdf'
]

/** Faults that a case of another check may carry: most cases show a part of a site, so names lead nowhere or stand twice. */
const PARTIAL_SITE: readonly string[] = ['file/dangling-reference', 'file/duplicate-id', 'file/unit-unlikely']

/** What a check says of a case, in the order in which findings are printed. */
export function findingsOf(check: Check, one: Case): Finding[] {
  const input = inputOf(one)
  const loaded = loadSite(input)
  const text = one.register === undefined ? baseRegister : { ...baseRegister, text: one.register }
  const register = loadRegister(text)
  if (!isSiteCheck(check)) {
    const sites = [{ id: BASE_ID }, ...one.sites.map(({ name }) => ({ id: name }))]
    const gone = goneSiteFaults({ folder: 'sites', register: text, sites }, register.tags)
    const [site] = input.files
    const tagged = [{ id: BASE_ID, folder: `sites/${BASE_ID}`, ...(site ? { site } : {}), visits: [], others: [] }]
    const none = noRegisterFaults({ folder: 'sites', register: text, shared: [], sites: tagged }, register)
    const faults = [...loaded.faults, ...register.faults, ...gone, ...none, ...filesOf(loaded, one.folder)]
    return faults.filter(fault => fault.code === check.card.code).map(fault => wordFault(BASE_ID, fault, [check]))
  }
  const site = understood(loaded, register.faults)
  const others = one.sites.map(other => understood(loadSite(otherSite(other)), []))
  const plan = makePlan(site, date(one.on ?? BASE_ON))
  return runChecks(
    {
      loaded: { ...loaded, faults: [] },
      plan,
      fleet: { sites: [site, ...others], register: register.tags, registerGone: register.tags.length === 0 }
    },
    [check]
  )
}

/** A worked case of a card, as a case of a page. */
export function workedCase(check: Check, of: 'example' | 'instead'): Case {
  const { worked } = check.card
  const on = worked.on === undefined ? {} : { on: date(worked.on) }
  const text = `${worked[of]}\n`
  const input = workedInput(text)
  return {
    title: of,
    fires: of === 'example',
    ...input,
    sheets: [],
    sites: [],
    plans: [],
    expects: [],
    ...on
  }
}

/**
 * Most worked cases are keys of a site file; one is a register, one a name in the folder, alone or with the keys of a visit below it, and one that
 * starts with its day is a visit, or several with a line of dashes between.
 */
function workedInput(text: string): Pick<Case, 'keys' | 'register' | 'visits' | 'folder'> {
  const [path = '', visit] = text.trimEnd().split(/\n([^]*)/u)
  if (/^[^:/]+\.md$/u.test(path) && visit === undefined) return { keys: '', visits: [], folder: [path] }
  if (path.startsWith('visits/') && visit === undefined)
    return { keys: '', visits: [], folder: path.endsWith('.md') ? [] : [path] }
  if (path.startsWith('visits/'))
    return { keys: '', visits: [{ name: path.replace(/^visits\/|\.md$/gu, ''), keys: `${visit}\n` }] }
  if (text.startsWith('tag,')) return { keys: '', register: text, visits: [] }
  const visits = text.split(/^---\n/mu).map((keys, index) => ({ name: `visit-${index + 1}`, keys }))
  return text.startsWith('on: ') ? { keys: '', visits } : { keys: text, visits: [] }
}

function inputOf({ keys, sheets, visits, plans }: Case): SiteInput {
  const shared = [...WORKED_SHEETS.filter(({ name }) => sheets.every(one => one.name !== name)), ...sheets]
  const input = baseSite(keys, {
    shared: shared.map(sheetText),
    visits: visits.map(visit => [`${visit.name}.md`, visit.keys] as const)
  })
  const drawings = [...WORKED_PLANS.filter(({ name }) => plans.every(one => one.name !== name)), ...plans]
  return {
    ...input,
    plans: drawings.map(({ name, keys: text }) => ({ file: BASE_FILE.replace('site.md', name), text }))
  }
}

/** A sheet with the keys that replace those of the base's plain sheet. */
function sheetText({ name, keys }: Named): SourceText {
  const plain = baseSite('', { sheet: keys }).shared[0]
  if (!plain) throw new Error('the base site has no sheet')
  return { file: `sites/_shared/sheets/${name}.md`, text: plain.text }
}

function otherSite({ name, keys }: Named): SiteInput {
  const { files, shared } = baseSite(keys)
  return {
    id: name,
    shared,
    files: files.map(one => ({ ...one, file: one.file.replace(BASE_FILE, `sites/${name}/site.md`) }))
  }
}

/** A case whose site cannot be understood is quiet for the wrong reason. */
function understood({ site, faults, id }: LoadedSite, more: readonly Fault[]): Site {
  const strange = [...faults, ...more].filter(fault => fault.fatal || !PARTIAL_SITE.includes(fault.code))
  if (site && strange.length === 0) return site
  const told = strange.map(
    ({ code, place, details }) => `${place.file}:${place.line} ${code} ${JSON.stringify(details)}`
  )
  throw new Error(`the site ${id} of this case is not understood:\n${told.join('\n')}`)
}

function filesOf(loaded: LoadedSite, more: readonly string[] = []): Fault[] {
  if (!loaded.site) return []
  const sources = {
    id: BASE_ID,
    folder: `sites/${BASE_ID}`,
    site: { file: BASE_FILE, text: '' },
    visits: [],
    others: [...OTHERS, ...more]
  }
  return [
    ...photoFaults(loaded, loaded.site, sources, path => !path.endsWith('.heic')),
    ...attachmentFaults(loaded, loaded.site, sources, path => !/scan\.jpg$|cut-off\.pdf$/u.test(path)),
    ...unreadTextFaults(sources)
  ]
}
