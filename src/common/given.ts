/** What a caller may give: the schema's input, also where its objects and lists are frozen. */
export type Given<T> = T extends readonly (infer Item)[]
  ? readonly Given<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Given<T[Key]> }
    : T;
