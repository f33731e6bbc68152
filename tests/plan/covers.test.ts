import { describe, expect, it } from 'vitest'
import { isAbsent } from '../../src/base/absent.ts'
import { planCovers } from '../../src/plan/covers.ts'
import { bareSite } from '../support/bare-site.ts'
import { controller, pulseSheet, stated, station, wire } from './facts.ts'

const cover = (text: string) => ({ cover: stated(text, 'length') })

describe('least cover of every stretch', () => {
  it('is held in the unit in which the cover is written: the table prints 150 mm beside 6 in', () => {
    const site = bareSite({
      stations: [station({ wire: [wire('1.5 mm²', '10 m', cover('150 mm')), wire('1.5 mm²', '10 m', cover('6 in'))] })]
    })
    const [metric, inches] = planCovers(site).covers
    expect(metric).toMatchObject({ station: 'K1/1', segment: 0, location: 'open ground' })
    expect(metric!.leastM).toBeCloseTo(0.15, 12)
    expect(metric!.coverM).toBeCloseTo(0.15, 12)
    expect(inches!.leastM).toBeCloseTo(0.1524, 12)
    expect(inches!.coverM).toBe(inches!.leastM)
  })

  it('follows what lies above: 24 in under a road, 18 in under the drive of a house', () => {
    const under = (words: string) => {
      const site = bareSite({ units: 'us', stations: [station({ wire: [wire('14 AWG', '10 ft', { under: words })] })] })
      return planCovers(site).covers[0]!
    }
    expect(under('road').leastM).toBeCloseTo(0.6096, 9)
    expect(under('private driveway').leastM).toBeCloseTo(0.4572, 9)
    expect(under('lawn').leastM).toBeCloseTo(0.1524, 9)
  })

  it('says so where no cover is stated, and takes the units of the site', () => {
    const bare = [station({ wire: [wire('1.5 mm²', '10 m')] })]
    const [metric] = planCovers(bareSite({ stations: bare })).covers
    expect(isAbsent(metric!.coverM) && metric!.coverM.reason).toBe('no cover is stated')
    expect(metric!.leastM).toBeCloseTo(0.15, 12)
    expect(planCovers(bareSite({ units: 'us', stations: bare })).covers[0]!.leastM).toBeCloseTo(0.1524, 12)
  })

  it('above 30 V is that of direct burial', () => {
    const site = (volts: string) =>
      bareSite({
        controllers: [controller({ sheet: pulseSheet(volts) })],
        stations: [station({ wire: [wire('1.5 mm²', '10 m')] })]
      })
    expect(planCovers(site('30 V')).covers[0]!.leastM).toBeCloseTo(0.15, 12)
    expect(planCovers(site('31 V')).covers[0]!.leastM).toBeCloseTo(0.6, 12)
  })

  it('is worked once for each station and row of the table, alike in words', () => {
    const site = bareSite({
      stations: [
        station({ id: 'K1/1', wire: [wire('1.5 mm²', '10 m'), wire('1.5 mm²', '10 m', { under: 'road' })] }),
        station({ id: 'K1/2', wire: [wire('1.5 mm²', '10 m')] })
      ]
    })
    const { workings } = planCovers(site)
    expect(workings.map(working => working.subject)).toEqual(['K1/1', 'K1/2', 'K1/1'])
    expect(workings[0]!.steps).toEqual(workings[1]!.steps)
    expect(workings[0]!.steps[0]?.replaceAll('\u00a0', ' ')).toBe(
      'NEC table 300.5(A), NFPA 70-2023, column 5 (irrigation control 30 V or less), open ground: 6 in (150 mm) to the top of the cable'
    )
  })
})
