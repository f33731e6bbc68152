/** Words of what is handed over when the work is done. */
export const closeoutWords = {
  sections: {
    dates: 'Dates of the work',
    drawings: 'Record drawing and charts',
    tests: 'Test reports',
    training: 'Training record',
    spares: 'Spare parts and tools',
    signOffs: 'Sign-offs',
    photographs: 'Photographs'
  },
  attachments: {
    caption: (title: string, file: string, page: number, pages: number) =>
      pages === 1 ? `${title} (${file})` : `${title} (${file}, page ${page} of ${pages})`,
    notThere: (title: string, file: string) => `${title}: ${file} is not there, or cannot be read`
  },
  yes: 'yes',
  no: 'no',
  dates: {
    workStart: 'Work began',
    substantialCompletion: 'Could be used from',
    acceptance: 'Accepted by the owner',
    maintenance: 'Maintained by the contractor',
    maintenanceSpan: (from: string, to: string) => `${from} to ${to}`,
    agreement: 'Handed over by',
    unfinished: 'Still to be done on the day of acceptance',
    nothingUnfinished: 'Nothing was listed as still to be done.',
    item: 'Item',
    value: 'Worth',
    reason: 'Reason',
    owner: 'Who does it',
    by: 'Until'
  },
  drawings: {
    lead: 'The record drawing shows what was installed, not what was designed. Whoever changes the installation changes the drawing.',
    sheets: 'Signed sheets of the installer',
    number: 'Sheet',
    title: 'Shows',
    dated: 'Dated',
    revision: 'Revision',
    scale: 'Scale',
    signedBy: 'Signed by',
    tolerance: 'Positions within',
    transmittal: 'Sent with',
    copies: 'Copies',
    attached: 'Bound in',
    charts: 'Controller charts',
    chartCopies: 'Copies of each',
    chartFixed: 'Fixed',
    chartMaterial: 'Kept from wet by',
    chartApproved: 'Approved by the owner'
  },
  tests: {
    lead: 'What was tested before acceptance, by whom, and what came out.',
    kind: 'Test',
    on: 'Date',
    of: 'Of',
    by: 'By',
    witness: 'Witness',
    conditions: 'Held or run',
    result: 'Result',
    passed: 'Passed',
    failed: 'not passed',
    kinds: {
      pressure: 'Pressure test',
      flush: 'Flushing',
      coverage: 'Coverage',
      'start-up pressures': 'Start-up pressures',
      backflow: 'Backflow assembly',
      audit: 'Irrigation audit',
      'catch cans': 'Catch-can test',
      'wire and coil': 'Wire and coil readings',
      inspection: 'Inspection'
    },
    pressureSheet: 'Pressure test, to be filled in',
    pressureColumns: ['Date', 'Line', 'Pressure at start', 'Time', 'Pressure at end', 'Time', 'Tester', 'Witness'],
    readingSheet: 'Wire and coil readings, to be filled in',
    readingColumns: ['Date', 'Station', 'At the controller', 'At the valve', 'Temperature', 'Meter', 'By'],
    inspectionSheet: 'Inspection log, to be filled in',
    inspectionColumns: ['Date', 'What was inspected', 'Result', 'Signed']
  },
  training: {
    lead: 'Those who take over were shown how to shut the water off, open a box, read a coil, change a battery and enter a program, and why the schedule changes through the year.',
    on: 'Date',
    trainer: 'Taught by',
    place: 'Place',
    duration: 'Length',
    attendees: 'Present',
    topics: 'Topics',
    signed: 'Signed',
    sheet: 'Training, to be filled in',
    sheetColumns: ['Date', 'Name', 'Company', 'Topics', 'Trainer', 'Signature']
  },
  spares: {
    lead: 'Repairs use the part that was installed, its equal, or one that uses less water.',
    parts: 'Spare parts',
    tools: 'Tools',
    item: 'Item',
    count: 'Handed over',
    installed: 'Installed',
    share: 'Share',
    source: 'More from',
    receivedBy: 'Received by',
    on: 'Date',
    receipt: 'Receipt of parts, tools and keys, to be filled in',
    receiptColumns: ['Date', 'Item', 'Count', 'Received by', 'Signature', 'Returned on']
  },
  signOffs: {
    kind: 'What',
    by: 'Signed by',
    role: 'For',
    on: 'Date',
    copies: 'Copies to',
    words: 'In the words of the authority',
    refused: (when: string) => `REFUSED: ${when}`,
    kinds: {
      'walk-through': 'Final walk-through',
      'maintenance checklist': 'Maintenance checklist',
      "installer's statement": "Installer's statement",
      'certificate of completion': 'Certificate of completion',
      'record drawing approval': 'Approval of the record drawing',
      'receipt of spares and keys': 'Receipt of spares and keys'
    }
  },
  photographs: {
    ofBoxes: (section: string) => `Photographs of the boxes stand under ${section}.`,
    kind: 'Shows',
    of: 'Of',
    caption: 'What is seen',
    taken: 'Taken',
    kinds: {
      'box open': 'Box, lid open',
      'open trench': 'Trench before cover',
      splice: 'Splice',
      'shut-off': 'Shut-off',
      meter: 'Meter',
      'zone running': 'Zone running',
      completion: 'Finished work'
    }
  }
}
