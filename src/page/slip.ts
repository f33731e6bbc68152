/** What a person filled in at the box. Empty fields are left out of the slip. */
export interface SlipFields {
  readonly site: string
  readonly box: string
  readonly tag: string
  readonly on: string
  readonly by: string
  readonly reason: string
  readonly batteries: readonly SlipBattery[]
  readonly readings: readonly SlipReading[]
  readonly found: string
  readonly done: string
  readonly open: string
}

export interface SlipBattery {
  readonly controller: string
  /** "1 × 9 V alkaline" */
  readonly kind: string
  readonly changed: boolean
  readonly rest: string
  readonly load: string
}

export interface SlipReading {
  readonly station: string
  readonly loop: string
  readonly coil: string
  readonly flow: string
  /** "L/min" or "gpm", as the site counts. */
  readonly flowUnit: string
}

/**
 * The visit as text to copy or mail: the front matter of a visit file, so that it can be pasted as it is. Comments say where it was written;
 * text is quoted, so that nothing a person types can break it.
 */
export function slipText(fields: SlipFields): string {
  const lines = [
    '---',
    `# ${oneLine(fields.site)} · ${oneLine(fields.box)} · ${fields.tag}`,
    fields.on && `on: ${fields.on}`,
    fields.by && `by: ${quoted(fields.by)}`,
    fields.reason && `reason: ${quoted(fields.reason)}`,
    ...listOf(
      'batteries',
      fields.batteries.flatMap(battery => batteryLine(battery, fields.on))
    ),
    ...listOf('readings', fields.readings.flatMap(readingLine)),
    ...listOf('found', textLines(fields.found)),
    ...listOf('done', textLines(fields.done)),
    ...listOf('open', textLines(fields.open)),
    '---'
  ]
  return `${lines.filter(line => line !== '').join('\n')}\n`
}

function batteryLine({ controller, kind, changed, rest, load }: SlipBattery, on: string): string[] {
  if (!changed && !rest && !load) return []
  const [, count, name] = /^(\d+) × (.+)$/u.exec(kind) ?? []
  const parts = [
    `controller: ${quoted(controller)}`,
    changed && on && `fitted: ${on}`,
    changed && name && `kind: ${quoted(name)}`,
    changed && count && `count: ${count}`,
    rest && `rest: ${withUnit(rest, 'V')}`,
    load && `under-load: ${withUnit(load, 'V')}`
  ]
  return [`{ ${parts.filter(Boolean).join(', ')} }`]
}

function readingLine({ station, loop, coil, flow, flowUnit }: SlipReading): string[] {
  const values = [
    loop && `loop: ${withUnit(loop, 'ohm')}`,
    coil && `coil: ${withUnit(coil, 'ohm')}`,
    flow && `flow: ${withUnit(flow, flowUnit)}`
  ].filter(Boolean)
  return values.length === 0 ? [] : [`{ station: ${quoted(station)}, ${values.join(', ')} }`]
}

function textLines(text: string): string[] {
  return text
    .split(/\r?\n/u)
    .map(line => line.trim())
    .filter(line => line !== '')
    .map(quoted)
}

function listOf(key: string, items: readonly string[]): string[] {
  return items.length === 0 ? [] : [`${key}:`, ...items.map(item => `  - ${item}`)]
}

/** A bare number gets the unit that its field names; anything else is kept as it was typed, quoted. */
function withUnit(typed: string, unit: string): string {
  const text = typed.trim().replace(/^(\d+),(\d+)/u, '$1.$2')
  return /^\d+(\.\d+)?$/u.test(text) ? `${text} ${unit}` : quoted(text)
}

/** A JSON string is a YAML string. */
function quoted(text: string): string {
  return JSON.stringify(text.trim())
}

function oneLine(text: string): string {
  return text.replace(/\s+/gu, ' ').trim()
}
