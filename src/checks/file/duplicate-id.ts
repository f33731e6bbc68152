import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'

export const duplicateId: FileCheck = {
  card: {
    code: 'file/duplicate-id',
    severity: 'error',
    looksAt:
      'A name that two boxes, controllers, stations, supplies, sensors or programs share, or a tag that stands twice in the register.',
    why: 'A name on a drawing, a label or a finding must lead to one thing. What depends on it is not computed until it does.',
    sources: ['project-rule'],
    fix: 'Give the second one a name of its own, the one that is marked on it.',
    worked: {
      example: `sensors:
  - { id: RS1, kind: rain, controller: K1 }
  - { id: RS1, kind: frost, controller: K1 }`,
      instead: `sensors:
  - { id: RS1, kind: rain, controller: K1 }
  - { id: RS2, kind: frost, controller: K1 }`
    }
  },
  word: fault => {
    const [id, kind, line] = [detail(fault, 'id'), detail(fault, 'kind'), detail(fault, 'firstLine')]
    return {
      message: `${id} stands twice among the ${kind}, first on line ${line}.`,
      fix:
        kind === 'tags'
          ? 'Keep the line that is true and take the other out.'
          : `Give the second one its own id in place of "${id}".`
    }
  }
}
