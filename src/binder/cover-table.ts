import { regionOf } from '../domain/safety/region.ts'
import type { Site } from '../model/site.ts'
import { COVER_LOCATIONS, COVER_MM, NEC_300_5 } from '../reference/nec-300-5.ts'
import type { CoverLocation } from '../reference/nec-300-5.ts'
import type { CautionWords } from '../words/en-US/cautions.ts'
import type { TableBlock, Value } from './blocks.ts'
import { citeIn } from './cite.ts'

/** Column 5 of the table: irrigation control of 30 V or less. */
const COLUMN_5 = 4

/** Least cover over control cable by place, in the inches and the millimeters that the code prints side by side. */
export function coverTable(site: Site, words: CautionWords): TableBlock {
  const w = words.cover
  const region = regionOf(site.location?.country)
  return {
    kind: 'table',
    caption: w.caption,
    columns: [
      { label: w.where },
      { label: w.cover, unit: 'in', align: 'right' },
      { label: w.cover, unit: 'mm', align: 'right' }
    ],
    rows: COVER_LOCATIONS.map(location => [
      { text: w.locations[location], standing: 'stated' },
      cell(location, inches => String(inches), words),
      cell(location, inches => String(COVER_MM[inches]), words)
    ]),
    notes: [
      w.first,
      w.toTheTop,
      w.edition(citeIn('nec-300-5', words)),
      w.limit,
      w.floor,
      ...(region === 'US' ? [] : [w.example])
    ]
  }
}

function cell(location: CoverLocation, shown: (inches: number) => string, { cover }: CautionWords): Value {
  const least = NEC_300_5[location][COLUMN_5]
  const text = typeof least === 'number' ? shown(least) : cover.orInRaceway(shown(least[0]), shown(least[1]))
  return { text, standing: 'stated' }
}
