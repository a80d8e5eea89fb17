/**
 * The register of sources, and what an answer says about where it comes from.
 * @module
 */
export type { Basis, BasisKind, Caution, Seen, Severity } from './basis';
export type { Instead, NotKnown, NotTested, Reason } from './no';
export { type Source, source, sources } from './source';
