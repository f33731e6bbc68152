import { roundedText } from '../units/show.ts'

/** More would be noise: by then the two differ by less than a meter shows. */
const MOST_PLACES = 4

/** Both figures with as many places as tell them apart: 5.498 and 5.5, rather than 5.5 and 5.5. */
export function toldApart(one: number, other: number, places: number): readonly [string, string] {
  const [left, right] = [roundedText(one, places), roundedText(other, places)]
  return left !== right || places >= MOST_PLACES ? [left, right] : toldApart(one, other, places + 1)
}
