/**
 * A day's plan as a printable run sheet.
 * @module
 */
export { type RunSheetOptions, runSheet } from './runSheet';
