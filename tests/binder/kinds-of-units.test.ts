import { describe, expect, it } from 'vitest'
import { publicContext } from '../../src/binder/context.ts'
import { makeBinder } from '../../src/binder/make-binder.ts'
import { makeBoxPage } from '../../src/binder/make-box-page.ts'
import { makeRestrictedSheet } from '../../src/binder/make-restricted.ts'
import { assessFleet } from '../../src/build/assess.ts'
import { contextOf } from '../../src/build/page-context.ts'
import { date } from '../../src/units/date.ts'

const demos = assessFleet('sites', date('2026-05-01')).sites.flatMap(one => contextOf(one, 'HTTPS://EXAMPLE.ORG'))
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ')

function demo(id: string) {
  const context = demos.find(one => one.site.id === id)
  if (!context) throw new Error(id)
  const binder = makeBinder(context)
  const pages = new Map(
    context.site.boxes.flatMap(box =>
      box.tag === undefined
        ? []
        : [[box.id, spaced(JSON.stringify(makeBoxPage({ ...box, tag: box.tag }, publicContext(context))))]]
    )
  )
  return {
    context,
    binder: spaced(JSON.stringify(binder)),
    section: (name: string) => spaced(JSON.stringify(binder.sections.find(one => one.id === name))),
    page: (box: string): string => pages.get(box) ?? '',
    restricted: JSON.stringify(makeRestrictedSheet(context))
  }
}

const coast = demo('marram-steps')
const depot = demo('tansy-yard')

describe('each kind of unit has a demo controller, and binder and box page tell a newcomer what it needs', () => {
  it('a sealed one in the box: mounting, cells, flat cap on wire, holding it back, lost memory', () => {
    expect(depot.section('controllers')).toContain('hangs in the valve box by its hook')
    expect(depot.section('wires')).toContain('100 ft')
    expect(depot.page('TY3')).toContain('4 × AA alkaline')
    expect(depot.page('TY3')).toContain('it shows a crossed drop and the days left')
    expect(depot.page('TY3')).toContain('T2, clock and program gone: The display blinks 12:00')
  })

  it('one set by radio: range and where to stand; its access code is on the restricted sheet alone', () => {
    for (const text of [coast.section('controllers'), coast.page('MS4')]) {
      expect(text).toContain('10 m')
      expect(text).toContain('on the slabs at the kiosk door')
    }
    expect(coast.restricted).toContain('729 114')
    expect(coast.binder + [...'1234'].map(n => coast.page(`MS${n}`)).join('')).not.toContain('729 114')
  })

  it('one on a post with a panel, and one on a wall with an adapter: lock, key, long runs by gauge, mains', () => {
    expect(coast.section('controllers')).toContain('cabinet lock; key C2')
    expect(coast.section('wires')).toMatch(/(300|490) m at (1\.5|2\.5) mm²/u)
    expect(depot.section('controllers')).toContain('cam lock; key D4')
    expect(depot.section('controllers')).toContain('MAINS beyond the relay: licensed electrician only')
    expect(depot.page('TY1')).toContain('MAINS')
  })

  it('keys stand in a register with their holders, and their places on the restricted sheet alone', () => {
    expect(coast.section('contacts')).toContain('Key register')
    expect(depot.section('contacts')).toContain('owner, maintainer, electrician')
    expect(depot.restricted).toContain('hook 3 in the office')
    expect(depot.binder).not.toContain('hook 3')
  })

  it('three leads: both halves at the controller and at the valve, and their own wiring', () => {
    expect(coast.page('MS2')).toContain('open 11.89, close 14.29 Ω')
    expect(coast.page('MS2')).toContain('open 10.20, close 12.60 Ω')
    expect(coast.section('faults')).toContain('Measure common to open, then common to close')
    expect(coast.section('wires')).toContain('the leads are never swapped to reverse it')
  })

  it('three leads: the closing half has its own baseline, band and trend', () => {
    // 14.2 Ω at closeout, 20 % either way.
    expect(coast.section('faults')).toMatch(/to close.*14\.20 Ω.*11\.36.*17\.04/su)
    expect(coast.section('wires')).toContain('M1/6 to close')
    expect(coast.page('MS2')).toContain('open 11.9 Ω, close 14.2 Ω')
  })

  it('a clock that drifts says by how much and how often it is set right; cold takes its part of the charge', () => {
    expect(coast.section('controllers')).toContain('1 min a month; set right every 6 months')
    // 7.05 °C in April, between 70 % at 0 °C and all of it at 20 °C.
    expect(coast.section('batteries')).toMatch(/81 %|0\.81/u)
  })

  it('a valve made for AC: what it was, the adapter, and the day on which it was seen to work', () => {
    expect(depot.section('wires')).toContain('1 in, 24 V AC, of 2009')
    expect(depot.section('wires')).toContain('threaded ring under the coil, new plunger and spring')
    expect(depot.section('wires')).toContain('2025-04-08')
  })

  it('master valve, pump and sensors stand in the wiring with their terminals', () => {
    const figures = depot.context.site.controllers.length
    expect(figures).toBe(2)
    for (const text of ['Master valve', 'Pump relay', 'MAINS BEYOND', 'FS1', 'RS1'])
      expect(depot.section('wires')).toContain(text)
  })

  it('a master valve is listed where its box is opened: table of boxes, box page, valves, inventory, index', () => {
    for (const text of [coast.section('boxes'), coast.page('MS1')]) expect(text).toContain('master valve of M1')
    expect(coast.page('MS1')).toContain('M1/MV')
    for (const name of ['as-installed', 'index']) {
      expect(coast.section(name)).toContain('M1/MV')
      expect(coast.section(name)).toContain('master valve')
    }
  })

  it('sensors: how they are wired, what they stop, and how to leave one out for a test, at the box too', () => {
    for (const text of [depot.section('site'), depot.page('TY1'), depot.section('faults')])
      expect(text).toContain('Join the two gray wires in the cabinet with the jumper on the door.')
    expect(depot.page('TY1')).toContain('no station of T1 waters though the program runs')
  })

  it('a sensor whose wiring nobody supplied says so, at the box and in fault finding', () => {
    const roof = demo('tinder-street-roof')
    expect(roof.section('faults')).toContain('RS1 (rain): nobody wrote down how it is wired.')
    expect(roof.page('PB1')).toContain('RS1 (rain): nobody wrote down how it is wired.')
    expect(roof.binder).not.toContain('terminals of its own')
  })

  it('a solar controller has no set to judge, and no battery of a kind that nobody stated stands in its place', () => {
    expect(coast.section('faults')).not.toContain('not stated')
    expect(coast.section('controllers')).toContain('; normally closed')
  })

  it('the tabs hold every section, the ring binder itself and the index too', () => {
    const tabs = coast.section('ring-binder')
    expect(tabs).toContain('Sign-offs; Ring binder and digital copies; How these numbers were made; Glossary; Index')
  })

  it('the distance that states of the US set is told on sites of the US alone', () => {
    expect(depot.section('safety')).toContain('many say 24 in (600 mm)')
    expect(coast.binder).not.toContain('many say')
  })

  it('a test with cans gives its uniformity as a figure', () => {
    expect(demo('harbour-steps').section('zones')).toMatch(/"85 %","standing":"measured",.*"note":"Catch-can test"/u)
  })

  it('sets that fall due on one day are named once, in the calendar and on the list for the start of the season', () => {
    const row = demo('mercer-row')
    expect(row.section('calendar')).toContain('MR-01 … MR-08 (6) (05-20)')
    expect(row.section('checklists')).toContain('MR-01 … MR-08 (6) 2026-05-20 (1 × 9 V alkaline)')
    expect(row.section('record-drawings')).toContain('"Controllers MR-01 … MR-16 (16)"')
  })

  it('a wire whose way is not written down is told of as that, not by its zone alone', () => {
    expect(coast.section('as-installed')).toContain('P9, planting bed; P10, P11: not on file')
  })

  it('a delay says what it is for, and that it is no fault', () => {
    expect(depot.section('controllers')).toContain('the well recovers')
    expect(coast.page('MS1')).toContain('M1 waits 20 s between stations: slow valves, which take 15 s to close.')
  })

  it('closing by hand is told for the valves in the box, not for another make elsewhere on the site', () => {
    expect(coast.page('MS4')).toContain('Turn the coil a quarter turn to the left to open, back to close.')
    expect(coast.page('MS4')).not.toContain('red knob')
    expect(coast.page('MS2')).toContain('Turn the red knob to OPEN')
  })
})
