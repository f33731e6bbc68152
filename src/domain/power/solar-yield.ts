import { absent, isAbsent } from '../../base/absent.ts'
import type { Maybe } from '../../base/absent.ts'
import { PANEL_DERATING } from '../../reference/solar-panel.ts'
import { negative } from '../amounts.ts'
import type { Calculation, CalculationInputs } from '../calculation.ts'
import { WHEN_INPUTS, whenOf } from '../climate/when.ts'
import type { When } from '../climate/when.ts'
import { figures, measure } from '../figures.ts'
import { optionalNumber, optionalText } from '../inputs.ts'
import { panelLight, panelMah, solarVerdict } from './solar-month.ts'
import type { MonthLight, PanelLight, PanelOutput, PanelPlace } from './solar-month.ts'

export interface SolarCase {
  readonly when: When
  readonly light: MonthLight
  readonly place: PanelPlace
  readonly output: PanelOutput
}

/** The arithmetic of one month, line by line. */
export function solarSteps({ when, light, place, output }: SolarCase, drawnMah?: number): readonly string[] {
  const on = panelLight(when, light, place)
  const mah = panelMah(on.fullSunH, output)
  return [
    `on ${when.words}: ${mj(on.aboveMj)} above the air`,
    levelStep(light, on),
    `on the panel, ${placeText(place)}: ${mj(on.panelMj)}, as much as ${measure(on.fullSunH, 3, 'h')} of full sun`,
    ...(mah === undefined ? [] : [outputStep(on.fullSunH, output, mah)]),
    ...(mah === undefined || drawnMah === undefined
      ? []
      : [`against ${measure(drawnMah, 3, 'mAh')} drawn: ${solarVerdict(mah, drawnMah)}`])
  ]
}

function levelStep(light: MonthLight, on: PanelLight): string {
  switch (light.by) {
    case 'measured':
      return `on level ground, measured: ${mj(on.levelMj)}`
    case 'sunshine':
      return `on level ground, ${measure(light.hours, 3, 'h')} of sunshine: ${mj(on.levelMj)}`
    case 'overcast':
      return `on level ground, sunshine not stated, so every day counts as overcast: 0.25 × ${figures(on.aboveMj, 3)} = ${mj(on.levelMj)}`
  }
}

function placeText({ tiltDeg, facesSun, shadeLost }: PanelPlace): string {
  const stands =
    tiltDeg === 0 ? 'flat' : `tilted ${figures(tiltDeg, 3)}° ${facesSun ? 'to the noon sun' : 'another way'}`
  return shadeLost === 0 ? stands : `${stands}, ${figures(shadeLost * 100, 3)} % lost to shade`
}

function outputStep(hours: number, { watt, cellVolt, peakA, derating }: PanelOutput, mah: number): string {
  const source =
    peakA === undefined
      ? `${measure(watt ?? 0, 3, 'W')} / ${measure(cellVolt ?? 0, 3, 'V')}`
      : measure(peakA * 1000, 3, 'mA')
  return `into the cell: ${source} × ${measure(hours, 3, 'h')} × ${figures(derating * 100, 3)} % = ${measure(mah, 3, 'mAh')} a day`
}

const mj = (amount: number): string => measure(amount, 3, 'MJ/m²')

const FACES = ['noon sun', 'another way'] as const

export const solarYield: Calculation = {
  name: 'solar-yield',
  title: 'Yield of a small solar panel',
  does: 'Gives what a panel puts into its cell on a mean day of a month, from latitude, sunshine, tilt and shade, and holds it against what is drawn.',
  inputs: {
    ...WHEN_INPUTS,
    sunshine: {
      kind: { is: 'quantity', dimension: 'duration' },
      does: 'hours of bright sunshine on a mean day',
      optional: 'every day overcast'
    },
    radiation: {
      kind: { is: 'quantity', dimension: 'radiation' },
      does: 'radiation measured on level ground',
      optional: 'by the sunshine'
    },
    tilt: { kind: { is: 'quantity', dimension: 'angle' }, does: 'tilt of the panel from level', optional: 'flat' },
    faces: { kind: { is: 'choice', of: FACES }, does: 'where a tilted panel faces', optional: 'noon sun' },
    shade: { kind: { is: 'quantity', dimension: 'ratio' }, does: 'part of the light lost to shade', optional: 'none' },
    panel: { kind: { is: 'quantity', dimension: 'power' }, does: 'watts in full sun', optional: 'peak-current' },
    'cell-volts': {
      kind: { is: 'quantity', dimension: 'voltage' },
      does: 'volts of the cell that it fills',
      optional: 'peak-current'
    },
    'peak-current': {
      kind: { is: 'quantity', dimension: 'current' },
      does: 'current into the cell in full sun',
      optional: 'panel and cell-volts'
    },
    derating: {
      kind: { is: 'quantity', dimension: 'ratio' },
      does: 'part that reaches the cell, dirt, heat and regulator taken off',
      optional: '50 %'
    },
    drawn: { kind: { is: 'quantity', dimension: 'charge' }, does: 'charge drawn in a day', optional: 'not compared' }
  },
  outputs: {
    above: { does: 'radiation above the air', unit: 'MJ/m²/d' },
    level: { does: 'radiation on level ground', unit: 'MJ/m²/d' },
    'on-panel': { does: 'radiation on the panel, shade taken off', unit: 'MJ/m²/d' },
    'full-sun': { does: 'hours of full sun that hold as much', unit: 'h' },
    charge: { does: 'charge into the cell, where the panel is given', unit: 'mAh/d' },
    verdict: { does: 'enough, in doubt, or too little, where what is drawn is given', unit: '' }
  },
  sources: ['fao-56', 'liu-jordan', 'erbs-1982', 'common-practice', 'project-rule'],
  limits:
    'A mean day of the month: a week of fog gives less. The derating, the shade words and the margin of two are rules of this project. A panel that faces neither the noon sun nor away from it lies between the two.',
  run: inputs => {
    const facts = caseOf(inputs)
    if (isAbsent(facts)) return facts
    const drawn = optionalNumber(inputs, 'drawn')
    const drawnMah = drawn === undefined ? undefined : drawn / 3.6
    const on = panelLight(facts.when, facts.light, facts.place)
    const mah = panelMah(on.fullSunH, facts.output)
    return {
      value: {
        above: on.aboveMj,
        level: on.levelMj,
        'on-panel': on.panelMj,
        'full-sun': on.fullSunH,
        ...(mah === undefined ? {} : { charge: mah }),
        ...(mah === undefined || drawnMah === undefined ? {} : { verdict: solarVerdict(mah, drawnMah) })
      },
      steps: solarSteps(facts, drawnMah)
    }
  },
  example: {
    inputs: {
      latitude: '43',
      'day-of-year': '17',
      radiation: '6.44 MJ/m²/d',
      tilt: '60 °',
      panel: '0.5 W',
      'cell-volts': '3.6 V',
      drawn: '5 mAh'
    },
    outputs: {
      above: 13.4,
      level: 6.44,
      'on-panel': 12.86,
      'full-sun': 3.57,
      charge: 248,
      verdict: 'enough'
    }
  }
}

function caseOf(inputs: CalculationInputs): Maybe<SolarCase> {
  const when = whenOf(inputs)
  if (isAbsent(when)) return when
  const given = (name: string) => optionalNumber(inputs, name)
  const [tilt = 0, shade = 0, derating = PANEL_DERATING] = [given('tilt'), given('shade'), given('derating')]
  const fault = negative({
    tilt,
    shade,
    derating,
    sunshine: given('sunshine') ?? 0,
    radiation: given('radiation') ?? 0
  })
  if (fault) return fault
  if (tilt > 90) return absent('tilt cannot be more than 90 degrees')
  if (shade > 1) return absent('shade cannot be more than 100 %')
  if (derating > 1) return absent('derating cannot be more than 100 %')
  const [watt, cellVolt, peakA] = [given('panel'), given('cell-volts'), given('peak-current')]
  return {
    when,
    light: lightOf(given('radiation'), given('sunshine')),
    place: { tiltDeg: tilt, facesSun: optionalText(inputs, 'faces') !== 'another way', shadeLost: shade },
    output: {
      derating,
      ...(watt === undefined ? {} : { watt }),
      ...(cellVolt === undefined ? {} : { cellVolt }),
      ...(peakA === undefined ? {} : { peakA })
    }
  }
}

/** Radiation comes in W/m² from the units library. */
const MJ_PER_DAY = 0.0864

function lightOf(wattPerM2: number | undefined, sunshineS: number | undefined): MonthLight {
  if (wattPerM2 !== undefined) return { by: 'measured', levelMj: wattPerM2 * MJ_PER_DAY }
  return sunshineS === undefined ? { by: 'overcast' } : { by: 'sunshine', hours: sunshineS / 3600 }
}
