import { z } from 'zod'
import { KEY_DOCS } from './schema/field.ts'
import { site } from './schema/site.ts'
import { visit } from './schema/visit.ts'
import { productSheet } from './schema/product-sheet.ts'

export type JsonSchema = Readonly<Record<string, unknown>>

/** JSON Schema (draft 7, which editors know) of a site file's keys, made from the schemas that read it. */
export function siteJsonSchema(): JsonSchema {
  return jsonSchemaOf(site, 'Site file')
}

export function visitJsonSchema(): JsonSchema {
  return jsonSchemaOf(visit, 'Visit')
}

export function productSheetJsonSchema(): JsonSchema {
  return jsonSchemaOf(productSheet, 'Product sheet')
}

function jsonSchemaOf(schema: z.ZodType, title: string): JsonSchema {
  const made = z.toJSONSchema(schema, {
    target: 'draft-7',
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      const doc = KEY_DOCS.get(zodSchema as unknown as z.ZodType)
      if (!doc) return
      Object.assign(jsonSchema, doc.json, { description: doc.does })
      if (doc.json) jsonSchema.examples = [exampleValue(doc.example, doc.json['type'])]
    }
  })
  return { ...made, title }
}

/** Examples are written as they stand in a file; here they are values. */
function exampleValue(example: string, type: unknown): string | number {
  return type === 'number' || type === 'integer' ? Number(example) : example.replace(/^"(.*)"$/u, '$1')
}
