import { StillroomError } from '../../src/errors/index';

/** The StillroomError that a call throws; fails the test where it throws none, or another. */
export function errorOf(call: () => unknown): StillroomError {
  try {
    call();
  } catch (error) {
    if (error instanceof StillroomError) return error;
    throw error;
  }
  throw new Error('it threw nothing');
}
