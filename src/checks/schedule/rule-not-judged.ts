import { isAbsent } from '../../base/absent.ts'
import { groupsOf } from '../../domain/schedule/address-days.ts'
import type { Site, WateringRule } from '../../model/site.ts'
import type { Plan } from '../../plan/plan.ts'
import { bindsStation } from '../../plan/rule-facts.ts'
import type { SiteCheck } from '../check.ts'
import { at } from '../at.ts'
import { stationsInService } from '../wire/subject.ts'
import { daysKey } from './rules-over.ts'

export const ruleNotJudged: SiteCheck = {
  card: {
    code: 'schedule/rule-not-judged',
    severity: 'warning',
    looksAt: 'A watering rule that asks for something the site does not state: a house number, a time zone, a rate.',
    why: 'Without it nobody can tell whether the programs keep the rule, and no other finding speaks of it.',
    sources: ['site-record'],
    fix: 'Write what the rule asks for.',
    worked: {
      example: `watering-rules: [{ authority: invented water board, days-by-address: { odd: odd dates, even: even dates } }]`,
      instead: `watering-rules: [{ authority: invented water board, days: even dates }]`
    }
  },
  run: ({ site, plan }, report) => {
    for (const rule of site.wateringRules)
      for (const { key, message, fix } of troublesOf(rule, site, plan))
        report({
          subject: rule.authority ?? site.id,
          at: at(rule, key),
          message,
          fix,
          related: site.location ? [{ at: at(site.location), note: 'the place' }] : []
        })
  }
}

interface Trouble {
  readonly key: string
  readonly message: string
  readonly fix: string
}

function troublesOf(rule: WateringRule, site: Site, plan: Plan): readonly Trouble[] {
  return [addressTrouble(rule, site), clockTrouble(rule, site), rateTrouble(rule, site, plan)].flatMap(one => one ?? [])
}

function addressTrouble(rule: WateringRule, { location }: Site): Trouble | undefined {
  const { daysByAddress: groups, days } = rule
  if (!groups || days !== undefined) return undefined
  const number = location?.houseNumber
  const key = daysKey(rule)
  if (number === undefined)
    return {
      key,
      message: 'The days of the rule go by the house number, and the site states none.',
      fix: 'Write "house-number: 1204" under location, or "house-number: none" where there is no street address.'
    }
  const own = groupsOf(groups, number)
  const which = number === 'none' ? 'places without a street address' : `house number ${number}`
  if (own.length === 0)
    return {
      key,
      message: `The rule names no days for ${which}.`,
      fix: `Add its group: ${number === 'none' ? 'none' : number % 10}: and the days.`
    }
  if (own.length > 1)
    return {
      key,
      message: `The rule names the days for ${which} twice.`,
      fix: 'Let each last digit stand in one group.'
    }
  return undefined
}

function clockTrouble({ when }: WateringRule, { location }: Site): Trouble | undefined {
  if (when === undefined || location?.timeZone !== undefined) return undefined
  return {
    key: 'when',
    message: 'The rule goes by daylight saving, and the site states no time zone.',
    fix: 'Write the time zone under location: "time-zone: America/Denver".'
  }
}

function rateTrouble(rule: WateringRule, site: Site, plan: Plan): Trouble | undefined {
  if (rule.atMost?.dimension !== 'length') return undefined
  const unknown = stationsInService(site).filter(({ id, controller, number }) => {
    const water = plan.water.get(id)
    return bindsStation(rule, site, controller)(number) && water?.longestSet && isAbsent(water.rateMPerS)
  })
  const [first, ...others] = unknown.map(({ id }) => id)
  if (first === undefined) return undefined
  return {
    key: 'at-most',
    message: `The rule caps the depth of a day, and the rate of ${first}${others.length === 0 ? '' : ` and ${others.length} more`} is not known.`,
    fix: 'State flow and area of each station that waters.'
  }
}
