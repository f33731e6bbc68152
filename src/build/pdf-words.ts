import type { TextItem } from 'pdfjs-dist/types/src/display/api.js'

/** What a PDF shows and what it says of itself, read by another program than those that write them. */
export async function pdfWords(bytes: Uint8Array): Promise<string> {
  // Slow to read in, and few public folders hold a PDF.
  const { getDocument, VerbosityLevel } = await import('pdfjs-dist/legacy/build/pdf.mjs')
  const task = getDocument({
    data: new Uint8Array(bytes),
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
    disableFontFace: true
  })
  try {
    const document = await task.promise
    const { info, metadata } = await document.getMetadata()
    const texts = [JSON.stringify(info), metadata?.getRaw() ?? '']
    for (let number = 1; number <= document.numPages; number += 1) {
      const page = await document.getPage(number)
      const { items } = await page.getTextContent()
      const words = items.filter((item): item is TextItem => 'str' in item)
      const notes = (await page.getAnnotations()) as { contentsObj?: { str?: string }; url?: string }[]
      texts.push(words.map(one => `${one.str}${one.hasEOL ? '\n' : ''}`).join(''), words.map(one => one.str).join(' '))
      texts.push(...notes.flatMap(one => [one.contentsObj?.str ?? '', one.url ?? '']))
    }
    return texts.join('\n')
  } finally {
    await task.destroy()
  }
}
