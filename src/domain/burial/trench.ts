import { absent } from '../../base/absent.ts'
import { EXCAVATION } from '../../reference/excavation.ts'
import { fromSi } from '../../units/quantity.ts'
import { negative, notPositive } from '../amounts.ts'
import type { Calculation } from '../calculation.ts'
import { measure } from '../figures.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { atLeast, atMost } from '../within.ts'

/** What is known of the ground. Only a competent person's look lets a trench under 5 ft go without protection. */
export const GROUNDS = [
  'not examined',
  'examined, no sign of a cave-in',
  'examined, signs of a cave-in',
  'stable rock'
] as const
export type Ground = (typeof GROUNDS)[number]

/** A trench must be deeper than the cover: cover + cable + bedding. 6 in, 0.5 in and 2 in are 8.5 in. */
export function trenchDepthM(coverM: number, cableM: number, beddingM: number): number {
  return coverM + cableM + beddingM
}

/**
 * 29 CFR 1926.652(a)(1): a protective system unless the trench is wholly in stable rock, or is less than 5 ft deep and a competent person
 * saw no sign of a cave-in. Both halves of the second are needed.
 */
export function needsProtection(depthM: number, ground: Ground): boolean {
  if (ground === 'stable rock') return false
  const shallow = !atLeast(feet(depthM), EXCAVATION.protectiveFt)
  return !(shallow && ground === 'examined, no sign of a cave-in')
}

/** 29 CFR 1926.651(c)(2): a ladder, steps or ramp from 4 ft down. */
export function needsExit(depthM: number): boolean {
  return atLeast(feet(depthM), EXCAVATION.exitFt)
}

/** Exits of a straight trench: each serves 25 ft to both sides. 40 ft takes 1, 60 ft 2, 120 ft 3; none where the trench needs no exit. */
export function exits(depthM: number, lengthM: number): number {
  if (!needsExit(depthM)) return 0
  const each = 2 * EXCAVATION.exitTravelFt
  return Math.max(1, Math.ceil(feet(lengthM) / each - 1e-9))
}

const feet = (meters: number): number => fromSi(meters, 'ft', 'length')
const length = { is: 'quantity', dimension: 'length' } as const

export const trench: Calculation = {
  name: 'trench',
  title: 'Trench for a cover, and what it asks for',
  does: 'Gives the depth to dig for a cover, and whether the trench takes a protective system, a ladder, and how many ways out.',
  inputs: {
    cover: { kind: length, does: 'cover over the top of the cable', optional: 'the depth is given' },
    cable: { kind: length, does: 'outside diameter of the cable', optional: '0' },
    bedding: { kind: length, does: 'bedding below the cable', optional: '0' },
    depth: { kind: length, does: 'depth of the trench', optional: 'cover + cable + bedding' },
    ground: { kind: { is: 'choice', of: GROUNDS }, does: 'what a competent person found', optional: 'not examined' },
    length: { kind: length, does: 'length of the trench', optional: 'one way out is counted' }
  },
  outputs: {
    depth: { does: 'depth of the trench', unit: 'm' },
    'depth-in': { does: 'depth of the trench in inches', unit: 'in' },
    'protective-system': { does: 'whether a protective system is required', unit: '' },
    ladder: { does: 'whether a ladder, steps or a ramp is required', unit: '' },
    exits: { does: 'ways out of a straight trench of that length', unit: '' },
    engineer: { does: 'whether a registered engineer must design the protection', unit: '' }
  },
  sources: ['osha-1926-652', 'osha-1926-651', 'nec-300-5'],
  limits:
    'United States, construction. Have buried services located before opening the ground; private lines are seldom marked. Local code and the competent person on site decide; elsewhere ask for the local rule.',
  run: inputs => {
    const read = (name: string) => optionalNumber(inputs, name)
    const [cover, depth] = [read('cover'), read('depth')]
    const [cable, bedding] = [read('cable') ?? 0, read('bedding') ?? 0]
    if (cover === undefined && depth === undefined) return absent('give the cover, or the depth of the trench')
    if (cover !== undefined && depth !== undefined) return absent('give the cover or the depth, not both')
    const fault = negative({ cover, cable, bedding }) ?? notPositive({ depth, length: read('length') })
    if (fault) return fault
    const depthM = depth ?? trenchDepthM(cover as number, cable, bedding)
    const ground = (optionalText(inputs, 'ground') ?? 'not examined') as Ground
    const [protection, ladder] = [needsProtection(depthM, ground), needsExit(depthM)]
    const ways = exits(depthM, read('length') ?? 0)
    const engineer = protection && !atMost(feet(depthM), EXCAVATION.engineerFt)
    const inch = (meters: number) => measure(fromSi(meters, 'in', 'length'), 4, 'in')
    const sum =
      depth === undefined
        ? [`${inch(cover as number)} cover + ${inch(cable)} cable + ${inch(bedding)} bedding = ${inch(depthM)}`]
        : []
    const ft = measure(feet(depthM), 4, 'ft')
    return {
      value: {
        depth: depthM,
        'depth-in': fromSi(depthM, 'in', 'length'),
        'protective-system': protection,
        ladder,
        exits: ways,
        engineer
      },
      steps: [
        ...sum,
        `${ft} deep, ground ${ground}: protective system ${protection ? 'required' : 'not required'} (29 CFR 1926.652(a)(1): 5 ft)`,
        `${ft} deep: ladder, steps or ramp ${ladder ? `required, ${ways} in all` : 'not required'} (29 CFR 1926.651(c)(2): 4 ft, 25 ft of travel)`
      ]
    }
  },
  example: {
    inputs: {
      cover: '6 in',
      cable: '0.5 in',
      bedding: '2 in',
      ground: 'examined, no sign of a cave-in',
      length: '60 ft'
    },
    outputs: { depth: 0.2159, 'depth-in': 8.5, 'protective-system': false, ladder: false, exits: 0, engineer: false }
  }
}
