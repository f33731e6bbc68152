import { parseDate } from '../../src/units/date.ts'
import type { IsoDate } from '../../src/units/date.ts'
import { parseExpectation } from './expectation.ts'
import type { Expectation } from './expectation.ts'

/** One case of a page: what of the base site it replaces, and what the check must say. */
export interface Case {
  readonly title: string
  readonly fires: boolean
  readonly on?: IsoDate
  /** Top-level keys of the site file that replace those of the base site. */
  readonly keys: string
  /** The whole of tags.csv, where it is not that of the base site. */
  readonly register?: string
  /** Product sheets beside the base's: keys that replace those of its plain sheet. */
  readonly sheets: readonly Named[]
  /** Other sites of the fleet: keys that replace those of the base site. */
  readonly sites: readonly Named[]
  /** Visits by the name of their file, without its ending. */
  readonly visits: readonly Named[]
  /** Drawings beside the site file, by name: the whole of each. */
  readonly plans: readonly Named[]
  /** Paths of further files of the site's folder, beside the pictures and reports that are always there. */
  readonly folder?: readonly string[]
  readonly expects: readonly Expectation[]
}

export interface Named {
  readonly name: string
  readonly keys: string
}

export interface Page {
  readonly code: string
  readonly cases: readonly Case[]
}

interface Draft {
  readonly title: string
  readonly fires: boolean
  on?: IsoDate
  keys?: string
  register?: string
  folder?: readonly string[]
  readonly sheets: Named[]
  readonly sites: Named[]
  readonly visits: Named[]
  readonly plans: Named[]
  readonly expects: Expectation[]
}

/**
 * Reads a page of cases. Every line must be one that is known here: a misspelt one throws, with its number, so that no case is
 * passed over in silence.
 */
export function parsePage(text: string): Page {
  const lines = text.split('\n')
  const code = /^# ([a-z-]+\/[a-z-]+)$/u.exec(lines[0] ?? '')?.[1]
  if (code === undefined) throw new Error('line 1: a page starts with "# area/name"')
  const drafts: Draft[] = []
  for (let index = 1; index < lines.length; index += 1) {
    const line = lines[index] ?? ''
    if (line.trim() === '') continue
    const fail = (why: string): never => {
      throw new Error(`line ${index + 1}: ${why}`)
    }
    const heading = /^## (fires|quiet): (\S.*)$/u.exec(line)
    if (heading) {
      drafts.push(emptyDraft(heading[2] ?? '', heading[1] === 'fires'))
      continue
    }
    const draft = drafts.at(-1) ?? fail('a case starts with "## fires: " or "## quiet: "')
    if (line.startsWith('```')) {
      const end = lines.indexOf('```', index + 1)
      if (end < 0) fail('the block has no end')
      const body = lines.slice(index + 1, end).join('\n')
      if (!takeBlock(draft, line.slice(3), `${body}\n`)) fail(`"${line}" is no block known here, or stands twice`)
      index = end
    } else if (!takeLine(draft, line)) fail(`"${line}" is not understood`)
  }
  return { code, cases: drafts.map(finished) }
}

function emptyDraft(title: string, fires: boolean): Draft {
  return { title, fires, sheets: [], sites: [], visits: [], plans: [], expects: [] }
}

/** True where the line was taken. */
function takeLine(draft: Draft, line: string): boolean {
  const [, key, rest = ''] = /^(on|expect): (\S.*)$/u.exec(line) ?? []
  if (key === 'on' && draft.on === undefined && draft.keys === undefined) {
    const day = parseDate(rest)
    if (day) draft.on = day
    return day !== undefined
  }
  if (key !== 'expect') return false
  draft.expects.push(parseExpectation(rest))
  return true
}

/** True where the block was taken. */
function takeBlock(draft: Draft, info: string, body: string): boolean {
  const [, kind, name] = /^yaml (sheet|site) ([a-z0-9-]+)$/u.exec(info) ?? []
  if (name !== undefined) {
    draft[kind === 'sheet' ? 'sheets' : 'sites'].push({ name, keys: body })
    return true
  }
  const [, plan] = /^json (\S+\.geojson)$/u.exec(info) ?? []
  if (plan !== undefined) {
    draft.plans.push({ name: plan, keys: body })
    return true
  }
  const visit = /^yaml visit(?: (\S.*))?$/u.exec(info)
  if (visit) {
    draft.visits.push({ name: visit[1] ?? `visit-${draft.visits.length + 1}`, keys: body })
    return true
  }
  if (info === 'yaml' && draft.keys === undefined) {
    draft.keys = body
    return true
  }
  if (info === 'text folder' && draft.folder === undefined) {
    draft.folder = body.trim().split('\n')
    return true
  }
  if (info === 'csv register' && draft.register === undefined) {
    draft.register = body
    return true
  }
  return false
}

function finished({ keys, ...draft }: Draft): Case {
  const { title, fires, expects } = draft
  if (fires && expects.length === 0) throw new Error(`"${title}" fires and does not say what is expected`)
  if (!fires && expects.length > 0) throw new Error(`"${title}" is quiet and expects findings`)
  const files = [...draft.visits, ...draft.sites, ...(draft.folder ?? [])]
  if (keys === undefined && draft.register === undefined && files.length === 0)
    throw new Error(`"${title}" changes nothing`)
  return { ...draft, keys: keys ?? '' }
}
