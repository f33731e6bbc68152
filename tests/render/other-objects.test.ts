import { PDFDocument } from 'pdf-lib'
import { expect, it } from 'vitest'
import { otherObjects } from '../support/other-objects.ts'

async function printed(words: string): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false })
  const page = document.addPage([200, 200])
  page.drawText(words)
  return document.save({ useObjectStreams: false })
}

it('two prints that differ in one word differ in its object, at that word', async () => {
  const told = await otherObjects(await printed('VB1 north'), await printed('VB1 south'))
  expect(told).toMatch(/objects, 1 differ; \d+ 0 R: at \d+: /u)
  // "no" and "so": the texts are written as hexadecimal figures.
  expect(told).toContain('564231206E')
  expect(told).toContain('5642312073')
})
