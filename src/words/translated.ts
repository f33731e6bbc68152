/** The shape of a catalogue: the same keys and the same arguments, any text in the place of each text; a fixed row keeps its length. */
export type Translated<T> = T extends string
  ? string
  : T extends (...values: infer Values) => infer Result
    ? (...values: Values) => Translated<Result>
    : T extends readonly unknown[]
      ? number extends T['length']
        ? readonly Translated<T[number]>[]
        : { readonly [Key in keyof T]: Translated<T[Key]> }
      : { readonly [Key in keyof T]: Translated<T[Key]> }
