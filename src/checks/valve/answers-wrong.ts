import { sortedBy } from '../../base/collections.ts'
import type { At } from '../../diagnostics/finding.ts'
import type { Site, Station, ValveAnswer } from '../../model/site.ts'
import type { IsoDate } from '../../units/date.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationName, stationsInService } from '../wire/subject.ts'

type Wrong = Exclude<ValveAnswer, 'as told'>

/** Ohms read the same whichever way the leads lie, so polarity shows only in what the valve does. */
const SAYS: Readonly<Record<Wrong, { readonly did: string; readonly fix: string }>> = {
  inverted: {
    did: 'closes when it is told to open, and opens when it is told to close',
    fix: 'Swap its two leads at the splice, then see it open and close twice under pressure.'
  },
  'opens only': {
    did: 'opens and does not close',
    fix: 'Close it by hand now. Then measure the battery under load, look for grit, and compare its flow with the least it closes on.'
  },
  'closes only': {
    did: 'closes and does not open',
    fix: 'Measure the battery under load and the loop; then look for a stuck plunger or a closed flow control.'
  },
  'not at all': {
    did: 'does not move',
    fix: 'Measure the loop at the controller and the coil at the valve; if both read right, test with a pulse at the coil.'
  }
}

export const answersWrong: SiteCheck = {
  card: {
    code: 'valve/answers-wrong',
    severity: 'warning',
    looksAt: 'What a valve did, at the last visit that wrote it down, when it was told to open and to close.',
    why: 'A valve with its leads swapped waters at all times but its own, and a closing pulse that is missed lets it run.',
    sources: ['common-practice'],
    fix: 'Swapped leads: swap them back at the splice, then see the valve open and close twice.',
    worked: {
      example: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire }
    readings: [{ on: 2026-03-20, answers: inverted }]`,
      instead: `stations:
  - id: K1/1
    zone: Z1
    valve: { box: VB1, coil: DC latching 2-wire }
    readings: [{ on: 2026-03-20, answers: as told }]`
    }
  },
  run: ({ site, on }, report) => {
    for (const station of stationsInService(site)) {
      const last = answersOf(site, station, on).at(-1)
      if (!last || last.answer === 'as told') continue
      const { did, fix } = SAYS[last.answer]
      report({
        subject: station.zone,
        at: last.at,
        message: `${stationName(station)}: the valve ${did} (${last.on}).`,
        fix,
        values: { answer: last.answer }
      })
    }
  }
}

interface Answered {
  readonly on: IsoDate
  readonly answer: ValveAnswer
  readonly at: At
}

function answersOf(site: Site, station: Station, on: IsoDate): readonly Answered[] {
  const own = station.readings.flatMap(one =>
    one.answers ? [{ on: one.on, answer: one.answers, at: at(one, 'answers') }] : []
  )
  const visited = site.visits.flatMap(visit =>
    visit.readings.flatMap(one =>
      one.station === station.id && one.answers ? [{ on: visit.on, answer: one.answers, at: at(one, 'answers') }] : []
    )
  )
  return sortedBy([...own, ...visited], one => one.on).filter(one => one.on <= on)
}
