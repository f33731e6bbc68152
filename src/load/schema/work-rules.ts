import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { Pit, WorkRules } from '../../model/site.ts'
import { optional } from './field.ts'
import { each, given, made } from './made.ts'
import { count } from './numbers.ts'
import { quantity } from './quantities.ts'
import { list, record } from './record.ts'
import { text, yesNo } from './texts.ts'
import { window } from './times.ts'

const pit = record(
  'a pit',
  { does: 'A trench or pit that is dug or entered for the work.', example: '{ where: valve manifold, depth: 1.4 m }' },
  {
    where: text('Which one.', 'valve manifold'),
    depth: quantity('How deep.', 'length', '1.4 m'),
    length: optional(quantity('How long.', 'length', '3 m')),
    examined: optional(yesNo('yes: a competent person examined the ground and saw no sign of a cave-in.', 'yes')),
    protection: optional(text('What holds the sides.', 'trench box')),
    exits: optional(count('Ladders, steps or ramps.', '1'))
  }
)

export const workRules = record(
  'the work rules',
  { does: 'What holds for those who work here.', example: '{ road: yes, lane-closure: 22:00-05:00 }' },
  {
    road: optional(yesNo('yes: the work is in or beside a road. Left out, nothing is said of a road.', 'yes')),
    'lane-closure': optional(window('When a lane may be closed.', '22:00-05:00')),
    'traffic-control-plan': optional(text('Number of the plan or of the permit.', 'TC-14')),
    'roof-edge': optional(quantity('From the work to the nearest edge.', 'length', '1.8 m', 'zero')),
    parapet: optional(quantity('Height of the parapet.', 'length', '0.6 m', 'zero')),
    anchors: optional(
      list(text('Name of an anchor point.', 'A1'), { does: 'Anchor points.', example: '[A1, A2, A3, A4]' })
    ),
    'edge-protection': optional(text('What keeps a person from the edge.', '"guardrail all round, 1.1 m"')),
    pits: optional(list(pit, { does: 'Trenches and pits.', example: '[{ where: valve manifold, depth: 1.4 m }]' })),
    vault: optional(yesNo('yes: somebody climbs into a meter pit or vault.', 'no')),
    isolation: optional(
      text('Where the mains of an adapter or a pump is switched off and locked.', 'pump kiosk, switch Q1')
    ),
    note: optional(text('What else holds.', 'no work during matches'))
  }
)

export function makeWorkRules(raw: z.output<typeof workRules>, at: At): WorkRules {
  return made<WorkRules>({
    at,
    road: given(raw.road),
    laneClosure: given(raw['lane-closure']),
    trafficControlPlan: given(raw['traffic-control-plan']),
    roofEdge: given(raw['roof-edge']),
    parapet: given(raw.parapet),
    anchors: given(raw.anchors),
    edgeProtection: given(raw['edge-protection']),
    pits: raw.pits ? each(raw.pits, at, 'pits', makePit) : undefined,
    vault: given(raw.vault),
    isolation: given(raw.isolation),
    note: given(raw.note)
  })
}

function makePit(raw: z.output<typeof pit>, at: At): Pit {
  return made<Pit>({
    at,
    where: raw.where,
    depth: raw.depth,
    length: given(raw.length),
    examined: given(raw.examined),
    protection: given(raw.protection),
    exits: given(raw.exits)
  })
}
