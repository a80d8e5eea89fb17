/**
 * The one typed error of the library.
 * @module
 */
export { type ErrorCode, type ErrorDetails, type Given, StillroomError } from './StillroomError';
