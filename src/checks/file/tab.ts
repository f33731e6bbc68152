import type { FileCheck } from '../check.ts'
import { detail } from './say.ts'

export const fileTab: FileCheck = {
  card: {
    code: 'file/tab',
    severity: 'error',
    looksAt: 'A tab at the start of a line.',
    why: 'What belongs to what is told by spaces. A tab is as wide as each editor likes, so it is not allowed there.',
    sources: ['yaml-1-2'],
    fix: 'Put two spaces in place of each tab; most editors do that for the whole file at once.',
    worked: {
      example: 'season:\n\tfrom: 04-01\n\tto: 10-15',
      instead: 'season:\n  from: 04-01\n  to: 10-15'
    }
  },
  word: fault => {
    const lines = Number(detail(fault, 'lines'))
    return {
      message: lines > 1 ? `This line and ${lines - 1} more start with a tab.` : 'This line starts with a tab.',
      fix: 'Put two spaces in place of each tab.',
      values: { lines }
    }
  }
}
