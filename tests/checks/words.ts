/** British spellings, as the start of a word; the letters after it do not matter. */
const BRITISH = [
  ...[
    'colour',
    'centre',
    'metre',
    'litre',
    'labour',
    'licence',
    'kerb',
    'grey',
    'programme(?!d)',
    'neighbour',
    'behaviour'
  ],
  ...['catalogue', 'cancelled', 'labelled', 'travell', 'fibre', 'organis', 'recognis', 'judgement', 'favour', 'plough'],
  ...['millimetre', 'kilometre', 'practise', 'whilst', 'tyre', 'mould', 'aluminium', 'draught', 'storey']
]

/** What is wrong with the words of a sentence that a person reads; empty where nothing is. */
export function wordFaults(text: string): string[] {
  const faults: string[] = []
  const say = (is: boolean, what: string) => {
    if (is) faults.push(`${what}: ${JSON.stringify(text)}`)
  }
  say(text.trim() === '' || text !== text.trim(), 'empty, or with spaces around it')
  say(!endsAsItShould(text), 'does not end with a period')
  say(/\berror:|\binvalid\b|\bplease\b|!/iu.test(text), 'holds a word that is never said')
  say(/undefined|\bNaN\b|Infinity|\[object|\bnull\b/u.test(text), 'prints a value that is none')
  say(/ {2}| [,.;]|\(\)|""|\.\.(?!\.)/u.test(text), 'has a hole')
  say(/\b\d{1,2}\/\d{1,2}\/\d{2,4}\b/u.test(text), 'writes a date otherwise than YYYY-MM-DD')
  say(/(?<![\d.])\d+\.\d{5,}/u.test(text), 'prints more digits than anybody reads')
  const british = BRITISH.find(word => new RegExp(`\\b${word}`, 'iu').test(withoutKeys(text)))
  say(british !== undefined, `is not spelled the US way, "${british}"`)
  return faults
}

/** A command, and a line to write, stand as they are typed. */
function endsAsItShould(text: string): boolean {
  return text.endsWith('.') || /: npx underlid \S.*$/u.test(text)
}

/** Keys of a site file are names; the loader answers for their spelling. */
function withoutKeys(text: string): string {
  return text.replace(/\b[a-z-]+:(?= )/gu, '')
}
