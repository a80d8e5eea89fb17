/**
 * The register of sources, and what an answer says about where it comes from.
 * @module
 */
export type { Basis, BasisKind, Caution, Seen, Severity } from './basis';
export type { Instead, NotKnown, NotTested, Reason } from './no';
export type { Source } from './source';
export { type SourcesInput, sources } from './sources';
