import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { runsInService } from '../wire/subject.ts'

export const retrofitNotChecked: SiteCheck = {
  card: {
    code: 'valve/retrofit-not-checked',
    severity: 'warning',
    looksAt:
      'A valve that was made for alternating current and got a latching coil: whether the adapter is written down, and whether it was seen to open and close.',
    why: 'A plunger that is a little too long or a seat of another height holds back the magnet: the valve opens on the bench and stays open in the ground.',
    sources: ['common-practice', 'project-rule'],
    fix: 'See it open and close under pressure, then write the day and the adapter.',
    worked: {
      example: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire, retrofit: { was: 24 V AC, adapter: none } } }`,
      instead: `stations:
  - { id: K1/1, zone: Z1, valve: { box: VB1, coil: DC latching 2-wire, retrofit: { was: 24 V AC, adapter: none, checked: 2026-03-20 } } }`
    }
  },
  run: ({ site, on }, report) => {
    for (const { subject, name, valves } of runsInService(site)) {
      for (const { retrofit } of valves) {
        if (!retrofit) continue
        const { checked, adapter } = retrofit
        if (checked === undefined || checked > on)
          report({
            subject,
            at: at(retrofit, 'checked'),
            message: `${name}: the coil was swapped on a valve made for AC, and nobody wrote that it opens and closes.`,
            fix: 'See it open and close twice under pressure, then write "checked:" with the day.'
          })
        else if (adapter === undefined)
          report({
            subject,
            at: at(retrofit, 'adapter'),
            severity: 'note',
            message: `${name}: the coil was swapped on a valve made for AC, and the adapter is not written down.`,
            fix: 'Write thread, adapter and plunger under "adapter:", or "none" where the coil fits as it is.'
          })
      }
    }
  }
}
