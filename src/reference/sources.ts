/**
 * The register of sources. `standing` says how far the words of the source were seen: a reader may trust a published table more
 * than a figure that stands here from memory, so the difference is printed wherever the source is.
 */
export type Standing = 'published' | 'read in a copy' | 'common practice, no source' | 'from memory' | 'project rule'

export interface Source {
  readonly title: string
  readonly part?: string
  readonly year?: string
  readonly standing: Standing
}

export const SOURCES = {
  'astm-b258': {
    title: 'ASTM B258, standard nominal diameters of American wire gauge sizes',
    part: 'formula',
    standing: 'read in a copy'
  },
  'nbs-100': {
    title: 'NBS Handbook 100, Copper Wire Tables',
    part: '100 % IACS copper: 1/58 Ω·mm²/m at 20 °C, 0.00393 per °C',
    year: '1966',
    standing: 'read in a copy'
  },
  'iec-60228': {
    title: 'IEC 60228, conductors of insulated cables',
    part: 'maximum resistance at 20 °C',
    year: '2004',
    standing: 'read in a copy'
  },
  'nec-ch9-t8': {
    title: 'NFPA 70, National Electrical Code',
    part: 'chapter 9, table 8, direct current at 75 °C',
    standing: 'read in a copy'
  },
  'nec-300-5': {
    title: 'NFPA 70, National Electrical Code',
    part: 'table 300.5(A), minimum cover',
    year: '2023',
    standing: 'read in a copy'
  },
  'ohms-law': { title: "Ohm's law and the voltage divider", standing: 'published' },
  'product-sheet': { title: 'Product sheet as submitted for the site', standing: 'published' },
  'site-record': { title: 'The site file', standing: 'published' },
  'nc-record-drawing': {
    title: 'North Carolina Administrative Code, title 21, chapter 23, Irrigation Record Drawing',
    part: '.0301',
    year: '2016',
    standing: 'published'
  },
  'ufgs-closeout': {
    title: 'Unified Facilities Guide Specification, Closeout Submittals',
    part: '1.3, warranty management',
    standing: 'read in a copy'
  },
  'common-practice': { title: 'Common practice', standing: 'common practice, no source' },
  'project-rule': { title: 'Rule of this project', standing: 'project rule' }
} as const satisfies Record<string, Source>

export type SourceId = keyof typeof SOURCES

/** "IEC 60228, conductors of insulated cables, maximum resistance at 20 °C, 2004 (read in a copy)". */
export function citeSource(id: SourceId): string {
  const { title, part, year, standing }: Source = SOURCES[id]
  const words = [title, part, year].filter(Boolean).join(', ')
  return standing === 'published'
    ? words
    : standing === 'common practice, no source'
      ? 'common practice, no source'
      : `${words} (${standing})`
}
