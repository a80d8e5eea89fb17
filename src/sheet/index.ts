/**
 * A day's plan as a printable run sheet.
 * @module
 */
export { runSheet } from './runSheet';
