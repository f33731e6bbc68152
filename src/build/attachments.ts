import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { PDFPage } from 'pdf-lib'
import { ATTACHMENTS, attachmentFiles } from '../binder/attachments.ts'
import type { AttachedFile } from '../binder/attachments.ts'
import type { Fault, LoadedSite } from '../load/loaded.ts'
import type { Site } from '../model/site.ts'
import type { OutputFile } from './output-stage.ts'
import { isPdfAt, isPictureAt } from './picture-kind.ts'
import { readyPicture } from './picture.ts'
import type { SiteSources } from './read-fleet.ts'

/**
 * Files that the closeout names and that are not beside the site file, or cannot be bound in. `isReadable` looks into a file by its path.
 */
export function attachmentFaults(
  loaded: LoadedSite,
  { closeout }: Site,
  { folder, others }: SiteSources,
  isReadable: (path: string) => boolean = isReadableAt
): Fault[] {
  if (!closeout) return []
  const { recordDrawings, tests, training, signOffs } = closeout
  return [...recordDrawings, ...tests, ...training, ...signOffs].flatMap(({ file, at }) => {
    if (file === undefined) return []
    const fault = (code: string): Fault[] => [
      {
        code,
        subject: file,
        place: loaded.locate({ file: at.file, path: [...at.path, 'file'] }),
        details: { file, folder },
        fatal: false
      }
    ]
    if (!others.includes(file)) return fault('closeout/attachment-not-there')
    return isReadable(join(folder, file)) ? [] : fault('closeout/attachment-not-readable')
  })
}

/** By its first bytes: a check of many sites reads no more. */
const isReadableAt = (path: string): boolean => (/\.pdf$/iu.test(path) ? isPdfAt(path) : isPictureAt(path))

/** What is bound in, by name; a file that cannot be read is left out, and the binder says so at its place. */
export async function readAttachments(site: Site, sources: SiteSources): Promise<ReadonlyMap<string, AttachedFile>> {
  const there = attachmentFiles(site).filter(file => sources.others.includes(file))
  const read = await Promise.all(there.map(async file => [file, await attached(join(sources.folder, file))] as const))
  return new Map(read.flatMap(([file, found]) => (found ? [[file, found]] : [])))
}

async function attached(path: string): Promise<AttachedFile | undefined> {
  if (!/\.pdf$/iu.test(path)) return { picture: true, pages: [{ wide: false }] }
  // Read in only where a site has a PDF to bind in.
  const { PDFDocument } = await import('pdf-lib')
  try {
    const document = await PDFDocument.load(readFileSync(path), { updateMetadata: false })
    return { picture: false, pages: document.getPages().map(page => ({ wide: isWide(page) })) }
  } catch {
    return undefined
  }
}

/** As it is seen: a scan is often turned by a word in its file. ISO 32000-1:2008, 7.7.3.3. */
function isWide(page: PDFPage): boolean {
  const lying = page.getWidth() > page.getHeight()
  return page.getRotation().angle % 180 === 0 ? lying : !lying
}

/** Copies beside the office pages. */
export async function attachmentOutputs(site: Site, { folder, others }: SiteSources): Promise<OutputFile[]> {
  const there = attachmentFiles(site).filter(file => others.includes(file))
  return Promise.all(
    there.map(async file => ({
      path: `office/${site.id}/${ATTACHMENTS}/${file}`,
      content: await readyFile(readFileSync(join(folder, file)), file)
    }))
  )
}

const readyFile = (bytes: Uint8Array, file: string): Promise<Uint8Array> | Uint8Array =>
  /\.pdf$/iu.test(file) ? bytes : readyPicture(bytes, file)
