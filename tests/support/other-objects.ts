import { mkdirSync, writeFileSync } from 'node:fs'
import { PDFDocument, PDFRawStream, decodePDFRawStream } from 'pdf-lib'
import type { PDFObject } from 'pdf-lib'

/** Both prints are kept here, to be looked at: the tests' own folders are gone when they end. */
const KEPT = '.cache/other-prints'

/** Where two prints are not the same: the first objects, around the first sign that differs. A failure then says where to look. */
export async function otherObjects(one: Uint8Array, two: Uint8Array): Promise<string> {
  mkdirSync(KEPT, { recursive: true })
  for (const [name, print] of Object.entries({ one, two })) writeFileSync(`${KEPT}/${name}.pdf`, print)
  const [a, b] = await Promise.all([objectsOf(one), objectsOf(two)])
  const differ = [...new Set([...a.keys(), ...b.keys()])].filter(name => a.get(name) !== b.get(name))
  const told = differ.slice(0, 4).map(name => `${name}: ${apart(a.get(name) ?? '', b.get(name) ?? '')}`)
  return `${one.length} and ${two.length} bytes, ${a.size} and ${b.size} objects, ${differ.length} differ; ${told.join('; ')}; kept in ${KEPT}`
}

async function objectsOf(print: Uint8Array): Promise<Map<string, string>> {
  const { context } = await PDFDocument.load(print, { updateMetadata: false })
  return new Map(context.enumerateIndirectObjects().map(([name, object]) => [String(name), textOf(object)]))
}

/** A stream is read unpacked, where its packing is known. */
function textOf(object: PDFObject): string {
  if (!(object instanceof PDFRawStream)) return String(object)
  try {
    return `${withoutLength(object)} ${Buffer.from(decodePDFRawStream(object).decode()).toString('latin1')}`
  } catch {
    return `${String(object.dict)} ${Buffer.from(object.contents).toString('latin1')}`
  }
}

/** The length of what is packed says that the content differs, and would hide where. */
const withoutLength = ({ dict }: PDFRawStream): string => String(dict).replace(/\/Length \d+/u, '')

function apart(one: string, two: string): string {
  let at = 0
  while (at < one.length && one[at] === two[at]) at += 1
  const around = (text: string): string => JSON.stringify(text.slice(Math.max(0, at - 100), at + 120))
  return `at ${at}: ${around(one)} | ${around(two)}`
}
