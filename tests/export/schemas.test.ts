import { Ajv } from 'ajv'
import { describe, expect, it } from 'vitest'
import { fleetJson } from '../../src/export/fleet-json.ts'
import { dueSchema, fleetSchema } from '../../src/export/schemas.ts'
import { dueJson } from '../../src/report/due.ts'
import { ON, contexts, demoDue } from './due-fixture.ts'

const ajv = new Ajv({ allErrors: true, formats: { date: /^\d{4}-\d{2}-\d{2}$/u } })
const errors = (schema: object, data: unknown) => {
  const validate = ajv.compile({ ...schema, $id: undefined } as object)
  validate(JSON.parse(JSON.stringify(data)))
  return validate.errors ?? []
}

describe('the published schemas', () => {
  it('are met by the due list and the fleet of the demo sites', () => {
    expect(errors(dueSchema(), dueJson(demoDue, ON))).toEqual([])
    expect(errors(fleetSchema(), fleetJson(contexts, ON))).toEqual([])
  })

  it('are not met where a key is gone or of another kind', () => {
    const list = JSON.parse(JSON.stringify(dueJson(demoDue, ON))) as { due: Record<string, unknown>[]; schema: number }
    expect(errors(dueSchema(), { ...list, schema: 2 })).not.toEqual([])
    expect(errors(dueSchema(), { ...list, due: list.due.map(({ site: _, ...rest }) => rest) })).not.toEqual([])
    expect(errors(dueSchema(), { ...list, due: list.due.map(one => ({ ...one, due_on: 5 })) })).not.toEqual([])
  })
})
