import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Splice, WireSegment } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity, wireSize } from './quantities.ts'
import { record } from './record.ts'
import { choice, id, text } from './texts.ts'

export const wire = record(
  'a length of wire',
  {
    does: 'A length of the pair between controller and valve.',
    example: '{ size: 1.5 mm², length: 36 m, colour: "red / white" }'
  },
  {
    size: wireSize('Size of the conductor: AWG, mm², or mm diameter.', '1.5 mm²'),
    length: quantity('One way.', 'length', '36 m', 'zero'),
    common: optional(wireSize('Size of the way back, where it is another.', '2.5 mm²')),
    conductor: optional(choice('solid or stranded; solid where nothing is written.', ['solid', 'stranded'], 'solid')),
    coating: optional(choice('plain or tinned; plain where nothing is written.', ['plain', 'tinned'], 'plain')),
    colour: optional(text('Colors of the two wires.', '"red / white"')),
    cover: optional(quantity('Ground above it.', 'length', '450 mm', 'zero')),
    under: optional(text('What it runs under.', 'planting bed'))
  }
)

export const splice = record(
  'a splice',
  { does: 'A splice in the wires.', example: '{ box: VB2, kind: gel-filled connector }' },
  {
    box: optional(id('The box it is in.', 'VB2')),
    where: optional(text('Where it is.', '3 m W of VB2, buried')),
    kind: optional(text('How it is made.', 'gel-filled connector')),
    resistance: optional(quantity('Of its contacts, where it was measured.', 'resistance', '0.05 ohm', 'zero'))
  }
)

export function makeWire(raw: z.output<typeof wire>, at: At): WireSegment {
  return made<WireSegment>({
    at,
    size: raw.size,
    length: raw.length,
    common: given(raw.common),
    conductor: raw.conductor ?? 'solid',
    coating: raw.coating ?? 'plain',
    colour: given(raw.colour),
    cover: given(raw.cover),
    under: given(raw.under)
  })
}

export function makeSplice(raw: z.output<typeof splice>, at: At): Splice {
  return made<Splice>({
    at,
    box: given(raw.box),
    where: given(raw.where),
    kind: given(raw.kind),
    resistance: given(raw.resistance)
  })
}
