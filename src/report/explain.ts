import type { Check } from '../checks/check.ts'
import { shortened } from './source-text.ts'
import { citeSource } from '../reference/sources.ts'

/** What a finding means, why it matters, where that comes from, and a worked case. */
export function explainText({ card }: Check): string {
  const indent = (text: string) =>
    shortened(text)
      .split('\n')
      .map(line => `    ${line}`)
      .join('\n')
  return [
    `${card.code}  (${card.severity})`,
    '',
    `  ${card.looksAt}`,
    '',
    `  why      ${card.why}`,
    `  do       ${card.fix}`,
    ...card.sources.map((id, index) => `  ${index === 0 ? 'source ' : '       '}  ${citeSource(id)}`),
    '',
    `  This makes it fire${card.worked.on ? ` on ${card.worked.on}` : ''}:`,
    '',
    indent(card.worked.example),
    '',
    '  This does not:',
    '',
    indent(card.worked.instead),
    ''
  ].join('\n')
}

export function explainJson({ card }: Check): object {
  return { ...card, sources: card.sources.map(citeSource) }
}
