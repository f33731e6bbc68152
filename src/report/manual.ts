import type { Check } from '../checks/check.ts'
import { groupBy } from '../base/collections.ts'
import { shortened } from './source-text.ts'
import { citeSource } from '../reference/sources.ts'

/** The manual of checks, made from their headers: docs/checks.md is this text. */
export function checksManual(checks: readonly Check[]): string {
  const areas = groupBy(checks, ({ card }) => card.code.split('/')[0] ?? '')
  const contents = [...areas].map(
    ([area, own]) => `- **${area}**: ${own.map(({ card }) => `[${card.code}](#${anchor(card.code)})`).join(', ')}`
  )
  return [
    '# Checks',
    '',
    'Made from the headers of the checks; `npx underlid explain CODE` prints one of them. An **error** is wrong or unsafe as it',
    'stands, a **warning** needs a look, a **note** is advice.',
    '',
    ...contents,
    '',
    ...checks.flatMap(entry)
  ].join('\n')
}

function entry({ card }: Check): string[] {
  const yaml = (text: string) => ['```yaml', shortened(text), '```']
  return [
    `## ${card.code}`,
    '',
    `**${card.severity}**. ${card.looksAt}`,
    '',
    `- Why: ${card.why}`,
    `- Do: ${card.fix}`,
    `- Source: ${card.sources.map(citeSource).join('; ')}`,
    '',
    card.worked.on ? `Fires on ${card.worked.on}:` : 'Fires:',
    '',
    ...yaml(card.worked.example),
    '',
    'Quiet:',
    '',
    ...yaml(card.worked.instead),
    ''
  ]
}

const anchor = (code: string): string => code.replace('/', '')
