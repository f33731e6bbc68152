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
  'nec-110-14': {
    title: 'NFPA 70, National Electrical Code',
    part: '110.14(B), splices for direct burial, edition named from memory',
    year: '2023',
    standing: 'read in a copy'
  },
  'nec-300-5': {
    title: 'NFPA 70, National Electrical Code',
    part: 'table 300.5(A), minimum cover, edition named from memory',
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
    year: '1989',
    standing: 'read in a copy'
  },
  'osha-1926-652': {
    title: '29 CFR 1926.652, requirements for protective systems',
    part: '(a)(1)',
    year: '1989',
    standing: 'read in a copy'
  },
  'upc-603-4-2': {
    title: 'Uniform Plumbing Code',
    part: '603.4.2, test at installation, repair or relocation and every year',
    year: 'edition as adopted locally',
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
  'euclid-1-47': { title: 'Euclid, Elements', part: 'book I, 47, the right triangle', standing: 'published' },
  'snyder-1395': {
    title: 'J. P. Snyder, Map Projections: A Working Manual, USGS Professional Paper 1395',
    part: 'equations 4-18 and 4-20, radii of curvature',
    year: '1987',
    standing: 'from memory'
  },
  'rfc-7946': {
    title: 'IETF RFC 7946, The GeoJSON Format, 2016',
    part: 'positions, geometries and the reference system',
    standing: 'published'
  },
  wgs84: {
    title: 'NGA.STND.0036, World Geodetic System 1984',
    part: 'long axis and flattening of the ellipsoid',
    standing: 'from memory'
  },
  'mwelo-492-9': {
    title: 'California Code of Regulations, title 23, model water efficient landscape ordinance',
    part: '492.9 and 492.12, certificate of completion and audit',
    year: '2015',
    standing: 'read in a copy'
  },
  'wsu-32-80': {
    title: 'Washington State University design standards 32 80 00, irrigation',
    part: 'spare heads of each model, 10 percent',
    year: '2017',
    standing: 'read in a copy'
  },
  'ufgs-closeout': {
    title: 'Unified Facilities Guide Specification, Closeout Submittals',
    part: '1.3, warranty management',
    standing: 'read in a copy'
  },
  'cottage-grove-8-1-9': {
    title: 'City of Cottage Grove, Minnesota, city code 8-1-9',
    part: 'watering on odd and even dates, the 31st left out',
    standing: 'read in a copy'
  },
  'universal-city-stage-1': {
    title: 'City of Universal City, Texas, watering schedule of stage 1',
    part: 'days by the last digit of the address; no street address',
    year: '2020',
    standing: 'read in a copy'
  },
  'ifas-ae220': {
    title: 'UF/IFAS Extension publication AE220',
    part: 'watering days of a controller, zones one at a time',
    standing: 'published'
  },
  'volume-over-area': { title: 'Volume of water divided by area', standing: 'published' },
  'fao-56': {
    title: 'Allen, Pereira, Raes, Smith, FAO Irrigation and Drainage Paper 56, crop evapotranspiration',
    year: '1998',
    standing: 'read in a copy'
  },
  'liu-jordan': {
    title:
      'Liu and Jordan, Solar Energy 4, direct, diffuse and total solar radiation; monthly form of Klein, Solar Energy 19, 1977',
    year: '1960',
    standing: 'read in a copy'
  },
  'erbs-1982': {
    title: 'Erbs, Klein and Duffie, Solar Energy 28, diffuse fraction of monthly radiation',
    year: '1982',
    standing: 'read in a copy'
  },
  'hargreaves-samani': {
    title: 'Hargreaves and Samani, reference crop evapotranspiration from temperature',
    year: '1985',
    standing: 'from memory'
  },
  'cimis-zones': {
    title: 'California Department of Water Resources, CIMIS, map of reference evapotranspiration zones',
    part: 'zones 1 to 18',
    year: '1999',
    standing: 'read in a copy'
  },
  'neh-623': {
    title: 'USDA National Engineering Handbook, part 623, irrigation water requirements',
    part: 'chapter 2, equations 2-84 and 2-85',
    year: '1993',
    standing: 'read in a copy'
  },
  'fao-46': {
    title: 'FAO Irrigation and Drainage Paper 46',
    part: 'effective rainfall by the USDA method',
    year: '1992',
    standing: 'read in a copy'
  },
  'fao-manual-3': {
    title: 'FAO Irrigation Water Management, training manual 3',
    part: 'chapter 3, effective rainfall',
    year: '1986',
    standing: 'from memory'
  },
  'texas-et': {
    title: 'Texas A&M University, Texas evapotranspiration network',
    part: 'effective rainfall',
    year: 'undated',
    standing: 'published'
  },
  'ca-effective-rain': {
    title: 'City of Vacaville, California, city code 14.27',
    part: 'effective precipitation, 25 percent of the annual',
    year: 'undated',
    standing: 'published'
  },
  'wucols-guide': {
    title:
      'University of California Cooperative Extension and Department of Water Resources, Guide to Estimating Irrigation Water Needs of Landscape Plantings',
    part: 'landscape coefficient method',
    year: '2000',
    standing: 'published'
  },
  'wucols-classes': {
    title: 'University of California, Water Use Classification of Landscape Species',
    part: 'classes of water use',
    year: '2000',
    standing: 'read in a copy'
  },
  'asabe-s623': {
    title: 'ANSI/ASABE S623.1, determining landscape plant water demands',
    part: 'plant factors',
    year: '2017',
    standing: 'read in a copy'
  },
  'ia-scheduling': {
    title: 'Irrigation Association, Landscape Irrigation Scheduling and Water Management',
    part: 'scheduling multiplier, soil intake, allowable surface accumulation',
    year: '2005',
    standing: 'from memory'
  },
  'low-quarter': {
    title: 'Merriam and Keller, Farm Irrigation System Evaluation',
    part: 'low-quarter distribution uniformity',
    year: '1978',
    standing: 'from memory'
  },
  christiansen: {
    title: 'Christiansen, Irrigation by Sprinkling',
    part: 'uniformity coefficient',
    year: '1942',
    standing: 'from memory'
  },
  'uc-davis-soil': {
    title: 'University of California, Davis, drought management',
    part: 'soil characteristics, available water',
    year: 'undated',
    standing: 'published'
  },
  'ucanr-trials': {
    title: 'University of California, landscape plant irrigation trials',
    part: 'irrigation treatments',
    year: 'undated',
    standing: 'published'
  },
  'wsu-monthly': {
    title: 'Washington State University Extension, monthly sprinkler runtime adjustment',
    part: 'Colville',
    year: 'undated',
    standing: 'published'
  },
  'ca-title-23-492-10': {
    title: 'California Code of Regulations, title 23, model water efficient landscape ordinance',
    part: '492.10, schedules for the establishment period, the established landscape and temporarily irrigated areas',
    year: '2015',
    standing: 'read in a copy'
  },
  'ca-title-23-490': {
    title: 'California Code of Regulations, title 23, model water efficient landscape ordinance',
    part: 'sections 490 to 495',
    year: '2015',
    standing: 'read in a copy'
  },
  'epa-water-budget': {
    title: 'US EPA, WaterSense water budget',
    part: '70 percent evapotranspiration adjustment of the peak month',
    year: '2009',
    standing: 'published'
  },
  'hazen-williams': {
    title: 'Hazen and Williams, Hydraulic Tables',
    part: 'US form with the exponents 1.852 and 4.8655',
    standing: 'read in a copy'
  },
  'meter-rules': {
    title: 'Rules of the trade for a water meter',
    part: '75 % of its safe maximum, velocity in the service line, loss up to a tenth of the static pressure',
    standing: 'from memory'
  },
  'awwa-c700': {
    title: 'AWWA C700, cold-water meters, displacement type',
    part: 'safe maximum flow by size',
    standing: 'from memory'
  },
  'tac-344-62': {
    title: 'Texas Administrative Code, title 30, chapter 344, landscape irrigation',
    part: '344.62, 7 ft/s in metal pipe',
    standing: 'from memory'
  },
  'osu-912': { title: 'OSU Bulletin 912', part: 'step 8, velocity in pipes', year: 'undated', standing: 'published' },
  'ansi-z535-6': {
    title: 'ANSI Z535.6, safety information in product manuals',
    part: 'signal words',
    year: '2011',
    standing: 'read in a copy'
  },
  'mutcd-part-6': {
    title: 'Manual on Uniform Traffic Control Devices, 11th edition',
    part: 'part 6, temporary traffic control',
    year: '2023',
    standing: 'read in a copy'
  },
  'cfr-23-634': { title: '23 CFR 634, worker visibility', year: '2008', standing: 'read in a copy' },
  'ansi-107': { title: 'ANSI/ISEA 107, high-visibility safety apparel', year: '2020', standing: 'from memory' },
  'gb-street-works': {
    title: 'Safety at Street Works and Road Works, code of practice for Great Britain',
    year: '2013',
    standing: 'published'
  },
  'en-iso-20471': { title: 'EN ISO 20471, high-visibility clothing', year: '2013', standing: 'from memory' },
  'as-1742-3': {
    title: 'AS 1742.3, traffic control for works on roads',
    year: '2019',
    standing: 'from memory'
  },
  'nz-gttm': {
    title: 'New Zealand Guide to Temporary Traffic Management',
    year: '2023',
    standing: 'from memory'
  },
  'nfpa-70e': {
    title: 'NFPA 70E, electrical safety in the workplace',
    part: 'article 120',
    year: '2024',
    standing: 'from memory'
  },
  'osha-1910-333': {
    title: '29 CFR 1910.333, electrical work practices',
    part: '(a)(1) and (b)',
    year: '1990',
    standing: 'from memory'
  },
  'gb-electricity-at-work': {
    title: 'Electricity at Work Regulations, Great Britain',
    part: 'regulations 13 and 14',
    year: '1989',
    standing: 'from memory'
  },
  'en-50110': { title: 'EN 50110-1, operation of electrical installations', year: '2013', standing: 'from memory' },
  'as-nzs-4836': {
    title: 'AS/NZS 4836, safe working on or near low-voltage installations',
    year: '2023',
    standing: 'from memory'
  },
  'us-811': {
    title: '811, the one-call number, under the dig law of each state',
    year: 'as each state has it',
    standing: 'published'
  },
  'osha-1926-651-b': {
    title: '29 CFR 1926.651, excavations, specific requirements',
    part: '(b), underground installations',
    year: '1989',
    standing: 'read in a copy'
  },
  'hse-hsg47': {
    title: 'HSG47, avoiding danger from underground services, third edition, Great Britain',
    year: '2014',
    standing: 'read in a copy'
  },
  'au-excavation-cop': {
    title: 'Model code of practice, excavation work, Australia',
    year: '2018',
    standing: 'from memory'
  },
  'nz-excavation': {
    title: 'Excavation safety, good practice guidelines, New Zealand',
    year: '2016',
    standing: 'from memory'
  },
  'gb-cdm': {
    title: 'Construction (Design and Management) Regulations, Great Britain',
    part: 'regulation 22, excavations',
    year: '2015',
    standing: 'from memory'
  },
  'eu-92-57': {
    title: 'Directive 92/57/EEC, temporary or mobile construction sites',
    part: 'annex IV',
    year: '1992',
    standing: 'from memory'
  },
  'osha-1910-146': {
    title: '29 CFR 1910.146, permit-required confined spaces',
    year: '2006',
    standing: 'read in a copy'
  },
  'osha-1926-aa': {
    title: '29 CFR 1926 subpart AA, confined spaces in construction',
    year: '2015',
    standing: 'from memory'
  },
  'hse-l101': {
    title: 'Confined Spaces Regulations 1997 with L101, safe work in confined spaces, third edition, Great Britain',
    year: '2014',
    standing: 'read in a copy'
  },
  'as-2865': { title: 'AS 2865, confined spaces', year: '2009', standing: 'from memory' },
  'osha-1910-28': {
    title: '29 CFR 1910.28, duty to have fall protection',
    part: '(b)(1) and (b)(13), low-slope roofs',
    year: '2016',
    standing: 'read in a copy'
  },
  'osha-1910-29': {
    title: '29 CFR 1910.29, fall protection systems',
    part: '(b)(1), height of a guardrail, 42 in plus or minus 3 in',
    year: '2016',
    standing: 'read in a copy'
  },
  'osha-1926-501': {
    title: '29 CFR 1926.501, duty to have fall protection in construction',
    part: '(b)(1)',
    year: '1994',
    standing: 'read in a copy'
  },
  'gb-work-at-height': { title: 'Work at Height Regulations, Great Britain', year: '2005', standing: 'read in a copy' },
  'eu-2009-104': {
    title: 'Directive 2009/104/EC, use of work equipment',
    part: 'annexes I and II',
    year: '2009',
    standing: 'from memory'
  },
  'au-falls-cop': {
    title: 'Model code of practice, managing the risk of falls at workplaces, Australia',
    year: '2018',
    standing: 'read in a copy'
  },
  'nz-heights': { title: 'Working at height, practice guidelines, New Zealand', year: '2012', standing: 'from memory' },
  'wac-16-201-220': {
    title: 'Washington Administrative Code 16-201-220, chemigation',
    part: 'test of the backflow assembly',
    year: 'undated',
    standing: 'published'
  },
  'cfr-40-170': { title: '40 CFR 170, worker protection standard', year: '2015', standing: 'from memory' },
  'gb-water-fittings': {
    title: 'Water Supply (Water Fittings) Regulations, England and Wales',
    part: 'schedule 1, fluid categories',
    year: '1999',
    standing: 'read in a copy'
  },
  'gb-coshh': {
    title: 'Control of Substances Hazardous to Health Regulations, Great Britain',
    year: '2002',
    standing: 'from memory'
  },
  'en-1717': {
    title: 'EN 1717, protection of potable water against pollution',
    year: '2000',
    standing: 'from memory'
  },
  'as-nzs-3500-1': {
    title: 'AS/NZS 3500.1, water services',
    part: 'section 4, hazard ratings',
    year: '2018',
    standing: 'read in a copy'
  },
  'upc-608-2': {
    title: 'Uniform Plumbing Code',
    part: '608.2, static pressure over 80 psi',
    year: '2015',
    standing: 'read in a copy'
  },
  'tdi-lightning': { title: 'Texas Department of Insurance, lightning safety', year: 'undated', standing: 'published' },
  'osha-heat': {
    title: 'OSHA, preventing heat illness at work',
    part: 'water, rest, shade, the 20 percent rule',
    year: 'undated',
    standing: 'read in a copy'
  },
  'ca-title-22': {
    title: 'California Code of Regulations, title 22',
    part: '60310, use area requirements',
    year: 'undated',
    standing: 'published'
  },
  'ma-314-cmr-20': { title: '314 CMR 20.04, reclaimed water, Massachusetts', year: '2024', standing: 'read in a copy' },
  'austin-reclaimed-signs': {
    title: 'City of Austin, standard signs for reclaimed water service',
    year: 'undated',
    standing: 'published'
  },
  'bs-en-16941-2': {
    title: 'BS EN 16941-2, on-site non-potable water systems, treated greywater',
    year: '2021',
    standing: 'from memory'
  },
  'eu-2020-741': {
    title: 'Regulation (EU) 2020/741, minimum requirements for water reuse',
    year: '2020',
    standing: 'from memory'
  },
  'au-water-recycling': { title: 'Australian Guidelines for Water Recycling', year: '2006', standing: 'from memory' },
  'osha-1910-147': {
    title: '29 CFR 1910.147, control of hazardous energy',
    year: '1989',
    standing: 'from memory'
  },
  'gb-puwer': {
    title: 'Provision and Use of Work Equipment Regulations, Great Britain',
    part: 'regulation 19, isolation from sources of energy',
    year: '1998',
    standing: 'from memory'
  },
  'au-plant-cop': {
    title: 'Model code of practice, managing the risks of plant in the workplace, Australia',
    year: '2018',
    standing: 'from memory'
  },
  'niosh-outdoor': {
    title: 'NIOSH, hazards to outdoor workers, venomous spiders, insects and snakes',
    year: '2008',
    standing: 'read in a copy'
  },
  'gb-manual-handling': {
    title: 'Manual Handling Operations Regulations, Great Britain',
    year: '1992',
    standing: 'from memory'
  },
  'eu-90-269': { title: 'Directive 90/269/EEC, manual handling of loads', year: '1990', standing: 'from memory' },
  'au-manual-tasks-cop': {
    title: 'Model code of practice, hazardous manual tasks, Australia',
    year: '2018',
    standing: 'from memory'
  },
  'iec-60086-5': {
    title: 'IEC 60086-5, safety of primary batteries with aqueous electrolyte',
    year: '2021',
    standing: 'from memory'
  },
  'iec-60086-4': { title: 'IEC 60086-4, safety of lithium batteries', year: '2019', standing: 'from memory' },
  'epa-household-batteries': { title: 'US EPA, used household batteries', year: 'undated', standing: 'read in a copy' },
  'ca-dtsc-batteries': {
    title: 'California Department of Toxic Substances Control, discarded battery management',
    year: '2016',
    standing: 'published'
  },
  'eu-2023-1542': { title: 'Regulation (EU) 2023/1542, batteries', year: '2023', standing: 'read in a copy' },
  'gb-waste-batteries': {
    title: 'Waste Batteries and Accumulators Regulations, United Kingdom',
    year: '2009',
    standing: 'published'
  },
  'bs-7671': {
    title: 'BS 7671, requirements for electrical installations',
    part: '522.8.10, buried cables',
    year: '2018',
    standing: 'read in a copy'
  },
  'hd-60364-5-52': {
    title: 'HD 60364-5-52, wiring systems, as the national wiring rules adopt it',
    year: '2011',
    standing: 'from memory'
  },
  'as-nzs-3000': { title: 'AS/NZS 3000, wiring rules', year: '2018', standing: 'from memory' },
  'lajara-2011': {
    title: 'Lajara, Alberola and Pelegri-Sebastia, solar powered wireless actuator node for irrigation',
    part: 'Sensors 11(1), 329-340',
    year: '2011',
    standing: 'published'
  },
  'umd-solenoid': {
    title: 'University of Maryland, greenhouse and nursery course text',
    part: '3.4, how a 24 V AC valve is held open',
    year: 'undated',
    standing: 'published'
  },
  'iso-8601': { title: 'ISO 8601-1, dates and times', part: 'calendar date', year: '2019', standing: 'from memory' },
  'yaml-1-2': { title: 'YAML, version 1.2.2', year: '2021', standing: 'from memory' },
  'common-practice': { title: 'Common practice', standing: 'common practice, no source' },
  'from-memory': { title: 'From memory', standing: 'from memory' },
  'project-rule': { title: 'Rule of this project', standing: 'project rule' }
} as const satisfies Record<string, Source>

export type SourceId = keyof typeof SOURCES

/** "IEC 60228, conductors of insulated cables, maximum resistance at 20 °C, 2004 (read in a copy)". */
export function citeSource(id: SourceId): string {
  const { title, part, year, standing }: Source = SOURCES[id]
  if (standing === 'common practice, no source') return standing
  if (id === 'project-rule') return 'rule of this project'
  if (id === 'from-memory') return 'from memory'
  const words = [title, part, year].filter(Boolean).join(', ')
  return standing === 'published' ? words : `${words} (${standing})`
}
