import { readFileSync, readdirSync } from 'node:fs'
import { join, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

export const PROJECT = fileURLToPath(new URL('../../', import.meta.url))

/** A source file as the house rules see it. Paths are from the project, with forward slashes. */
export interface Source {
  readonly path: string
  readonly lines: number
  /** Of its own sources as paths, of packages and of Node by name. */
  readonly imports: readonly { readonly to: string; readonly typeOnly: boolean; readonly line: number }[]
  /** What it takes from outside of its arguments: "Date.now", "new Date()", "process", "console", "fetch". */
  readonly effects: readonly { readonly name: string; readonly line: number }[]
  readonly hasClass: boolean
  readonly hasDefaultExport: boolean
  /** Chains of names that are called: "it.only", "describe.skip.each". */
  readonly calls: readonly { readonly name: string; readonly line: number }[]
}

export function readSources(folder: string): Source[] {
  return readdirSync(join(PROJECT, folder), { recursive: true, encoding: 'utf8' })
    .map(name => `${folder}/${name.split(sep).join('/')}`)
    .filter(path => /\.[mc]?ts$/u.test(path))
    .sort()
    .map(path => readSource(path, readFileSync(join(PROJECT, path), 'utf8')))
}

export function readSource(path: string, text: string): Source {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ESNext, true)
  const found = {
    imports: [] as { to: string; typeOnly: boolean; line: number }[],
    effects: [] as { name: string; line: number }[],
    calls: [] as { name: string; line: number }[],
    hasClass: false,
    hasDefaultExport: false
  }
  const lineOf = (node: ts.Node): number => file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1
  const visit = (node: ts.Node): void => {
    const line = lineOf(node)
    const link = importOf(node)
    if (link) found.imports.push({ to: resolved(path, link.to), typeOnly: link.typeOnly, line })
    const effect = effectOf(node)
    if (effect) found.effects.push({ name: effect, line })
    if (ts.isCallExpression(node)) found.calls.push({ name: node.expression.getText(file).replace(/\s+/gu, ''), line })
    if (ts.isClassLike(node)) found.hasClass = true
    if (isDefaultExport(node)) found.hasDefaultExport = true
    ts.forEachChild(node, visit)
  }
  visit(file)
  return { path, lines: text.trimEnd().split('\n').length, ...found }
}

function importOf(node: ts.Node): { to: string; typeOnly: boolean } | undefined {
  if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier))
    return { to: node.moduleSpecifier.text, typeOnly: node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier))
    return { to: node.moduleSpecifier.text, typeOnly: node.isTypeOnly }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal))
    return { to: node.argument.literal.text, typeOnly: true }
  if (!ts.isCallExpression(node) || node.expression.kind !== ts.SyntaxKind.ImportKeyword) return undefined
  const [target] = node.arguments
  return { to: target && ts.isStringLiteral(target) ? target.text : 'a computed name', typeOnly: false }
}

/** Objects of the platform that reach outside, and those of their members that do; `undefined` stands for all. */
const REACH: Readonly<Record<string, readonly string[] | undefined>> = {
  Date: ['now', 'UTC', 'parse'],
  Math: ['random'],
  Temporal: ['Now'],
  process: undefined,
  console: undefined,
  performance: undefined,
  crypto: undefined,
  Intl: undefined,
  fetch: undefined,
  XMLHttpRequest: undefined,
  WebSocket: undefined,
  EventSource: undefined,
  navigator: undefined,
  localStorage: undefined
}

const LOCALE = /^(?:toLocale\w*|localeCompare)$/u

/** Node's own source of chance, by its names; hashes come from the same module and are no chance. */
function chanceOf(node: ts.Node): string | undefined {
  if (!ts.isImportDeclaration(node) || !/^['"](?:node:)?crypto['"]$/u.test(node.moduleSpecifier.getText()))
    return undefined
  const bindings = node.importClause?.namedBindings
  if (!bindings || !ts.isNamedImports(bindings)) return 'crypto'
  const names = bindings.elements.map(({ propertyName, name }) => (propertyName ?? name).getText())
  return names.some(name => /^(?:random|getRandom|webcrypto|generate)/u.test(name)) ? 'crypto' : undefined
}

function effectOf(node: ts.Node): string | undefined {
  const chance = chanceOf(node)
  if (chance) return chance
  if (ts.isPropertyAccessExpression(node) && LOCALE.test(node.name.text)) return node.name.text
  if (!ts.isIdentifier(node) || !isFreeName(node)) return undefined
  const { parent, text } = node
  if (text === 'Date' && ts.isNewExpression(parent)) return parent.arguments?.length ? 'new Date(…)' : 'new Date()'
  if (text === 'Date' && ts.isCallExpression(parent) && parent.expression === node) return 'Date()'
  if (!Object.hasOwn(REACH, text)) return undefined
  const members = REACH[text]
  if (!members) return text
  const member = ts.isPropertyAccessExpression(parent) && parent.expression === node ? parent.name.text : undefined
  return member && members.includes(member) ? `${text}.${member}` : undefined
}

/** A name in use as a value, not one that is declared, a key, a member or a type. */
function isFreeName(node: ts.Identifier): boolean {
  const { parent } = node
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node
  if (ts.isBindingElement(parent)) return parent.initializer === node
  if (ts.isVariableDeclaration(parent) || ts.isParameter(parent)) return parent.initializer === node
  const names = [
    ts.isPropertySignature,
    ts.isPropertyDeclaration,
    ts.isMethodDeclaration,
    ts.isMethodSignature,
    ts.isFunctionDeclaration,
    ts.isFunctionExpression,
    ts.isClassDeclaration,
    ts.isInterfaceDeclaration,
    ts.isTypeAliasDeclaration,
    ts.isTypeReferenceNode,
    ts.isTypeQueryNode,
    ts.isQualifiedName,
    ts.isImportClause,
    ts.isNamespaceImport,
    ts.isImportSpecifier,
    ts.isExportSpecifier,
    ts.isNamedTupleMember,
    ts.isLiteralTypeNode,
    ts.isExpressionWithTypeArguments
  ]
  return !names.some(is => is(parent))
}

function isDefaultExport(node: ts.Node): boolean {
  if (ts.isExportAssignment(node)) return !node.isExportEquals
  if (!ts.canHaveModifiers(node)) return false
  return ts.getModifiers(node)?.some(modifier => modifier.kind === ts.SyntaxKind.DefaultKeyword) === true
}

/** "./a.ts" seen from "src/load/x.ts" is "src/load/a.ts". */
function resolved(from: string, to: string): string {
  if (!to.startsWith('.')) return to
  return new URL(to, `file:///${from}`).pathname.slice(1)
}
