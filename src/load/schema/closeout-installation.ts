import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { DigitalCopies, Installation } from '../../model/closeout.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { text } from './texts.ts'

export const installation = record(
  'the installation',
  {
    does: 'What was built in beside boxes, valves and controllers; "none" where there is none of it.',
    example: '{ filters: "120 mesh, after the meter", pumps: none }'
  },
  {
    'design-pressure': optional(quantity('Pressure that it was designed for.', 'pressure', '4 bar')),
    mains: optional(text('Main line.', '1-1/2 in, schedule 40, along the curb')),
    filters: optional(text('Filters.', '120 mesh, in VB1')),
    pumps: optional(text('Pumps.', 'none')),
    'quick-couplers': optional(text('Quick couplers.', 'one beside VB2')),
    grounding: optional(text('Grounding.', 'none needed by the product sheet')),
    conduit: optional(text('Conduits of wires and their sizes.', '2 in under the ramp')),
    'spare-wires': optional(text('Spare wires.', 'one to each box, blue')),
    'wire-slack': optional(text('Slack of wires.', '24 in coil at each valve')),
    samples: optional(text('Samples of wire colors and splices.', 'in the pocket of the binder')),
    'shut-off-tag': optional(text('What the tag at the shut-off says.', 'brass, "IRRIGATION S1"')),
    'box-tags': optional(text('Name tags of the boxes.', 'inside each box and on each lid')),
    posted: optional(text('Instructions that are posted, and where.', 'shut-off steps inside the cabinet door'))
  }
)

export const digital = record(
  'the digital copies',
  { does: 'What was handed over as files.', example: '{ drawings: PDF, geodata: GeoJSON }' },
  {
    drawings: optional(text('Record drawings.', 'PDF')),
    'mark-ups': optional(text('Mark-ups.', 'PDF, scanned')),
    geodata: optional(text('Positions for a map.', 'GeoJSON')),
    manual: optional(text('This binder.', 'PDF with bookmarks'))
  }
)

export function makeInstallation(raw: z.output<typeof installation>, at: At): Installation {
  return made<Installation>({
    at,
    designPressure: given(raw['design-pressure']),
    mains: given(raw.mains),
    filters: given(raw.filters),
    pumps: given(raw.pumps),
    quickCouplers: given(raw['quick-couplers']),
    grounding: given(raw.grounding),
    conduit: given(raw.conduit),
    spareWires: given(raw['spare-wires']),
    wireSlack: given(raw['wire-slack']),
    samples: given(raw.samples),
    shutOffTag: given(raw['shut-off-tag']),
    boxTags: given(raw['box-tags']),
    posted: given(raw.posted)
  })
}

export function makeDigital(raw: z.output<typeof digital>, at: At): DigitalCopies {
  return made<DigitalCopies>({
    at,
    drawings: given(raw.drawings),
    markUps: given(raw['mark-ups']),
    geodata: given(raw.geodata),
    manual: given(raw.manual)
  })
}
