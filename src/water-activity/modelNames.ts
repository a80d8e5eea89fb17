/** The equations that a caller may choose for a solution. Internal. */
export const MODELS = [
  'ross',
  'norrish',
  'norrish roots',
  'norrish mean k',
  'norrish log10',
  'raoult',
  'money-born',
  'grover',
  'pitzer',
  'debye-huckel',
  'wilson',
  'starzak-peacock',
  'robinson-stokes',
  'zobrist',
] as const;
/** The equation of an answer. */
export type SolutionModel = (typeof MODELS)[number];
