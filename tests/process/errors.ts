import { expect } from 'vitest';
import { StillroomError } from '../../src/errors/index';

/** The code and path of the one error that the call must throw. */
export function errorOf(call: () => unknown): { code: string; path: string; expected: string } {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(StillroomError);
    const { code, path, expected } = error as StillroomError;
    return { code, path, expected };
  }
  return expect.fail('no error was thrown');
}
