import type { Controller } from '../../model/site.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const mainsPresent: SiteCheck = {
  card: {
    code: 'safety/mains-present',
    severity: 'note',
    looksAt:
      'A controller with a mains adapter or a pump-start relay, and no place stated where its mains is switched off.',
    why: 'An adapter or a pump relay brings mains voltage to a job that is otherwise done with bare hands.',
    sources: ['nfpa-70e', 'gb-electricity-at-work', 'as-nzs-4836'],
    fix: 'State where the mains is switched off and locked, and leave that side to a licensed electrician.',
    worked: {
      example: `work-rules: { road: no }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, power: adapter }`,
      instead: `work-rules: { road: no, isolation: "pump kiosk, switch Q1" }
controllers:
  - { id: K1, box: VB1, sheet: _shared/sheets/plain.md, power: adapter }`
    }
  },
  run: ({ site }, report) => {
    if (site.workRules.isolation !== undefined) return
    for (const controller of site.controllers) {
      const brings = mainsOf(controller)
      if (brings === undefined || controller.outOfService !== undefined) continue
      report({
        subject: controller.id,
        at: at(controller, brings.key),
        message: `${controller.id} ${brings.words}, and the file does not say where the mains is switched off.`,
        fix: 'Write it: work-rules: { isolation: "pump kiosk, switch Q1" }. The local electrical code and a licensed electrician decide.'
      })
    }
  }
}

function mainsOf({ power, pumpStart }: Controller): { readonly key: string; readonly words: string } | undefined {
  if (power === 'adapter') return { key: 'power', words: 'runs from a mains adapter' }
  return pumpStart ? { key: 'pump-start', words: 'starts a pump' } : undefined
}
