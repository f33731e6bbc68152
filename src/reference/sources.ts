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
  'iec-60086-2': {
    title: 'IEC 60086-2 and ANSI C18.1M, primary batteries',
    part: 'sizes and typical capacities',
    standing: 'read in a copy'
  },
  'cell-specification': { title: 'Published specification of the cell, generic LR6 and LR20', standing: 'published' },
  'discharge-tests': {
    title: 'Discharge tests of retail 9 V batteries',
    part: 'capacity at 100 mA, 500 mA and 1 A',
    year: '2024',
    standing: 'published'
  },
  'scte-77': {
    title: 'ANSI/SCTE 77, underground enclosures',
    part: 'tiers of design and test load',
    standing: 'read in a copy'
  },
  'en-124': {
    title: 'EN 124-1, gully tops and manhole tops',
    part: 'classes A15 to F900 by place of installation',
    year: '2015',
    standing: 'read in a copy'
  },
  'aashto-h20': { title: 'AASHTO H-20 wheel load', part: '16,000 lb', standing: 'read in a copy' },
  'iec-60529': {
    title: 'IEC 60529, degrees of protection by enclosures (IP code)',
    part: 'clause 6, second numeral',
    standing: 'read in a copy'
  },
  'nema-250': { title: 'NEMA 250, enclosures', part: 'types 3R, 4, 4X, 6 and 6P', standing: 'read in a copy' },
  'osha-1926-651': {
    title: '29 CFR 1926.651, excavations, specific requirements',
    part: '(c)(2), (g)(1), (j)(2)',
    standing: 'read in a copy'
  },
  'osha-1926-652': {
    title: '29 CFR 1926.652, requirements for protective systems',
    part: '(a)(1)',
    standing: 'read in a copy'
  },
  'upc-603-4-2': {
    title: 'Uniform Plumbing Code',
    part: '603.4.2, test at installation, repair or relocation and every year',
    standing: 'read in a copy'
  },
  'iso-18004': {
    title: 'ISO/IEC 18004, QR code symbology',
    part: 'symbol size, capacity and quiet zone',
    standing: 'read in a copy'
  },
  calendar: {
    title: 'The Gregorian calendar',
    part: 'a month later is clamped to the month’s end',
    standing: 'project rule'
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
  'from-memory': { title: 'From memory', standing: 'from memory' },
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
