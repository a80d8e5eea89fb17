/**
 * The register of sources, and what an answer says about where it comes from.
 * @module
 */
export type { Basis, BasisKind, Caution, Refusal, Seen } from './basis';
export { type Source, source, sources } from './source';
