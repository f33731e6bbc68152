import { sortedBy } from '../../base/collections.ts'
import { fromSi } from '../../units/quantity.ts'
import type { Quantity } from '../../units/quantity.ts'
import { roundedText, showStated } from '../../units/show.ts'
import { showWireSize } from '../../units/wire-size.ts'
import type { WireLimit } from '../../plan/plan.ts'
import { lengthUnit } from '../../plan/wire-facts.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { figures, floorTo } from './how-to-pass.ts'
import { runsInService } from './subject.ts'
import type { WiredRun } from './subject.ts'

export const runOverLength: SiteCheck = {
  card: {
    code: 'wire/run-over-length',
    severity: 'error',
    looksAt: "The length of a run, against the longest run that the controller's product sheet allows at that size.",
    why: 'The maker of the sheet answers for the pulse up to that length and no further.',
    sources: ['product-sheet', 'project-rule'],
    fix: 'Shorten the run, use a size that the sheet allows at this length, or bring the controller closer.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/length-cap.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 18 AWG, length: 101 ft }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/length-cap.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 18 AWG, length: 100 ft }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const run of runsInService(site)) {
      const wire = plan.wires.get(run.id)
      const broken = (wire?.limits ?? []).filter(one => one.form === 'length' && !one.passes)
      const limit = sortedBy(broken, one => one.longestM)[0]
      if (!wire || !limit) continue
      const unit = lengthUnit(limit.stated as Quantity<'length'>)
      const longest = fromSi(limit.longestM, unit, 'length')
      const [length, most] = toldApart(fromSi(wire.lengthM, unit, 'length'), longest, 1)
      const sheet = site.controllers.find(one => one.id === run.controller)?.sheet
      report({
        subject: run.subject,
        at: at(run.record, 'wire', 0, 'length'),
        message: `${run.name}: the run is ${length}\u00a0${unit}; the sheet of ${run.controller} allows ${allows(limit, run, `${most}\u00a0${unit}`)}.`,
        fix: `Shorten the run to ${roundedText(floorTo(longest, 0.1), 1)}\u00a0${unit}, or bring ${run.controller} closer.`,
        values: {
          ...figures(wire, site.units),
          [`length_${unit}`]: fromSi(wire.lengthM, unit, 'length'),
          [`limit_${unit}`]: fromSi(limit.stated.si, unit, 'length')
        },
        related: sheet ? [{ at: at(sheet, 'limits', 'lengths'), note: 'the limit' }] : []
      })
    }
  }
}

/** "100 ft", "1380 ft at 14 AWG", and what that comes to where this run is of another size or feeds more than one coil. */
function allows({ stated, size, coils }: WireLimit, { wire }: WiredRun, most: string): string {
  if (!size) return showStated(stated)
  const text = `${showStated(stated)} at ${showWireSize(size)}`
  const same = wire.every(one => showWireSize(one.size) === showWireSize(size) && one.common === undefined)
  if (same && coils === undefined) return text
  return `${text}, which is ${most} here${coils === undefined ? '' : ` with ${coils} coils`}`
}
