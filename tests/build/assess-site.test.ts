import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { assessSite, siteOfTag } from '../../src/build/assess-site.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from './temporary-folder.ts'

const ON = date('2026-05-01')
const temporary = temporaryFolder()

describe('one site of many', () => {
  it('has the findings that it has beside all others', () => {
    const whole = assessFleet('sites', ON)
    expect(whole.sites.length).toBeGreaterThan(8)
    const some = whole.sites.filter((_, index) => index % 4 === 0)
    for (const { id, findings } of some) expect(assessSite('sites', ON, id).sites[0]?.findings).toEqual(findings)
  })

  it('is seen beside the site that carries a tag of its own', () => {
    const sites = join(temporary.path(), 'sites')
    mkdirSync(sites, { recursive: true })
    for (const name of ['_shared', 'kestrel-cross', 'tansy-yard', 'larkmoor-median', 'tags.csv'])
      cpSync(join('sites', name), join(sites, name), { recursive: true })
    const path = join(sites, 'tansy-yard/site.md')
    writeFileSync(path, readFileSync(path, 'utf8').replace(/tag: [2-9A-Z]{7}/u, 'tag: 7KQ3F9X'))
    const one = assessSite(sites, ON, 'tansy-yard')
    expect(one.sites[0]?.findings.map(finding => finding.code)).toContain('tag/duplicate')
    expect(one.sites[0]?.findings).toEqual(assessFleet(sites, ON, ['tansy-yard']).sites[0]?.findings)
    expect(one.fleet.sites.map(site => site.id)).toEqual(['kestrel-cross', 'tansy-yard'])
    expect(siteOfTag(one.sources, '7KQ3F9X')).toBe('kestrel-cross')
    expect(siteOfTag(one.sources, '22222AB')).toBeUndefined()
  })
})
