import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { allFindings, assessFleet } from '../../src/build/assess.ts'
import { readKeptFleet } from '../../src/build/kept-fleet.ts'
import { refuseBrokenRegister } from '../../src/cli/register-guard.ts'
import { date } from '../../src/units/date.ts'
import { temporaryFolder } from './temporary-folder.ts'

const temporary = temporaryFolder()
const ON = date('2026-05-01')
const HEAD = 'tag,site,box,state,issued,now\n'
const OTHER = `${HEAD}P5DAU38,elsewhere,VB1,live,2026-03-20,\n`

beforeEach(() => {
  mkdirSync(temporary.path('sites'))
  for (const name of ['_shared', 'kestrel-cross'])
    cpSync(join('sites', name), temporary.path('sites', name), { recursive: true })
})

function withRegister(text: string | undefined): void {
  rmSync(temporary.path('sites/tags.csv'), { force: true })
  if (text !== undefined) writeFileSync(temporary.path('sites/tags.csv'), text)
}

const assess = (text: string | undefined) => {
  withRegister(text)
  return assessFleet(temporary.path('sites'), ON)
}
const told = (text: string | undefined): string[] =>
  allFindings(assess(text)).flatMap(one => (/^tag\/|register/u.test(one.code) ? [one.code] : []))

describe('a fleet whose register cannot be had', () => {
  it('is told of once, not at each box, whatever became of it', () => {
    expect(told(undefined)).toEqual(['tag/no-register'])
    expect(told(HEAD)).toEqual(['tag/no-register'])
    expect(told('')).toEqual(['file/register'])
    expect(told(OTHER)).toEqual(['tag/site-gone', ...Array<string>(3).fill('tag/unregistered')])
  })

  it('has nothing to tell where no box carries a tag', () => {
    rmSync(temporary.path('sites/kestrel-cross'), { recursive: true })
    expect(told(undefined)).toEqual([])
  })

  it('has its sites looked at again when it holds a line, though of another site', () => {
    const keys = (text: string | undefined) => {
      withRegister(text)
      return readKeptFleet(temporary.path('sites'), ON, () => [], { mark: 'one' }).units.map(one => one.key)
    }
    expect(keys(HEAD)).toEqual(keys(undefined))
    expect(keys(OTHER)).not.toEqual(keys(undefined))
  })

  it('is given a new register from the tags of all sites alone; a site that is gone hinders nothing', () => {
    expect(() => refuseBrokenRegister(assess(undefined))).toThrow('There is no register')
    expect(() => refuseBrokenRegister(assess(undefined), true)).not.toThrow()
    expect(() => refuseBrokenRegister(assess(''), true)).toThrow('The register is empty.')
    expect(() => refuseBrokenRegister(assess(OTHER))).not.toThrow()
  })
})
