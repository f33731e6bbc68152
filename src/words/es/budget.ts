/** Words of the water budget. */
export const budgetWords = {
  title: 'Presupuesto de agua',
  lead: 'Lo que el emplazamiento puede usar en un año, lo que se estima que usan sus zonas, lo que aportan los programas tal como están y lo que midió el contador. La autoridad decide qué cuenta.',
  none: 'La asignación de agua del emplazamiento y las lecturas del contador frente a ella',
  facts: 'Asignación y uso de un año',
  form: 'Forma',
  forms: {
    'ordinance 2015':
      'Ordenanza modelo de paisajismo eficiente en agua, 2015: (ETo) × 0.62 × [ajuste × superficie + (1 − ajuste) × superficie especial]',
    'annual volume': 'Un volumen al año'
  },
  authority: 'Establecido por',
  et: 'Evapotranspiración de referencia del año',
  area: 'Superficie ajardinada',
  specialArea: 'de ella, contada por entero',
  adjustment: 'Ajuste de evapotranspiración',
  allowance: 'Asignación',
  estimated: 'Uso estimado',
  programmed: 'Según lo programado',
  within: 'DENTRO',
  over: 'EXCEDE',
  months: (year: number) => `Mes a mes, ${year}`,
  month: 'Mes',
  yearRow: 'Año',
  monthsNotes: {
    shares:
      'La asignación de un año se reparte entre los meses como su evapotranspiración de referencia (regla de este proyecto).',
    ordinance:
      'La estimación es la de la ordenanza: evapotranspiración × coeficiente ÷ eficiencia × superficie, el año entero, sin lluvia.',
    need: 'La estimación es lo que falta a las plantas en los días en que se riega, después de la lluvia efectiva, con las pérdidas registradas.',
    flows: (stations: string) =>
      `Lo que consume ${stations} no está en el agua programada: no se ha indicado su caudal.`
  },
  figureTitle: 'Agua estimada y programada por mes',
  figureCaption:
    'Lo que se estima que usan las zonas junto a lo que aportan los programas, mes a mes. Las mismas cifras figuran en la tabla.',
  zones: 'Las zonas como las cuenta la ordenanza',
  station: 'Estación',
  waters: 'Riega',
  factor: 'Coeficiente de planta',
  efficiency: 'Eficiencia',
  zoneArea: 'Superficie',
  use: 'Uso estimado',
  special: 'contada por entero',
  efficiencyNote:
    'Eficiencia donde no hay ninguna registrada: aspersión 75 %, goteo 81 %, como las cuenta la ordenanza.',
  meter: 'Lecturas del contador en las visitas',
  supply: 'Toma de agua',
  from: 'Desde',
  to: 'Hasta',
  metered: 'Medido',
  ofProgram: 'De lo programado',
  allowed: 'Asignación de esos días',
  backward: 'la lectura posterior es menor',
  meterNotes: [
    'Programado: según los programas tal como están ahora, del mediodía del primer día al mediodía del último.',
    'Más de un cuarto por encima apunta a una fuga o a una válvula que no cierra; más de un cuarto por debajo, a una válvula cerrada o a un sensor que retuvo el riego (práctica común, sin fuente).'
  ]
}
