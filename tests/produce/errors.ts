import { StillroomError } from '../../src/errors/index';

/** The error that the work throws; anything else is a failure of the test. */
export function errorOf(work: () => unknown): StillroomError {
  try {
    work();
  } catch (error) {
    if (error instanceof StillroomError) return error;
    throw error;
  }
  throw new Error('no error was thrown');
}

export const codeOf = (work: () => unknown): string => errorOf(work).code;
export const pathOf = (work: () => unknown): string => errorOf(work).path;
