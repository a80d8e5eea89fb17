import { StillroomError } from '../../src/errors/index';

/** Code and path of the error that the work throws; anything else is a failure of the test. */
export function errorOf(work: () => unknown): [code: string, path: string] {
  try {
    work();
  } catch (error) {
    if (error instanceof StillroomError) return [error.code, error.path];
    throw error;
  }
  throw new Error('no error was thrown');
}
