/** Words of months, of the days of a program, of run times and of a row of names. */
export const timeWords = {
  months: ['ene', 'feb', 'mar', 'abr', 'may', 'jun', 'jul', 'ago', 'sep', 'oct', 'nov', 'dic'],
  weekdays: ['lun', 'mar', 'mié', 'jue', 'vie', 'sáb', 'dom'],
  everyDay: 'todos los días',
  everyDays: (count: number, from: string) => `${count === 1 ? 'cada día' : `cada ${count} días`} desde el ${from}`,
  oddDates: 'fechas impares',
  oddDatesWithTurnover: 'fechas impares con el 31',
  evenDates: 'fechas pares',
  soak: (cycles: string, soak: string) => `${cycles} pausa ${soak}`
}
