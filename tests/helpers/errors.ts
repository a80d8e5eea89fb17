import { expect } from 'vitest';
import { type ErrorCode, StillroomError } from '../../src/errors/index';

/** The error that the work throws; anything else, or nothing, is a failure of the test. */
export function thrownBy(work: () => unknown): StillroomError {
  try {
    work();
  } catch (error) {
    if (error instanceof StillroomError) return error;
    throw error;
  }
  throw new Error('no error was thrown');
}

export const codeOf = (work: () => unknown): string => thrownBy(work).code;
export const pathOf = (work: () => unknown): string => thrownBy(work).path;
export const codeAndPath = (work: () => unknown): [code: string, path: string] => [codeOf(work), pathOf(work)];
/** `OUT_OF_RANGE elevation`. */
export const codeText = (work: () => unknown): string => codeAndPath(work).join(' ').trim();

/** The work must throw the one error, with this code and path. */
export function expectError(work: () => unknown, code: ErrorCode, path: string): void {
  expect(codeAndPath(work)).toEqual([code, path]);
}
