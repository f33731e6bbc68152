import type { DrawnMark } from '../plan/drawing-plan.ts'
import type { Block, TableBlock } from './blocks.ts'
import type { PageContext } from './context.ts'
import { markName, unplacedName } from './place-names.ts'
import { boxFigure, placeText, recordFigure } from './plan-figure.ts'
import { notSupplied, orNotSupplied, stated } from './values.ts'

/** A detail beside a photograph, mm: three of them fill a sheet. */
const DETAIL = { A4: { widthMm: 84, heightMm: 58 }, Letter: { widthMm: 84, heightMm: 53 } } as const

/** The drawing with its tables, and how to find each box. Where nothing has a place it says so and gives the ties as they are. */
export function recordDrawingBlocks(context: PageContext): Block[] {
  const { words } = context
  const figure = recordFigure(context)
  if (!figure) return [{ kind: 'not-supplied', text: words.drawing.none.text }, tieTable(context)]
  const { turned, ...plan } = figure
  return [
    placeTable(context),
    ...unplacedTable(context),
    { kind: 'sheet', figure: plan, wide: turned, caption: words.drawing.caption(plan.scale.text) },
    ...findBlocks(context)
  ]
}

/** Boxes that the section shows with their photograph, so that it need not stand elsewhere too. */
export function boxesFound({ plan }: PageContext): ReadonlySet<string> {
  return new Set(plan.drawing.marks.filter(one => one.what === 'box').map(one => one.of))
}

function tieTable({ site, words }: PageContext): TableBlock {
  const w = words.drawing.none
  return {
    kind: 'table',
    caption: w.caption,
    columns: [w.box, w.where, w.ties].map(label => ({ label })),
    rows: site.boxes.map(box => [
      stated(box.id, true),
      orNotSupplied(box.where, words),
      box.ties.length > 0 ? stated(box.ties.join('; ')) : notSupplied(words)
    ])
  }
}

function placeTable(context: PageContext): TableBlock {
  const { plan, words } = context
  const w = words.drawing.table
  return {
    kind: 'table',
    caption: w.caption,
    columns: [
      { label: w.thing },
      { label: w.ties },
      { label: w.east, align: 'right' },
      { label: w.north, align: 'right' },
      { label: w.by }
    ],
    rows: plan.drawing.marks.map(mark => [
      stated(markName(mark, context), true),
      stated(tiesOf(mark, context).join('; ') || '–'),
      stated(placeText(mark.eastM, context), true),
      stated(placeText(mark.northM, context), true),
      stated(w.how[mark.by])
    ]),
    notes: [w.origin]
  }
}

/** As they are written, those too that lead to no point of the drawing. */
function tiesOf({ what, of, name }: DrawnMark, { site }: PageContext): string[] {
  const own = what === 'box' ? (site.boxes.find(one => one.id === of)?.ties ?? []) : []
  const places = site.drawing?.places.filter(one => one.what === what && (one.of ?? '') === of && one.name === name)
  return [...own, ...(places ?? []).flatMap(one => one.ties)]
}

function unplacedTable(context: PageContext): TableBlock[] {
  const { plan, words } = context
  const w = words.drawing.unplaced
  const rows = plan.drawing.unplaced.map(one => [
    stated(unplacedName(one, context), true),
    stated([w.because[one.because], one.reason ?? ''].filter(Boolean).join(': '))
  ])
  if (rows.length === 0) return []
  return [{ kind: 'table', caption: w.caption, columns: [{ label: w.thing }, { label: w.why }], rows }]
}

function findBlocks(context: PageContext): Block[] {
  const { site, words } = context
  const w = words.drawing.find
  const found = site.boxes.flatMap<Block>(box => {
    const figure = boxFigure(box.id, DETAIL[site.paper], context)
    if (!figure) return []
    const [photo] = box.photos
    return [
      {
        kind: 'box-find',
        title: box.id,
        where: box.where ?? '',
        ties: box.ties,
        figure,
        ...(photo
          ? {
              picture: {
                file: `photos/${photo.file}`,
                alt: w.picture(box.id),
                caption: photo.caption ?? w.picture(box.id)
              }
            }
          : {})
      }
    ]
  })
  return found.length === 0 ? [] : [{ kind: 'heading', id: 'find-boxes', text: w.heading }, ...found]
}
