/**
 * What `npm audit --json` answered, in lines for the reader: `{ lines, found }`. `found` is undefined where the registry gave no answer,
 * which is told as such and is no finding.
 */
export function auditVerdict(text) {
  const answer = parsed(text)
  const known = answer?.vulnerabilities
  if (typeof known !== 'object' || known === null || Array.isArray(known))
    return {
      lines: [
        `The registry gave no answer about known weaknesses (${reasonOf(answer)}), so nothing was looked up.`,
        'Run this again where it answers, before a release.'
      ],
      found: undefined
    }
  const names = Object.keys(known).sort()
  if (names.length === 0) return { lines: ['No weakness is known of the packages used at run time.'], found: 0 }
  return { lines: names.flatMap(name => wordsOf(name, known[name])), found: names.length }
}

function parsed(text) {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

function reasonOf(answer) {
  const words = answer?.message ?? answer?.error?.summary ?? answer?.error?.code ?? 'nothing that can be read'
  return String(words).replace(/ - .*$/s, '')
}

function wordsOf(name, { severity, range, via = [], fixAvailable }) {
  const titles = via.filter(one => typeof one === 'object').map(one => `  ${one.title} ${one.url}`)
  const through = via.filter(one => typeof one === 'string')
  return [
    `${name} ${range}: ${severity}`,
    ...titles,
    ...(through.length > 0 ? [`  through ${through.join(', ')}`] : []),
    fixAvailable ? '  A newer version mends it: npm update, then npm test.' : '  No version mends it yet.'
  ]
}
