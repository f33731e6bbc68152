import type { Site } from '../../model/site.ts'
import type { Report, SiteCheck } from '../check.ts'
import { at } from '../at.ts'

export const rainIndoors: SiteCheck = {
  card: {
    code: 'water/rain-indoors',
    severity: 'warning',
    looksAt: 'Rain that is counted, or a rain sensor that may hold the watering, on a site under glass.',
    why: 'No rain reaches plants under glass. What is counted as rain they lack, and a sensor outside stops their water on a wet day.',
    sources: ['site-record', 'project-rule'],
    fix: 'Count no rain, and take the rain sensor off the controllers of the house.',
    worked: {
      example: `place: glasshouse
climate: { reference-et: { Jul: 112 mm }, effective-rain: fao-manual-3 }`,
      instead: `place: glasshouse
climate: { reference-et: { Jul: 112 mm }, effective-rain: none }`
    }
  },
  run: ({ site }, report) => {
    if (site.place !== 'glasshouse') return
    judgeClimate(site, report)
    for (const sensor of site.sensors.filter(one => /\brain/iu.test(one.kind))) {
      const holds = sensor.controller === undefined ? 'the watering' : `controller ${sensor.controller}`
      report({
        subject: sensor.id,
        at: at(sensor, 'kind'),
        message: `${sensor.id}: a rain sensor holds ${holds}, but the site is under glass, where rain does not water.`,
        fix: `Take ${sensor.id} off ${holds}, or write another place if the beds lie in the open.`
      })
    }
  }
}

function judgeClimate({ climate, id }: Site, report: Report): void {
  const method = climate?.effectiveRain
  if (!climate || method === undefined || method.trim().toLowerCase() === 'none') return
  report({
    subject: id,
    at: at(climate, 'effective-rain'),
    message: `Rain is counted by “${method}”, but the site is under glass, where rain does not water.`,
    fix: 'Write "effective-rain: none", or another place if the beds lie in the open.'
  })
}
