import ts from 'typescript'

export type Say = (...values: never[]) => unknown

/** A text or a function of a catalogue, under its key: "binder.cover.open", "strips.weekdays.0". */
export type Leaf = readonly [key: string, value: string | Say]

/** Everything that a catalogue says, in the order of its keys. */
export function leavesOf(value: unknown, key = ''): Leaf[] {
  if (typeof value === 'string' || typeof value === 'function') return [[key, value as string | Say]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, inner]) => leavesOf(inner, key === '' ? name : `${key}.${name}`))
}

/** "text", or "function of 2": what another language must have in its place. */
export const shapeOf = (value: string | Say): string =>
  typeof value === 'string' ? 'text' : `function of ${value.length}`

interface Parts {
  /** Whether each argument is used, by its place. */
  readonly used: readonly boolean[]
  /** Its texts without what is filled in, joined. */
  readonly text: string
}

/** What a function of a catalogue says and which of its arguments it uses, read from its source. */
export function partsOf(say: Say): Parts {
  const file = ts.createSourceFile('words.js', `(${asExpression(say.toString())})`, ts.ScriptTarget.ES2023, true)
  const texts: string[] = []
  const names: string[] = []
  const look = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) names.push(node.text)
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) texts.push(node.text)
    if (ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)) texts.push(node.text)
    ts.forEachChild(node, look)
  }
  const outer = outermost(file)
  if (!outer?.body) throw new Error('A function of a catalogue has no body.')
  look(outer.body)
  return { used: outer.parameters.map(one => names.includes(one.name.getText())), text: texts.join(' ') }
}

/** A method is written without the word. */
function asExpression(source: string): string {
  return /^(?:function|\(|[\w$]+\s*=>)/u.test(source) ? source : `function ${source}`
}

function outermost(node: ts.Node): ts.FunctionExpression | ts.ArrowFunction | undefined {
  if (ts.isFunctionExpression(node) || ts.isArrowFunction(node)) return node
  return ts.forEachChild(node, outermost)
}

export const saidBy = (value: string | Say): string => (typeof value === 'string' ? value : partsOf(value).text)
