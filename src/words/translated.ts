/** The shape of a catalogue: the same keys and the same arguments, and any text in the place of each text. */
export type Translated<T> = T extends string
  ? string
  : T extends (...values: infer Values) => infer Result
    ? (...values: Values) => Translated<Result>
    : T extends readonly (infer Item)[]
      ? readonly Translated<Item>[]
      : { readonly [Key in keyof T]: Translated<T[Key]> }
