import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Drawing } from '../../model/drawing.ts'
import { LINE_KINDS, PLACE_KINDS, SIDES } from '../../model/drawing.ts'
import { optional } from './field.ts'
import { each, given, made, part } from './made.ts'
import { makePosition, position } from './position.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { circle, corners, spot } from './spots.ts'
import { choice, id, text } from './texts.ts'
import { date } from './times.ts'

const AT = 'East and north of the origin of the drawing, the unit once at the end; west and south are below zero.'

const point = record(
  'a point to measure from',
  { does: 'A thing that stays, and that ties are measured from.', example: '{ name: lamp post 7, at: 12.4 3.0 m }' },
  {
    name: text('Its name, as the ties call it.', 'lamp post 7'),
    at: optional(spot(AT, '12.4 3.0 m')),
    position: optional(position)
  }
)

const place = record(
  'a place on the drawing',
  {
    does: 'Where a thing is: by its distances to two points, by meters or feet, or by degrees.',
    example: '{ what: shut-off, of: S1, at: 3.2 -5.1 m }'
  },
  {
    what: choice('What it is.', PLACE_KINDS, 'shut-off'),
    of: optional(id('The box, controller, supply, sensor or station that it is of.', 'S1')),
    name: optional(text('As the drawing labels it.', 'drain at the low end')),
    at: optional(spot(AT, '3.2 -5.1 m')),
    position: optional(position),
    ties: optional(
      list(text('A distance to a point of the drawing.', '"4.2 m from lamp post 7"'), {
        does: 'Distances to points of the drawing, two at least; a box has its own.',
        example: '["4.2 m from lamp post 7", "9.1 m from lamp post 8"]'
      })
    ),
    side: optional(
      choice(
        'Two ties fit two spots. The side of the line between the points on which it lies; without it a third tie decides, then the nearer ground of its zones.',
        SIDES,
        'north'
      )
    )
  }
)

const area = record(
  'an area of a zone',
  { does: 'The ground of a zone.', example: '{ zone: Z1, points: "0 0, 10 0, 10 5 m" }' },
  {
    zone: text('Name of the zone, or of its station.', 'Z1'),
    points: optional(corners({ does: 'Its corners, in order.', example: '0 0, 10 0, 10 5 m' }, 3)),
    circle: optional(circle('A round one: middle and radius.', '0 0 6 m'))
  }
)

const line = record(
  'a line of the drawing',
  { does: 'What else the drawing shows.', example: '{ kind: curb, points: "0 0, 30 0 m" }' },
  {
    kind: choice('What it is.', LINE_KINDS, 'curb'),
    name: optional(text('Its name.', 'granite wall')),
    points: optional(
      corners({ does: 'Where it runs; a ring ends where it starts.', example: '0 0, 30 0, 30 12 m' }, 2)
    ),
    circle: optional(circle('A round one: middle and radius.', '0 0 12 m'))
  }
)

export const drawing = record(
  'the drawing',
  {
    does: 'What the record drawing is drawn from.',
    example: '{ dated: 2025-04-28, points: [{ name: lamp post 7, at: 12.4 3.0 m }] }'
  },
  {
    dated: optional(date('Day on which it was last true to the ground.', '2025-04-28')),
    tolerance: optional(quantity('How exact the places are.', 'length', '0.1 m')),
    origin: optional(position),
    file: optional(
      text(
        'A GeoJSON file (RFC 7946) beside the site file with more of the drawing: curbs, walks, walls, buildings, points, ground of zones. Its degrees are counted from the origin, or from the location where nothing else of the drawing is in meters.',
        'plan.geojson'
      )
    ),
    'file-unit': optional(
      choice('Where the file has no degrees: the unit of its numbers, east and north of the origin.', ['m', 'ft'], 'm')
    ),
    points: optional(
      list(point, { does: 'Points that ties are measured from.', example: '[{ name: lamp post 7, at: 12.4 3.0 m }]' })
    ),
    places: optional(
      list(place, { does: 'Where things are.', example: '[{ what: shut-off, of: S1, at: 3.2 -5.1 m }]' })
    ),
    areas: optional(
      list(area, { does: 'Ground of the zones.', example: '[{ zone: Z1, points: "0 0, 10 0, 10 5 m" }]' })
    ),
    lines: optional(
      list(line, {
        does: 'Curbs, walls, walks, pipes, wires, sleeves.',
        example: '[{ kind: curb, points: "0 0, 30 0 m" }]'
      })
    )
  }
)

export function makeDrawing(raw: z.output<typeof drawing>, at: At): Drawing {
  return made<Drawing>({
    at,
    dated: given(raw.dated),
    tolerance: given(raw.tolerance),
    origin: part(raw.origin, at, 'origin', makePosition),
    points: each(raw.points, at, 'points', (one, where) =>
      made({
        at: where,
        name: one.name,
        spot: given(one.at),
        position: part(one.position, where, 'position', makePosition)
      })
    ),
    places: each(raw.places, at, 'places', (one, where) =>
      made({
        at: where,
        what: one.what,
        of: given(one.of),
        name: given(one.name),
        spot: given(one.at),
        position: part(one.position, where, 'position', makePosition),
        ties: one.ties ?? [],
        side: given(one.side)
      })
    ),
    areas: each(raw.areas, at, 'areas', (one, where) =>
      made({ at: where, zone: one.zone, points: one.points ?? [], circle: given(one.circle) })
    ),
    lines: each(raw.lines, at, 'lines', (one, where) =>
      made({
        at: where,
        kind: one.kind,
        name: given(one.name),
        points: one.points ?? [],
        circle: given(one.circle)
      })
    )
  })
}
