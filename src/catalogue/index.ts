/**
 * Every public function as data, for a page, a form or another language: what it answers, its argument and answer as JSON
 * Schema, and ways to call it by name, to check an argument, and to ask what a field may hold. Nothing imports this
 * module: a page that needs one function pays for one.
 * @module
 */
export { call } from './call';
export { type CatalogueInput, catalogue } from './catalogue';
export { type Checked, check } from './check';
export { type Choosable, choices, type StillToChoose } from './choices';
export type { CatalogueEntry, JsonSchema } from './entries';
