import { absent } from '../../base/absent.ts'
import type { Calculation } from '../calculation.ts'
import { textOf } from '../inputs.ts'
import { TAG_ALPHABET, tagCheck } from './tag.ts'

export const tagCheckCard: Calculation = {
  name: 'tag-check',
  title: 'Check character of a tag',
  does: 'The last character of a tag from its first six, to tell a tag that was copied wrong from one that was not.',
  inputs: { body: { kind: { is: 'text' }, does: 'the first six characters of the tag' } },
  outputs: {
    check: { does: 'the seventh character', unit: '' },
    tag: { does: 'the whole tag', unit: '' }
  },
  sources: ['project-rule'],
  limits:
    'It sees every single wrong character and every two that changed places; of other mistakes it misses one in 31.',
  run: inputs => {
    const body = textOf(inputs, 'body').trim().toUpperCase()
    const check = tagCheck(body)
    if (check === undefined) return absent(`the first six characters of a tag are of ${TAG_ALPHABET}`)
    const terms = [...body].map((character, index) => (index + 1) * TAG_ALPHABET.indexOf(character))
    const sum = terms.reduce((total, term) => total + term, 1)
    return {
      value: { check, tag: body + check },
      steps: [
        `1 + ${terms.join(' + ')} = ${sum}: each value (2 is 0, Z is 30) times its position`,
        `${sum} modulo 31 = ${sum % 31}, which is ${check}`
      ]
    }
  },
  example: { inputs: { body: '7KQ3F9' }, outputs: { check: 'X', tag: '7KQ3F9X' } }
}
