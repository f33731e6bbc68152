/** Version of the shapes below. It moves when a key changes or goes; a key more leaves it. */
export const DATA_SCHEMA = 1

type Schema = Readonly<Record<string, unknown>>

const text: Schema = { type: 'string' }
const textOrNone: Schema = { type: ['string', 'null'] }
const dayOrNone: Schema = { type: ['string', 'null'], format: 'date' }
const count: Schema = { type: 'integer', minimum: 0 }
const amountOrNone: Schema = {
  oneOf: [{ type: 'null' }, object({ value: { type: 'number' }, unit: text })]
}

/** JSON Schema (draft 7) of data/due.json and of `due --format json`. */
export function dueSchema(): Schema {
  const need = object({ item: text, count })
  const due = object({
    site: text,
    box: textOrNone,
    subject: text,
    kind: text,
    due_on: dayOrNone,
    state: { enum: ['overdue', 'due', 'no-date'] },
    needs: list(need)
  })
  return titled('due', 'What is due', {
    due: list(due),
    shopping: list(object({ item: text, count, spares: count }))
  })
}

/** JSON Schema (draft 7) of data/fleet.json. */
export function fleetSchema(): Schema {
  const battery = object({ kind: text, count, fitted: dayOrNone, due_on: dayOrNone, state: text })
  const wire = object({
    length: amountOrNone,
    loop: amountOrNone,
    coil_voltage: amountOrNone,
    longest: amountOrNone,
    passes: { type: ['boolean', 'null'] }
  })
  const orNone = (schema: Schema): Schema => ({ oneOf: [{ type: 'null' }, schema] })
  const site = object({
    id: text,
    title: text,
    place: text,
    status: text,
    revision: textOrNone,
    boxes: list(object({ id: text, tag: textOrNone, where: textOrNone, ties: list(text) })),
    controllers: list(object({ id: text, box: textOrNone, battery: orNone(battery) })),
    stations: list(object({ id: text, zone: text, waters: textOrNone, wire: orNone(wire) }))
  })
  return titled('fleet', 'Sites', { sites: list(site) })
}

function titled(name: string, title: string, properties: Readonly<Record<string, Schema>>): Schema {
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    $id: `urn:underlid:${name}:${DATA_SCHEMA}`,
    title,
    ...object({ schema: { const: DATA_SCHEMA }, on: { type: 'string', format: 'date' }, ...properties })
  }
}

/** Every key named here is there; others may join. */
function object(properties: Readonly<Record<string, Schema>>): Schema {
  return { type: 'object', properties, required: Object.keys(properties) }
}

function list(items: Schema): Schema {
  return { type: 'array', items }
}
