// Data tables are imported as unknown and given their row type by the one module that owns them;
// the tests check each table against its zod schema, so the type is proved and not inferred.
declare module '*.json' {
  const value: unknown;
  export default value;
}
