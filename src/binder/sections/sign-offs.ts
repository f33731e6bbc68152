import { SIGN_OFF_KINDS } from '../../model/closeout.ts'
import type { SignOff } from '../../model/closeout.ts'
import type { Words } from '../../words/words.ts'
import type { Block, Section, Value } from '../blocks.ts'
import { attachmentBlocks } from '../attachments.ts'
import type { PageContext } from '../context.ts'
import { roleIn } from '../role-words.ts'
import { notSupplied, orNotSupplied, stated } from '../values.ts'

/** What was signed or refused, and lines for what is still to be signed. */
export function signOffsSection(context: PageContext): Section {
  const { site, words } = context
  const w = words.binder.signOffs
  const h = words.handover.signOffs
  const signed = site.closeout?.signOffs ?? []
  const asked = signed.flatMap<Block>(one =>
    one.words === undefined ? [] : [{ kind: 'paragraph', text: `${words.closeout.signOffs.words}: “${one.words}”` }]
  )
  return {
    id: 'sign-offs',
    title: words.binder.sections.signOffs,
    newPage: true,
    notSupplied: signed.length === 0,
    blocks: [
      table(signed, words),
      { kind: 'paragraph', text: h.original, small: true },
      ...asked,
      { kind: 'heading', id: 'statement', text: h.statement },
      { kind: 'paragraph', text: h.statementText },
      { kind: 'paragraph', text: w.lead },
      {
        kind: 'signatures',
        sheet: words.binder.sections.signOffs,
        rows: [w.installer, w.owner, w.maintainer].map(role => ({ role, fields: [...w.fields, h.refusal] }))
      },
      { kind: 'paragraph', text: h.keys, small: true },
      ...attachmentBlocks(
        context,
        signed.map(one => ({ ...one, title: words.closeout.signOffs.kinds[one.kind] }))
      )
    ]
  }
}

function table(signed: readonly SignOff[], words: Words): Block {
  const w = words.closeout.signOffs
  const lacking = SIGN_OFF_KINDS.filter(kind => !signed.some(one => one.kind === kind))
  return {
    kind: 'table',
    columns: [w.kind, w.by, w.role, w.on, w.copies].map(label => ({ label })),
    rows: [
      ...signed.map(one => [
        stated(w.kinds[one.kind]),
        bySigned(one, words),
        orNotSupplied(one.role && roleIn(one.role, words), words),
        orNotSupplied(one.on, words, true),
        one.copiesTo.length === 0 ? notSupplied(words) : stated(one.copiesTo.join(', '))
      ]),
      ...lacking.map(kind => [stated(w.kinds[kind]), notSupplied(words), stated('–'), notSupplied(words), stated('–')])
    ]
  }
}

function bySigned({ by, refused }: SignOff, words: Words): Value {
  const w = words.closeout.signOffs
  if (refused === undefined) return orNotSupplied(by, words)
  return { ...stated([by, w.refused(refused)].filter(Boolean).join(' ')), state: 'bad' }
}
