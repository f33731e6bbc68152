import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PDFDocument, degrees } from 'pdf-lib'
import { expect, it } from 'vitest'
import { readAttachments } from '../../src/build/attachments.ts'
import type { Site } from '../../src/model/site.ts'

it('a page that its file turns is as wide as it is seen', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-attached-'))
  const file = 'scan.pdf'
  const scan = await PDFDocument.create()
  for (const turn of [0, 90, 180, 270]) scan.addPage([500, 300]).setRotation(degrees(turn))
  writeFileSync(join(folder, file), await scan.save())
  const closeout = { recordDrawings: [{ file }], tests: [], training: [], signOffs: [] }
  const found = await readAttachments({ closeout } as unknown as Site, { id: 'scan', folder, others: [file] } as never)
  expect(found.get(file)?.pages.map(({ wide }) => wide)).toEqual([true, false, true, false])
  rmSync(folder, { recursive: true })
})
