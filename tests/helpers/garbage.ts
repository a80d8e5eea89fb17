/** What no function can read, whatever it answers. */
export const GARBAGE: readonly unknown[] = [
  undefined,
  null,
  1,
  Number.NaN,
  '',
  'x'.repeat(10_000),
  [],
  {},
  JSON.parse('{"__proto__": {"mass": "1 kg", "fresh": "1 kg"}}'),
];
