/** Heat that the soil takes up in a month in MJ/m² a day, from the mean temperatures of the months beside it. FAO paper 56 (1998), eq. 43. */
export const soilHeatMj = (previousC: number, nextC: number): number => 0.07 * (nextC - previousC)

/** The same where the month after is not known yet, eq. 44. */
export const soilHeatSoFarMj = (previousC: number, thisC: number): number => 0.14 * (thisC - previousC)
