/** What a person filled in at the box. Empty fields are left out of the slip. */
export interface SlipFields {
  readonly site: string
  readonly box: string
  readonly tag: string
  readonly on: string
  readonly arrived?: string
  readonly left?: string
  readonly by: string
  readonly reason: string
  /** Of the air, so that ohms can be held against those of another day; with the unit that a bare number gets. */
  readonly temperature?: string
  readonly temperatureUnit?: string
  /** What earlier visits left open and this one did, in their words. */
  readonly repaired?: readonly string[]
  readonly batteries: readonly SlipBattery[]
  readonly programs?: readonly SlipProgram[]
  readonly readings: readonly SlipReading[]
  readonly meters?: readonly SlipMeter[]
  readonly found: string
  readonly done: string
  readonly parts?: string
  readonly photos?: string
  readonly open: string
  readonly owner?: string
  readonly drawingChange?: boolean
}

export interface SlipBattery {
  readonly controller: string
  /** The set that is in it now: "1 × 9 V alkaline". */
  readonly kind: string
  readonly changed: boolean
  readonly rest: string
  readonly load: string
}

export interface SlipProgram {
  readonly controller: string
  /** What its clock showed against the right time; then the program as found and as left. */
  readonly clock: string
  readonly found: string
  readonly left: string
}

export interface SlipReading {
  readonly station: string
  /** What the valve did, in the words of a visit file: "as told", "opens only", … */
  readonly answers?: string
  readonly loop: string
  readonly coil: string
  /** The closing half of a coil of three leads; `loop` and `coil` are then the opening half. */
  readonly closingLoop?: string
  readonly closingCoil?: string
  readonly flow: string
  readonly pressure?: string
  /** "L/min" or "gpm", "bar" or "psi", as the site counts. */
  readonly flowUnit: string
  readonly pressureUnit?: string
}

export interface SlipMeter {
  readonly supply: string
  readonly meter: string
  readonly unit: string
}

/**
 * The visit as text to send: the front matter of a visit file, so that it can be pasted as it is. Comments say where it was written; text is
 * quoted, so that nothing a person types can break it.
 */
export function slipText(fields: SlipFields): string {
  const { on, by, reason, arrived = '', left = '', parts = '', photos = '', owner = '' } = fields
  const temperature = withUnit(fields.temperature ?? '', fields.temperatureUnit ?? '')
  const lines = [
    '---',
    `# ${oneLine(fields.site)} · ${oneLine(fields.box)} · ${fields.tag}`,
    on && `on: ${on}`,
    by && `by: ${quoted(by)}`,
    reason && `reason: ${quoted(reason)}`,
    arrived && `arrived: ${quoted(arrived)}`,
    left && `left: ${quoted(left)}`,
    ...listOf(
      'programs',
      (fields.programs ?? []).flatMap(({ controller, ...said }) =>
        entry({ controller: quoted(controller) }, textsOf(said))
      )
    ),
    ...listOf(
      'batteries',
      fields.batteries.flatMap(battery => batteryLine(battery, on))
    ),
    ...listOf('readings', [
      ...fields.readings.flatMap(reading => readingLine(reading, temperature)),
      ...(fields.meters ?? []).flatMap(meterLine)
    ]),
    ...listOf('found', textLines(fields.found)),
    ...listOf('done', textLines(fields.done)),
    ...listOf('repaired', (fields.repaired ?? []).map(quoted)),
    ...listOf('parts', linesOf(parts).map(partLine)),
    ...listOf('photos', textLines(photos)),
    ...listOf('open', textLines(fields.open)),
    owner && `owner: ${quoted(owner)}`,
    fields.drawingChange && 'drawing-change: yes',
    '---'
  ]
  return `${lines.filter(Boolean).join('\n')}\n`
}

/** "2 × gel-filled connector", "4 x AA alkaline" */
const COUNTED = /^(\d+)\s*[×x*]?\s+(.+)$/iu

function batteryLine({ controller, kind, changed, rest, load }: SlipBattery, on: string): string[] {
  if (!changed && !rest && !load) return []
  const [, count = '', name = kind.trim()] = COUNTED.exec(kind.trim()) ?? []
  const fitted: Readonly<Record<string, string>> = changed ? { fitted: on, kind: name && quoted(name), count } : {}
  return entry(
    { controller: quoted(controller) },
    { ...fitted, rest: withUnit(rest, 'V'), 'under-load': withUnit(load, 'V') }
  )
}

function readingLine(reading: SlipReading, temperature: string): string[] {
  const { station, answers = '', flow, pressure = '', flowUnit, pressureUnit = '' } = reading
  const ohms = {
    loop: reading.loop,
    coil: reading.coil,
    'closing-loop': reading.closingLoop ?? '',
    'closing-coil': reading.closingCoil ?? ''
  }
  return entry(
    { station: quoted(station) },
    {
      answers,
      ...Object.fromEntries(Object.entries(ohms).map(([name, ohm]) => [name, withUnit(ohm, 'ohm')])),
      temperature: Object.values(ohms).join('') && temperature,
      flow: withUnit(flow, flowUnit),
      pressure: withUnit(pressure, pressureUnit)
    }
  )
}

function meterLine({ supply, meter, unit }: SlipMeter): string[] {
  return entry({ supply: quoted(supply) }, { meter: withUnit(meter, unit) })
}

/** "2 × gel-filled connector" is two of them; without a number it is one. */
function partLine(line: string): string {
  const [, count = '', item = line] = COUNTED.exec(line) ?? []
  return entry({ item: quoted(item) }, { count }).join('') || `{ item: ${quoted(item)} }`
}

/** One entry of a list, or nothing where only its name is known. */
function entry(name: Readonly<Record<string, string>>, values: Readonly<Record<string, string>>): string[] {
  const said = Object.entries(values).filter(([, value]) => value !== '')
  const pairs = [...Object.entries(name), ...said].map(([key, value]) => `${key}: ${value}`)
  return said.length === 0 ? [] : [`{ ${pairs.join(', ')} }`]
}

function textsOf(values: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, value && quoted(value)]))
}

function linesOf(text: string): string[] {
  return text
    .split(/\r?\n/u)
    .map(line => line.trim())
    .filter(line => line !== '')
}

function textLines(text: string): string[] {
  return linesOf(text).map(quoted)
}

function listOf(key: string, items: readonly string[]): string[] {
  return items.length === 0 ? [] : [`${key}:`, ...items.map(item => `  - ${item}`)]
}

/** A bare number gets the unit that its field names; anything else is kept as it was typed, quoted. */
function withUnit(typed: string, unit: string): string {
  const text = typed
    .trim()
    .replace(/^\u2212/u, '-')
    .replace(/^(-?\d+),(\d+)/u, '$1.$2')
  if (text === '') return ''
  return /^-?\d+(\.\d+)?$/u.test(text) ? `${text} ${unit}` : quoted(text)
}

/** A JSON string is a YAML string. */
function quoted(text: string): string {
  return JSON.stringify(text.trim())
}

function oneLine(text: string): string {
  return text.replace(/\s+/gu, ' ').trim()
}
