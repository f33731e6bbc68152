import { isAbsent } from '../base/absent.ts'
import type { SolarPlan } from '../plan/power-plan.ts'
import type { SolarVerdict } from '../domain/power/solar-month.ts'
import { roundedText } from '../units/show.ts'
import type { Block, State, Value } from './blocks.ts'
import type { BatteryGroup } from './battery-groups.ts'
import type { PageContext } from './context.ts'
import { computed } from './values.ts'

const SHAPES: Readonly<Record<SolarVerdict, State>> = { enough: 'good', 'in doubt': 'soon', 'too little': 'bad' }

/** What each panel gives against what is drawn; nothing where no controller has one. */
export function solarBlocks(groups: readonly BatteryGroup[], { words }: PageContext): Block[] {
  const w = words.power.solar
  const blocks = groups.flatMap(group =>
    group.battery.solar ? panelBlocks(group.ids, group.battery.solar, words) : []
  )
  return blocks.length === 0 ? [] : [{ kind: 'heading', id: 'solar', text: w.heading }, ...blocks]
}

function panelBlocks(ids: string, solar: SolarPlan, words: PageContext['words']): Block[] {
  const w = words.power.solar
  if (isAbsent(solar.months)) return [{ kind: 'paragraph', text: w.absent(ids, solar.months.reason) }]
  const number = (value: number): Value => ({ ...computed(value.toFixed(1), 'solar-yield'), mono: true })
  const by = new Set(solar.months.map(month => month.by))
  return [
    {
      kind: 'table',
      caption: w.caption(ids),
      columns: [
        { label: w.month },
        { label: w.light, unit: w.lightUnit, align: 'right' },
        { label: w.gives, unit: w.unit, align: 'right' },
        { label: w.drawn, unit: w.unit, align: 'right' },
        { label: w.verdict }
      ],
      rows: solar.months.map(({ month, panelMj, yieldMah, drawnMah, verdict }) => [
        computed(words.boxPage.months[month - 1] ?? '', 'solar-yield'),
        number(panelMj),
        number(yieldMah),
        number(drawnMah),
        { ...computed(w.verdicts[verdict], 'solar-yield'), state: SHAPES[verdict] }
      ]),
      notes: [
        w.stands(tiltText(solar, words), shadeText(solar, words)),
        ...[...by].map(one => w.basis(w.by[one])),
        autonomyText(solar, words),
        w.note
      ]
    }
  ]
}

function tiltText({ tiltDeg }: SolarPlan, { power }: PageContext['words']): string {
  return tiltDeg === 0 ? power.solar.flat : power.solar.tilted(roundedText(tiltDeg, 0))
}

function shadeText({ shadeLost, shadeStated }: SolarPlan, { power }: PageContext['words']): string {
  return shadeStated ? power.solar.shadeLost(`${roundedText(shadeLost * 100, 0)}\u00a0%`) : power.solar.shadeNotStated
}

function autonomyText({ autonomyDays, statedDays }: SolarPlan, { power }: PageContext['words']): string {
  return isAbsent(autonomyDays)
    ? power.solar.autonomyAbsent(autonomyDays.reason)
    : power.solar.autonomy(
        roundedText(Math.floor(autonomyDays), 0),
        statedDays === undefined ? undefined : String(statedDays)
      )
}
