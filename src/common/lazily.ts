/**
 * A value that is made when it is first asked for, and kept. The build writes every constant that takes work this way
 * (`tests/build/lazyConstants.ts`), so that importing the library does none.
 */
export function lazily<T>(make: () => T): () => T {
  let waiting: (() => T) | undefined = make;
  let value: T | undefined;
  return () => {
    if (waiting !== undefined) {
      value = waiting();
      waiting = undefined;
    }
    return value as T;
  };
}
