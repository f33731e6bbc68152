const TYPES: Readonly<Record<string, string>> = {
  css: 'text/css; charset=utf-8',
  csv: 'text/csv; charset=utf-8',
  geojson: 'application/geo+json',
  gif: 'image/gif',
  html: 'text/html; charset=utf-8',
  ics: 'text/calendar; charset=utf-8',
  jpeg: 'image/jpeg',
  jpg: 'image/jpeg',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json',
  md: 'text/markdown; charset=utf-8',
  pdf: 'application/pdf',
  png: 'image/png',
  sarif: 'application/sarif+json',
  svg: 'image/svg+xml',
  txt: 'text/plain; charset=utf-8',
  webp: 'image/webp',
  woff2: 'font/woff2',
  zip: 'application/zip'
}

/** The media type of a file by its ending; bytes without a meaning where the ending is not known. */
export function mediaType(path: string): string {
  const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase()
  return TYPES[ending] ?? 'application/octet-stream'
}
