import { isPresent } from '../../base/absent.ts'
import { show, showStated } from '../../units/show.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { toldApart } from '../told-apart.ts'
import { figures, howToPass } from './how-to-pass.ts'
import { runsInService } from './subject.ts'

export const loopOverLimit: SiteCheck = {
  card: {
    code: 'wire/loop-over-limit',
    severity: 'error',
    looksAt: "The resistance of both wires of a run, against the loop limit on the controller's product sheet.",
    why: 'The pulse may be too weak to move the valve, and fails first when the battery is low.',
    sources: ['ohms-law', 'iec-60228', 'nbs-100', 'product-sheet'],
    fix: 'Use the next thicker size that passes, or bring the controller closer to the valve.',
    worked: {
      example: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/loop-limit.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 1.0 mm², length: 410 m }] }`,
      instead: `controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/loop-limit.md }
stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire }, wire: [{ size: 2.5 mm², length: 410 m }] }`
    }
  },
  run: ({ site, plan }, report) => {
    for (const { id, subject, name, record, controller } of runsInService(site)) {
      const wire = plan.wires.get(id)
      const limit = wire?.limits.find(one => one.form === 'loop')
      if (!wire || !limit || limit.passes || !isPresent(wire.loopOhm)) continue
      const coils = limit.coils ?? 1
      const limitOhm = limit.stated.si / coils
      const [loop, most] = toldApart(wire.loopOhm, limitOhm, 2)
      const stated =
        coils > 1 ? `${showStated(limit.stated)} for one coil, ${most}\u00a0Ω for ${coils}` : `${most}\u00a0Ω`
      const sheet = site.controllers.find(one => one.id === controller)?.sheet
      report({
        subject,
        at: at(record, 'wire', 0, 'length'),
        message: `${name}: ${show(wire.lengthM, 'run', site.units)} is a loop of ${loop}\u00a0Ω; the limit of ${controller} is ${stated}.`,
        fix: howToPass(wire, site.units),
        values: {
          ...figures(wire, site.units),
          limit_ohm: limitOhm,
          margin_percent: (1 - wire.loopOhm / limitOhm) * 100
        },
        related: sheet ? [{ at: at(sheet, 'limits', 'loop'), note: 'the limit' }] : []
      })
    }
  }
}
