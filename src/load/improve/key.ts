import { nearest } from './nearest.ts'

/** Other words of the trade for a key; a slip of the fingers is found by its letters, another word is not. */
const SAME_THING: ReadonlyMap<string, string> = new Map(
  Object.entries({
    license: 'licence',
    color: 'colour',
    lat: 'latitude',
    lon: 'longitude',
    lng: 'longitude',
    long: 'longitude',
    altitude: 'elevation',
    tz: 'time-zone',
    name: 'title',
    type: 'kind',
    shutoff: 'shut-off',
    rule: 'watering-rules',
    restrictions: 'watering-rules',
    zones: 'stations',
    valves: 'stations',
    warranties: 'warranty',
    timers: 'controllers',
    clocks: 'controllers',
    gauge: 'size',
    distance: 'length',
    run: 'length',
    resistance: 'coil-resistance',
    ohms: 'coil-resistance',
    flow: 'normal-flow',
    pressure: 'static-pressure',
    installed: 'fitted',
    changed: 'fitted',
    replaced: 'fitted',
    number: 'count',
    quantity: 'count',
    start: 'starts',
    'start-times': 'starts',
    day: 'days',
    'run-times': 'stations',
    date: 'on',
    depth: 'root-depth',
    picture: 'photos',
    images: 'photos',
    rating: 'load-rating',
    ip: 'ingress',
    ref: 'ties',
    location: 'where',
    label: 'zone',
    kind: 'mounting',
    telephone: 'phone',
    tel: 'phone',
    mobile: 'phone',
    percent: 'monthly-percent',
    budget: 'monthly-percent',
    eto: 'reference-et',
    et: 'reference-et'
  })
)

/** The key of this record that was most likely meant. */
export function nearestKey(key: string, known: readonly string[]): string | undefined {
  const other = SAME_THING.get(key.toLowerCase().replace(/[\s_]+/gu, '-'))
  return other !== undefined && known.includes(other) ? other : nearest(key, known)
}
