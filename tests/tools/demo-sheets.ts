import { execFileSync } from 'node:child_process'
import { rmSync, writeFileSync } from 'node:fs'
import { PDFDocument, StandardFonts, rgb } from 'pdf-lib'
import type { PDFFont, PDFPage } from 'pdf-lib'

/** Draws the attachments of the demo site harbour-steps: plain lines, invented names. Run: npx tsx tests/tools/demo-sheets.ts */
const FOLDER = 'sites/harbour-steps'
const INK = rgb(0, 0, 0)
const SIZE = { portrait: [612, 792], landscape: [792, 612] } as const

interface Pen {
  readonly page: PDFPage
  readonly font: PDFFont
  readonly bold: PDFFont
}

interface Report {
  readonly file: string
  readonly title: string
  readonly facts: readonly (readonly [string, string])[]
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
  readonly signed: readonly string[]
}

const SITE: readonly [string, string] = ['Site', 'Harbour Steps Terraces, Port Sable']
const WITNESS = 'C. Muster, Port Sable Parks'

const REPORTS: readonly Report[] = [
  {
    file: 'pressure-test.pdf',
    title: 'Pressure test of the main',
    facts: [
      SITE,
      ['Date', '2025-02-20'],
      ['Gauge', '0-160 psi, checked 2025-01-08'],
      ['Tester', 'T. Sample, Sample Irrigation']
    ],
    columns: ['Minute', 'Pressure, psi', 'Joints looked at'],
    rows: [
      ['0', '100', 'all dry'],
      ['10', '100', 'all dry'],
      ['20', '100', 'all dry'],
      ['30', '100', 'all dry']
    ],
    signed: ['T. Sample', WITNESS]
  },
  {
    file: 'flush-and-coverage.pdf',
    title: 'Flushing and coverage',
    facts: [SITE, ['Dates', '2025-03-05 and 2025-03-12'], ['Tester', 'T. Sample, Sample Irrigation']],
    columns: ['Zone', 'Clear after', 'Coverage', 'Hard surfaces'],
    rows: [
      ['T1', '6 min', 'head to head', 'dry'],
      ['T2', '5 min', 'head to head, two nozzles turned', 'dry'],
      ['T3', '4 min', 'drip, all lines flow', 'dry'],
      ['T4', '3 min', 'ten bubblers flow', 'dry'],
      ['T5', '2 min', 'drip, all lines flow', 'dry']
    ],
    signed: ['T. Sample', WITNESS]
  },
  {
    file: 'backflow-test.pdf',
    title: 'Backflow assembly test',
    facts: [
      SITE,
      ['Date', '2025-03-06, day of fitting'],
      ['Assembly', 'reduced pressure, 1-1/2 in, invented RP-150, no. RP-3108'],
      ['Where', 'gray cabinet at the foot of the steps'],
      ['Tester', 'J. Sample, license invented BT-207'],
      ['Kit', 'no. 88, checked 2025-01-15']
    ],
    columns: ['Part', 'Reading', 'Result'],
    rows: [
      ['check 1', '7.2 psi', 'tight'],
      ['check 2', '1.4 psi', 'tight'],
      ['relief', 'opens at 2.8 psi', 'passed']
    ],
    signed: ['J. Sample']
  },
  {
    file: 'audit.pdf',
    title: 'Irrigation audit with catch cans',
    facts: [
      SITE,
      ['Date', '2025-03-18'],
      ['Auditor', 'H. Example, Example Audits: neither designed nor installed it'],
      ['Wind', '2 to 4 mph, read every 5 min'],
      ['Run', '10 min, 24 cans, 42 psi and 41 psi at the valves'],
      ['Soil', 'sandy loam, roots 6 in'],
      ['Overspray, runoff', 'none']
    ],
    columns: ['Zone', 'Mean catch, mL', 'Lowest quarter, mL', 'Uniformity'],
    rows: [
      ['T1', '53', '44', '0.83'],
      ['T2', '50', '37', '0.74']
    ],
    signed: ['H. Example', WITNESS]
  },
  {
    file: 'inspection-log.pdf',
    title: 'Inspection log',
    facts: [SITE, ['Kept by', WITNESS]],
    columns: ['Date', 'What was inspected', 'Signed'],
    rows: [
      ['2025-02-10', 'sleeves under the ramp', 'C. Muster'],
      ['2025-02-17', 'depth of the main', 'C. Muster'],
      ['2025-02-20', 'pressure test', 'C. Muster'],
      ['2025-02-21', 'trenches, open, before cover', 'C. Muster'],
      ['2025-03-12', 'boxes and splices', 'C. Muster']
    ],
    signed: [WITNESS]
  },
  {
    file: 'training.pdf',
    title: 'Training, list of those present',
    facts: [SITE, ['Date', '2025-03-20, 90 min'], ['Trainer', 'L. Sample, Sample Irrigation']],
    columns: ['Name', 'Company', 'Signed'],
    rows: [
      ['M. Example', 'Example Landscapes', 'M. Example'],
      ['C. Muster', 'Port Sable Parks', 'C. Muster'],
      ['B. Sample', 'Port Sable Parks', 'B. Sample']
    ],
    signed: ['L. Sample', 'H. Example, for the owner']
  },
  {
    file: 'walk-through.pdf',
    title: 'Final walk-through',
    facts: [
      SITE,
      ['Date', '2025-03-20'],
      ['Shown', 'shut-off, boxes, controllers, schedule and how it changes through the year']
    ],
    columns: ['Item', 'Seen'],
    rows: [
      ['every zone run', 'yes'],
      ['shut-off closed and opened by the owner', 'yes'],
      ['schedule explained', 'yes'],
      ['open: bark on the shrub terraces', 'by 2025-04-04']
    ],
    signed: ['L. Sample', WITNESS]
  },
  {
    file: 'certificate.pdf',
    title: 'Certificate of completion',
    facts: [
      SITE,
      ['Date', '2025-03-21'],
      ['Installed by', 'L. Sample, Sample Irrigation, invented 20-4471'],
      ['As', 'the approved package, with sheet RD-1 for changes in the field'],
      ['Warranty', 'W-31, 2025-03-20 to 2028-03-20']
    ],
    columns: ['Copy', 'Sent'],
    rows: [
      ['Port Sable Parks, owner', '2025-03-21'],
      ['Port Sable Water, water supplier', '2025-03-21']
    ],
    signed: ['L. Sample']
  }
]

for (const report of REPORTS) await save(report.file, 'portrait', pen => drawReport(pen, report))
await save('record-drawing.pdf', 'landscape', drawRecord)

async function save(file: string, way: keyof typeof SIZE, draw: (pen: Pen) => void): Promise<void> {
  const document = await PDFDocument.create({ updateMetadata: false })
  const [width, height] = SIZE[way]
  draw({
    page: document.addPage([width, height]),
    font: await document.embedFont(StandardFonts.Helvetica),
    bold: await document.embedFont(StandardFonts.HelveticaBold)
  })
  const bare = `${FOLDER}/${file}.bare`
  writeFileSync(bare, await document.save())
  // Puts the shapes of the letters in, so that every reader shows the same.
  execFileSync('pdftocairo', ['-pdf', bare, `${FOLDER}/${file}`])
  rmSync(bare)
}

function drawReport(pen: Pen, { title, facts, columns, rows, signed }: Report): void {
  const { bold } = pen
  write(pen, title, 54, 724, 18, bold)
  line(pen, 54, 714, 558, 714, 1.5)
  let y = 690
  for (const [label, value] of facts) {
    write(pen, label, 54, y, 10, bold)
    write(pen, value, 160, y, 10)
    y -= 18
  }
  y -= 14
  const starts = columnStarts([columns, ...rows])
  columns.forEach((label, index) => write(pen, label, starts[index] ?? 58, y, 10, bold))
  line(pen, 54, y + 14, 558, y + 14)
  for (const row of [undefined, ...rows]) {
    line(pen, 54, y - 6, 558, y - 6, row ? 0.5 : 1)
    row?.forEach((text, index) => write(pen, text, starts[index] ?? 58, y, 10))
    y -= 20
  }
  y -= 40
  signed.forEach((name, index) => {
    const x = 54 + index * 260
    squiggle(pen, x + 10, y + 8)
    line(pen, x, y, x + 220, y)
    write(pen, name, x, y - 14, 9)
  })
  write(pen, 'All names and figures are invented.', 54, 40, 8)
}

function drawRecord(pen: Pen): void {
  const { page, bold } = pen
  page.drawRectangle({ x: 24, y: 24, width: 744, height: 564, borderColor: INK, borderWidth: 2 })
  write(pen, 'RECORD DRAWING', 560, 560, 18, bold)
  const block = [
    'RD-1, irrigation as installed',
    'Harbour Steps Terraces, Port Sable',
    'Revision A, 2025-03-17, 1 in = 20 ft',
    'Positions within 0.1 ft',
    'Base: SW corner of the ticket pavilion',
    'Design pressure 60 psi',
    'Measured flow: T1 11.5, T2 10.8, T3 6.4,',
    'T4 5.0, T5 0.9 gpm'
  ]
  block.forEach((text, index) => write(pen, text, 560, 540 - index * 14, 9))
  const legend = [
    'Legend',
    'square: valve box',
    'heavy line: main',
    'dashed: control wire',
    'cross: splice',
    'circle: shut-off and backflow',
    'dots: turf   hatch: shrubs'
  ]
  legend.forEach((text, index) => write(pen, text, 560, 400 - index * 14, 9, index === 0 ? bold : pen.font))
  for (const [index, y] of [110, 260, 410].entries()) {
    page.drawRectangle({ x: 60, y, width: 460, height: 110, borderColor: INK, borderWidth: 1 })
    write(pen, ['lower terrace, T1', 'middle terrace, T2 T3 T4', 'top terrace, T5'][index] ?? '', 116, y + 94, 10, bold)
    if (index === 1) for (let x = 280; x < 505; x += 14) line(pen, x, y + 12, x + 12, y + 40, 0.4)
    else
      for (let x = 90; x < 500; x += 18)
        for (let up = 14; up < 70; up += 18) page.drawCircle({ x, y: y + up, size: 0.8, color: INK })
  }
  line(pen, 100, 70, 100, 470, 2.5)
  page.drawLine({ start: { x: 108, y: 70 }, end: { x: 108, y: 470 }, thickness: 1, dashArray: [4, 3], color: INK })
  page.drawCircle({ x: 100, y: 66, size: 7, borderColor: INK, borderWidth: 1.5 })
  write(pen, 'S1: meter, shut-off, RP-3108, gray cabinet', 114, 60, 9)
  for (const [box, y, ties] of [
    ['HB1', 150, '9 ft 4 in bench end; 6 ft 2 in ramp wall'],
    ['HB2', 300, '3 ft 8 in lamp 3; 11 ft 0 in planter corner'],
    ['HB3', 450, '2 ft 6 in planter corner; 7 ft 1 in drain']
  ] as const) {
    page.drawRectangle({ x: 118, y, width: 16, height: 12, borderColor: INK, borderWidth: 1.5, color: rgb(1, 1, 1) })
    write(pen, box, 140, y + 2, 10, bold)
    write(pen, ties, 168, y + 2, 8)
  }
  line(pen, 150, 286, 158, 294)
  line(pen, 150, 294, 158, 286)
  write(pen, 'splice T3', 162, 286, 8)
  line(pen, 730, 480, 730, 530, 1.5)
  line(pen, 730, 530, 724, 518, 1.5)
  line(pen, 730, 530, 736, 518, 1.5)
  write(pen, 'N', 726, 534, 10, bold)
  line(pen, 560, 250, 704, 250, 1.5)
  for (const [x, text] of [
    [560, '0'],
    [632, '20 ft'],
    [704, '40 ft']
  ] as const) {
    line(pen, x, 246, x, 254)
    write(pen, text, x - 4, 236, 8)
  }
  squiggle(pen, 570, 190)
  line(pen, 560, 180, 740, 180)
  write(pen, 'L. Sample, 2025-03-17', 560, 168, 9)
  squiggle(pen, 570, 130)
  line(pen, 560, 120, 740, 120)
  write(pen, 'approved: C. Muster, 2025-03-19', 560, 108, 9)
}

/** Columns share the width by their longest texts. */
function columnStarts(rows: readonly (readonly string[])[]): number[] {
  const longest = (rows[0] ?? []).map((_, index) => Math.max(8, ...rows.map(row => row[index]?.length ?? 0)))
  const all = longest.reduce((sum, one) => sum + one, 0)
  let x = 58
  return longest.map(one => {
    const start = x
    x += (504 * one) / all
    return start
  })
}

function write({ page, font }: Pen, text: string, x: number, y: number, size: number, face = font): void {
  page.drawText(text, { x, y, size, font: face, color: INK })
}

function line({ page }: Pen, x: number, y: number, toX: number, toY: number, thickness = 0.8): void {
  page.drawLine({ start: { x, y }, end: { x: toX, y: toY }, thickness, color: INK })
}

/** Stands for a signature. */
function squiggle({ page }: Pen, x: number, y: number): void {
  page.drawSvgPath('M0 0 C10 -18 14 12 22 -4 S34 -14 40 0 S56 -12 64 -2 S90 -8 110 -3', {
    x,
    y,
    borderColor: INK,
    borderWidth: 1.2
  })
}
