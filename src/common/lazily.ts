/**
 * A value that is made when it is first asked for, and kept. The build writes every constant that takes work this way
 * (`tests/build/lazyConstants.ts`), so that importing the library does none.
 */
export function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
