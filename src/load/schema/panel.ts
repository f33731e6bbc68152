import type { z } from 'zod'
import { PANEL_FACES } from '../../model/power.ts'
import type { Panel, Shade } from '../../model/power.ts'
import { SHADES } from '../../reference/solar-panel.ts'
import { parseQuantity } from '../../units/quantity.ts'
import { quantityWrong } from '../improve/unit.ts'
import { field, optional, taken, wrong } from './field.ts'
import { given, made } from './made.ts'
import { quantity } from './quantities.ts'
import { record } from './record.ts'
import { choice } from './texts.ts'

/** "open", "half", "deep", or the part of the light that is lost, "40 %". */
const shade = field<Shade>(
  { does: 'What shade takes: open, half or deep, or the part of the light lost.', example: 'half' },
  { type: 'string' },
  value => {
    const text = String(value).trim().toLowerCase()
    const known = SHADES.find(one => one.name === text)
    if (known) return taken({ text, lost: known.lost })
    const parsed = parseQuantity(text, 'ratio')
    if (!parsed.ok)
      return parsed.problem.kind === 'not-a-quantity'
        ? wrong('file/not-one-of', { known: [...SHADES.map(one => one.name), '40 %'] })
        : quantityWrong(parsed.problem, 'ratio', '40 %', text)
    return parsed.value.si >= 0 && parsed.value.si <= 1
      ? taken({ text, lost: parsed.value.si })
      : wrong('file/out-of-range', { range: 'must be 0 % to 100 %', example: '40 %' })
  }
)

export const panel = record(
  'the panel',
  { does: 'How the solar panel stands at its place.', example: '{ tilt: 45 °, faces: noon sun, shade: half }' },
  {
    tilt: optional(quantity('From level; lying flat where nothing is written.', 'angle', '45 °', 'zero')),
    faces: optional(choice('The noon sun, or another way.', PANEL_FACES, 'noon sun')),
    shade: optional(shade)
  }
)

export function makePanel(raw: z.output<typeof panel>): Panel {
  return made<Panel>({ tilt: given(raw.tilt), faces: given(raw.faces), shade: given(raw.shade) })
}
