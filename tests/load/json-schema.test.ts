import { Ajv } from 'ajv'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { productSheetJsonSchema, siteJsonSchema, visitJsonSchema } from '../../src/load/json-schema.ts'
import type { JsonSchema } from '../../src/load/json-schema.ts'
import { loadSite } from '../../src/load/site.ts'
import { baseSite } from '../support/base-site.ts'
import { manualFiles } from './manual.ts'

const [SITE = '', VISIT = '', SHEET = ''] = manualFiles()
const keysOf = (file: string): unknown => parse(file.split('---\n')[1] ?? '', { version: '1.2' })

function validator(schema: JsonSchema) {
  const ajv = new Ajv({
    allErrors: true,
    strict: true,
    allowUnionTypes: true,
    formats: { date: /^\d{4}-\d{2}-\d{2}$/u }
  })
  return ajv.compile(schema)
}

const valid = validator(siteJsonSchema())
const base = (overrides: string): unknown => keysOf(baseSite(overrides).files[0]?.text ?? '')

describe('the JSON Schema for editors', () => {
  it('takes the files of the manual and the base site', () => {
    expect([valid(keysOf(SITE)), valid.errors]).toEqual([true, null])
    expect([valid(base('')), valid.errors]).toEqual([true, null])
    expect(validator(visitJsonSchema())(keysOf(VISIT))).toBe(true)
    expect(validator(productSheetJsonSchema())(keysOf(SHEET))).toBe(true)
  })

  it('says of each key what it is for, and shows an example of each value', () => {
    const untold: string[] = []
    const walk = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return
      const {
        properties = {},
        anyOf = [],
        items,
        description,
        examples
      } = node as {
        properties?: object
        anyOf?: unknown[]
        items?: unknown
        description?: string
        examples?: unknown[]
      }
      const scalar = 'type' in node && !['object', 'array', 'null'].includes(String(node.type))
      if (scalar && (description === undefined || examples === undefined)) untold.push(path)
      for (const [key, value] of Object.entries(properties)) walk(value, `${path}.${key}`)
      for (const one of anyOf) walk(one, path)
      walk(items, `${path}[]`)
    }
    walk(siteJsonSchema(), 'site')
    expect(untold).toEqual([])
  })

  /** Each is taken, or refused, by editor and loader alike. */
  const CASES: readonly (readonly [string, boolean])[] = [
    ['season: { from: 04-01, to: 10-15 }', true],
    ['season: { from: 04-01 }', false],
    ['season: ', true],
    ['seasn: { from: 04-01, to: 10-15 }', false],
    ['paper: A5', false],
    ['supplies: [{ id: S1, kind: potable, limit: 60 L/min }]', true],
    ['supplies: [{ id: S1, kind: potable, limit: 16 gpm }]', true],
    ['supplies: [{ id: S1, kind: potable, limit: 60 }]', false],
    ['supplies: [{ id: S1, kind: potable, limit: 60 lpm }]', false],
    ['supplies: [{ id: S1, kind: potable, limit: 4.1 bar }]', false],
    ['supplies: { id: S1, kind: potable }', false],
    ['boxes: [{ id: VB1, ties: [a, b] }, { id: VB2, photos: [{ file: a.jpg }, b.jpg] }]', true],
    ['boxes: [{ id: VB1, ties: a }, { id: VB2 }]', false],
    ['boxes: [{ id: 1 }]', false],
    ['controllers: [{ id: K1, serial: 42, battery: { kind: AA, count: 4 } }]', true],
    ['controllers: [{ id: K1, battery: { kind: AA, count: 0 } }]', false],
    ['controllers: [{ id: K1, battery: { kind: AA, count: four } }]', false],
    [
      'controllers: [{ id: K1, programs: [{ id: A, days: every day, starts: ["23:10"], stations: { 1: 25 min } }] }]',
      true
    ],
    [
      'controllers: [{ id: K1, programs: [{ id: A, days: every day, starts: ["23:10"], stations: { one: 25 min } }] }]',
      false
    ],
    ['location: { latitude: 91 }', false],
    ['location: { latitude: -33.9, longitude: 151.2, time-zone: Australia/Sydney }', true],
    ['work-rules: { road: yes }', true],
    ['work-rules: { road: perhaps }', false],
    ['climate: _shared/climates/x.md', true],
    ['climate: { reference-et: { Jul: 118 mm } }', true],
    ['climate: { reference-et: { July: 118 mm } }', false],
    ['watering-rules: [_shared/rules/x.md, { window: [20:00-00:00, 00:00-08:00] }]', true],
    ['stations: [{ id: K1/1, valve: { size: 1 in } }, { id: K1/2, valve: [{ size: 1 in }, { size: 1 in }] }]', true],
    ['stations: [{ id: K1/1, valve: { sise: 1 in } }, { id: K1/2 }]', false],
    ['stations: [{ id: Z1 }]', false],
    ['private: { anything: [1, { at: all }] }', true]
  ]

  it.each(CASES)('agrees with the loader on %s', (overrides, taken) => {
    const fatal = loadSite(baseSite(`${overrides}\n`)).faults.filter(fault => fault.fatal)
    expect([valid(base(`${overrides}\n`)), fatal.length === 0]).toEqual([taken, taken])
  })
})
