import { writeFileSync } from 'node:fs'
import { isNoBrowser, withBrowser } from '../../src/render/browser.ts'

/** Draws the photographs of the closeout and of a visit of the demo site harbour-steps. Run: npx tsx tests/tools/demo-photographs.ts */
const FOLDER = 'sites/harbour-steps/photos'
const [WIDTH, HEIGHT] = [720, 473]

const HATCH = `<defs><pattern id="h" width="14" height="14" patternUnits="userSpaceOnUse" patternTransform="rotate(35)"><rect width="14" height="14" fill="#f3efe6"/><path d="M0 0V14" stroke="#d5cdbd" stroke-width="1.5"/></pattern><pattern id="d" width="12" height="12" patternUnits="userSpaceOnUse"><rect width="12" height="12" fill="#e9e4d6"/><circle cx="6" cy="6" r="1.5" fill="#b8ae98"/></pattern></defs><rect width="720" height="473" fill="url(#h)"/>`

const trench = (inside: string) =>
  `<path d="M60 90H660V380H60Z" fill="url(#d)" stroke="#111" stroke-width="4"/><path d="M150 90V380M570 90V380" stroke="#111" stroke-width="3" stroke-dasharray="10 7"/>${inside}`
const zone = (heads: readonly number[], way: 'spray' | 'bubbler') =>
  `<rect x="50" y="60" width="620" height="330" rx="10" fill="url(#d)" stroke="#111" stroke-width="4"/>${heads
    .map(x =>
      way === 'spray'
        ? `<path d="M${x} 330L${x - 60} 170A70 40 0 0 1 ${x + 60} 170Z" fill="#fff" stroke="#111" stroke-width="2" stroke-dasharray="3 6"/><circle cx="${x}" cy="334" r="8" fill="#111"/>`
        : `<circle cx="${x}" cy="180" r="52" fill="#fff" stroke="#111" stroke-width="3"/><path d="M${x} 232V320" stroke="#111" stroke-width="8"/><circle cx="${x}" cy="332" r="26" fill="#fff" stroke="#111" stroke-width="3"/>`
    )
    .join('')}`

const PICTURES: readonly (readonly [string, string, string])[] = [
  [
    'trench-main',
    'main along the ramp wall, before cover (drawing)',
    trench('<rect x="330" y="90" width="46" height="290" fill="#fff" stroke="#111" stroke-width="4"/>')
  ],
  [
    'trench-wires',
    'wires beside the lateral, T3 (drawing)',
    trench(
      '<rect x="290" y="90" width="34" height="290" fill="#fff" stroke="#111" stroke-width="4"/><path d="M370 90C350 180 400 280 372 380M392 90C372 180 422 280 394 380" fill="none" stroke="#111" stroke-width="4"/>'
    )
  ],
  [
    'splice-hb2',
    'HB2, sealed connectors, east side (drawing)',
    '<rect x="60" y="50" width="600" height="340" rx="18" fill="url(#d)" stroke="#111" stroke-width="6"/><path d="M120 120C240 90 280 200 300 220M120 180C220 180 260 220 300 230M420 220C460 180 560 200 610 130M420 230C480 250 540 300 610 300" fill="none" stroke="#111" stroke-width="5"/><rect x="300" y="200" width="120" height="52" rx="20" fill="#fff" stroke="#111" stroke-width="4"/>'
  ],
  [
    'shut-off',
    'S1, ball valve in the cabinet, open (drawing)',
    '<rect x="120" y="40" width="480" height="360" fill="#fff" stroke="#111" stroke-width="6"/><rect x="120" y="230" width="480" height="46" fill="url(#d)" stroke="#111" stroke-width="4"/><circle cx="360" cy="253" r="52" fill="#fff" stroke="#111" stroke-width="5"/><rect x="300" y="186" width="180" height="22" rx="8" fill="#111"/><path d="M360 208V204" stroke="#111" stroke-width="14"/><rect x="420" y="310" width="150" height="60" fill="#fff" stroke="#111" stroke-width="3"/><text x="495" y="348" text-anchor="middle" font-size="17">IRRIGATION S1</text>'
  ],
  [
    'meter',
    'S1, meter at acceptance (drawing)',
    '<circle cx="360" cy="215" r="160" fill="#fff" stroke="#111" stroke-width="7"/><rect x="255" y="150" width="210" height="50" fill="url(#d)" stroke="#111" stroke-width="3"/><text x="360" y="187" text-anchor="middle" font-size="34">161020</text><text x="360" y="250" text-anchor="middle" font-size="26">gal</text><path d="M360 330L400 280" stroke="#111" stroke-width="5"/>'
  ],
  ['zone-t1', 'T1 running, lower lawn panel (drawing)', zone([140, 290, 440, 590], 'spray')],
  ['zone-t2', 'T2 running, middle lawn panel (drawing)', zone([200, 360, 520], 'spray')],
  ['zone-t4', 'T4 running, bubblers at the trees (drawing)', zone([130, 250, 370, 490, 610], 'bubbler')],
  [
    'completion',
    'the terraces from the quay (drawing)',
    '<path d="M60 400V320H240V240H440V160H660V400Z" fill="url(#d)" stroke="#111" stroke-width="5"/><path d="M60 320H200M240 240H400M440 160H620" stroke="#111" stroke-width="12"/><circle cx="300" cy="190" r="40" fill="#fff" stroke="#111" stroke-width="4"/><path d="M300 230V240" stroke="#111" stroke-width="8"/><circle cx="540" cy="100" r="46" fill="#fff" stroke="#111" stroke-width="4"/><path d="M540 146V160" stroke="#111" stroke-width="8"/>'
  ],
  [
    'hb2-lid-2025-12-19',
    'lid of HB2, 15 mm above grade (drawing)',
    '<path d="M20 300H180V390H540V300H700" fill="none" stroke="#111" stroke-width="5"/><rect x="180" y="240" width="360" height="150" fill="url(#d)" stroke="#111" stroke-width="5"/><rect x="168" y="218" width="384" height="30" fill="#fff" stroke="#111" stroke-width="5"/><path d="M610 300V218M598 230L610 214L622 230M598 288L610 304L622 288" fill="none" stroke="#111" stroke-width="4"/><path d="M560 218H640" stroke="#111" stroke-width="2" stroke-dasharray="5 6"/>'
  ]
]

const outcome = await withBrowser(async ({ browser }) => {
  const page = await browser.newPage()
  await page.setViewport({ width: WIDTH, height: HEIGHT })
  for (const [name, caption, inside] of PICTURES) {
    const text = `<text x="94" y="455" font-size="21" font-weight="bold">${caption}</text>`
    await page.setContent(
      `<body style="margin:0"><svg width="${WIDTH}" height="${HEIGHT}" font-family="monospace">${HATCH}${inside}${text}</svg></body>`
    )
    writeFileSync(`${FOLDER}/${name}.jpg`, await page.screenshot({ type: 'jpeg', quality: 72 }))
  }
})
if (isNoBrowser(outcome)) throw new Error(outcome.told.join('\n'))
