import type { FigureSpec } from '../../binder/blocks.ts'
import { batteryYearFigure } from './battery-year.ts'
import { dayStripFigure } from './day-strip.ts'
import { monthsFigure } from './months.ts'
import { needGivenFigure } from './need-given.ts'
import { planFigure } from './plan.ts'
import { pressureWayFigure } from './pressure-way.ts'
import { weekStripFigure } from './week-strip.ts'
import { wireRunFigure } from './wire-run.ts'
import { wiringFigure } from './wiring.ts'

/** A figure as SVG: line art with patterns, no colour, readable in a photocopy. */
export function figureSvg(spec: FigureSpec): string {
  switch (spec.figure) {
    case 'months':
      return monthsFigure(spec)
    case 'day-strip':
      return dayStripFigure(spec)
    case 'week-strip':
      return weekStripFigure(spec)
    case 'need-given':
      return needGivenFigure(spec)
    case 'pressure-way':
      return pressureWayFigure(spec)
    case 'wire-run':
      return wireRunFigure(spec)
    case 'battery-year':
      return batteryYearFigure(spec)
    case 'plan':
      return planFigure(spec)
    case 'wiring':
      return wiringFigure(spec)
  }
}
