/** Why a bare "mm" is not computed with. */
export function ambiguousReason(mm: number): string {
  return `“${mm} mm” may be a diameter or an area; write “${mm} mm²” or “${mm} mm diameter”`
}
