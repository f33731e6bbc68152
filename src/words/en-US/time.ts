/** Words of months, of the days of a program, of run times and of a row of names. */
export const timeWords = {
  months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  weekdays: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  everyDay: 'every day',
  everyDays: (count: number, from: string) => `every ${count} ${count === 1 ? 'day' : 'days'} from ${from}`,
  oddDates: 'odd dates',
  oddDatesWithTurnover: 'odd dates with the 31st',
  evenDates: 'even dates',
  soak: (cycles: string, soak: string) => `${cycles} soak ${soak}`
}
