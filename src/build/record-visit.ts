import { isAbsent } from '../base/absent.ts'
import { Refusal } from '../base/refusal.ts'
import { CHECKS } from '../checks/list.ts'
import { wordFault } from '../checks/run.ts'
import type { Finding } from '../diagnostics/finding.ts'
import type { SourceText } from '../load/loaded.ts'
import { readVisit } from '../load/read-visit.ts'
import { visitText } from '../load/write-visit.ts'
import type { VisitData } from '../load/write-visit.ts'
import type { Site } from '../model/site.ts'
import { jobKey, openJobs } from '../plan/open-jobs.ts'
import type { OpenJob } from '../plan/open-jobs.ts'
import type { Plan } from '../plan/plan.ts'
import type { IsoDate } from '../units/date.ts'
import { assessOne } from './assess.ts'
import { loadOne } from './load-one.ts'
import type { AssessedSite, Assessment } from './assess.ts'
import { PHOTOS } from './photos.ts'
import type { VisitPhotoFile } from './visit-photos.ts'

/** A visit ready to be written, with what it changes. */
export interface VisitToWrite {
  readonly file: string
  readonly text: string
  readonly data: VisitData
  /** Pictures that go into the photos folder with it. */
  readonly photos: readonly NonNullable<VisitPhotoFile['copy']>[]
  readonly changes: VisitChanges
}

export interface VisitChanges {
  readonly due: readonly DueChange[]
  readonly repaired: readonly OpenJob[]
  readonly open: readonly OpenJob[]
  readonly gone: readonly Finding[]
  readonly come: readonly Finding[]
}

export interface DueChange {
  readonly subject: string
  readonly kind: 'battery' | 'backflow'
  readonly before?: IsoDate
  readonly after?: IsoDate
}

/** What was wrong with the text, found before anything was written. */
export type PreparedVisit =
  { readonly ok: true; readonly visit: VisitToWrite } | { readonly ok: false; readonly findings: readonly Finding[] }

export interface VisitWish {
  readonly assessment: Assessment
  readonly site: AssessedSite
  /** The visit as a file, from a slip, from a file or made of flags. */
  readonly source: SourceText
  readonly comment?: string
  readonly photos?: readonly VisitPhotoFile[]
}

/** Reads a visit against its site and works out what it changes. Nothing is written. */
export function prepareVisit({ assessment, site: assessed, source, comment, photos = [] }: VisitWish): PreparedVisit {
  const { site, plan, sources } = assessed
  if (!site || !plan || !sources.site) throw new Refusal(...unreadable(assessed.id))
  const read = readVisit(source, sources.site)
  if (!read.visit) return { ok: false, findings: read.faults.map(fault => wordFault(site.id, fault, CHECKS)) }
  const data = withPhotos(withWholeNames(read.data, site, read.visit.on), photos)
  refuseWhatCannotBe(data, read.visit.on, assessment.on)
  refuseTwice(data, assessed)
  const file = freshName(assessed, read.visit.on, read.visit.reason)
  const text = visitText(data, comment)
  const copies = photos.flatMap(({ file: name, copy }) => (copy ? [{ ...copy, name }] : []))
  const after = assessWith(
    assessed,
    assessment,
    { file, text },
    copies.map(one => one.name)
  )
  refuseLeak(assessed.findings, after.findings)
  return { ok: true, visit: { file, text, data, photos: copies, changes: changesOf(assessed, after) } }
}

function unreadable(id: string): [string, string] {
  return [`The files of ${id} cannot be read yet.`, 'Run "underlid check" first and mend what it names.']
}

/** What is repaired gets the words of the visit that left it open, so that a part of them is enough to say. */
function withWholeNames(data: VisitData, site: Site, on: IsoDate): VisitData {
  const repaired = data['repaired']
  if (!Array.isArray(repaired)) return data
  const open = openJobs(site, on)
  return { ...data, repaired: (repaired as string[]).map(text => openText(text, open)) }
}

/** The pictures that were given, in place of what a slip says of them by name, and behind the others. */
function withPhotos(data: VisitData, photos: readonly VisitPhotoFile[]): VisitData {
  if (photos.length === 0) return data
  const said = (data['photos'] ?? []) as readonly (string | { readonly file?: unknown; readonly caption?: unknown })[]
  const nameOf = (one: (typeof said)[number]): string => String(typeof one === 'string' ? one : (one.file ?? ''))
  const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase()
  const given = (one: (typeof said)[number]) =>
    photos.find(photo => same(photo.was, nameOf(one)) || same(photo.file, nameOf(one)))
  const entry = ({ file, caption }: VisitPhotoFile, words?: unknown) =>
    caption === undefined && words === undefined ? file : { file, caption: caption ?? words }
  const named = said.map(one => {
    const photo = given(one)
    return photo ? entry(photo, typeof one === 'string' ? undefined : one.caption) : one
  })
  const others = photos.filter(photo => !said.some(one => given(one) === photo))
  return { ...data, photos: [...named, ...others.map(one => entry(one))] }
}

function openText(text: string, open: readonly OpenJob[]): string {
  const same = open.find(job => jobKey(job.text) === jobKey(text))
  const like = open.filter(job => jobKey(job.text).includes(jobKey(text)))
  const [only] = same ? [same] : like
  if (only && (same || like.length === 1)) return only.text
  throw new Refusal(
    like.length > 1 ? `More than one open job holds "${text}".` : `No open job holds "${text}".`,
    ...(open.length > 0
      ? ['Say it in the words of one of these:', ...open.map(job => `  ${job.text}`)]
      : ['No visit has left anything open; say it with --done.'])
  )
}

function refuseWhatCannotBe(data: VisitData, visitOn: IsoDate, on: IsoDate): void {
  if (visitOn > on)
    throw new Refusal(
      `The visit is of ${visitOn}, which is after ${on}.`,
      'Correct the day, or name the day it is taken to be with --on.'
    )
  const fitted = ((data['batteries'] ?? []) as { fitted?: string }[]).map(one => one.fitted)
  const late = fitted.find(day => day !== undefined && day > visitOn)
  if (late !== undefined)
    throw new Refusal(`A battery is said to be fitted on ${late}, after the visit of ${visitOn}.`, 'Correct the day.')
  if (hasPrivate(data))
    throw new Refusal(
      'A visit from a slip or from flags holds nothing private.',
      'Take the "private:" lines out of it.'
    )
}

function hasPrivate(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false
  return Object.entries(value).some(([key, inner]) => key === 'private' || hasPrivate(inner))
}

function refuseTwice(data: VisitData, { sources }: AssessedSite): void {
  const { site, visits } = sources
  if (!site) return
  const same = visits.find(one => visitText(readVisit(one, site).data) === visitText(data))
  if (same) throw new Refusal(`This visit is recorded already: ${same.file}`, 'Nothing was written.')
}

/** "visits/2026-05-04-route.md"; a second visit of that day and reason is "-2". */
function freshName({ sources }: AssessedSite, on: IsoDate, reason = 'visit'): string {
  const slug = reason
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-+|-+$/gu, '')
    .slice(0, 40)
    .replace(/-+$/u, '')
  const taken = new Set(sources.visits.map(one => one.file))
  for (let number = 1; ; number += 1) {
    const file = `${sources.folder}/visits/${on}-${slug || 'visit'}${number > 1 ? `-${number}` : ''}.md`
    if (!taken.has(file)) return file
  }
}

/** The site with the visit, assessed as a check would do it. */
function assessWith(
  { sources }: AssessedSite,
  { sources: texts, fleet, on }: Assessment,
  visit: SourceText,
  photos: readonly string[]
): AssessedSite {
  const visits = [...sources.visits, visit]
  const others = [...sources.others, ...photos.map(name => `${PHOTOS}/${name}`)]
  const next = { ...sources, visits, others }
  const loaded = loadOne(next, texts)
  const now = loaded.site
  if (!now) throw new Error(`${visit.file} was read alone and cannot be read with its site`)
  const sites = fleet.sites.map(one => (one.id === now.id ? now : one))
  return assessOne(next, loaded, { ...fleet, sites }, on)
}

function refuseLeak(before: readonly Finding[], after: readonly Finding[]): void {
  const leaks = newIn(after, before).filter(one => one.code === 'privacy/private-word-public')
  const [first] = leaks
  if (first) throw new Refusal(first.message, 'Say it without the private word: what was found is shown at the box.')
}

interface State {
  readonly site?: Site
  readonly plan?: Plan
  readonly findings: readonly Finding[]
}

function changesOf(before: State, after: State): VisitChanges {
  const on = after.plan?.on
  const [was, is] = [before, after].map(({ site }) => (site && on ? openJobs(site, on) : []))
  const has = (jobs: readonly OpenJob[] = [], job: OpenJob) => jobs.some(one => jobKey(one.text) === jobKey(job.text))
  return {
    due: dueChanges(before.plan, after.plan),
    repaired: (was ?? []).filter(job => !has(is, job)),
    open: (is ?? []).filter(job => !has(was, job)),
    gone: newIn(before.findings, after.findings),
    come: newIn(after.findings, before.findings)
  }
}

function dueChanges(before: Plan | undefined, after: Plan | undefined): DueChange[] {
  const of = (kind: DueChange['kind'], plan: Plan | undefined) =>
    kind === 'battery' ? plan?.batteries : plan?.backflows
  return (['battery', 'backflow'] as const).flatMap(kind =>
    [...(of(kind, after)?.entries() ?? [])].flatMap(([subject, { dueOn }]) => {
      const was = of(kind, before)?.get(subject)?.dueOn
      const day = (value: typeof dueOn | undefined) => (value === undefined || isAbsent(value) ? undefined : value)
      const [from, to] = [day(was), day(dueOn)]
      if (from === to) return []
      return [{ subject, kind, ...(from ? { before: from } : {}), ...(to ? { after: to } : {}) }]
    })
  )
}

/** Findings of the first list that the second does not hold, by code, subject and words. */
function newIn(these: readonly Finding[], those: readonly Finding[]): Finding[] {
  const key = ({ code, subject, message }: Finding) => `${code}\n${subject}\n${message}`
  const known = new Set(those.map(key))
  return these.filter(one => !known.has(key(one)))
}
