/** Read in for what it does, which is to be there when the reader asks for it. */
declare module 'pdfjs-dist/legacy/build/pdf.worker.mjs'
