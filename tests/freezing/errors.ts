import { expect } from 'vitest';
import type { ErrorCode } from '../../src/errors/index';

/** Runs a call that must throw the one error, quickly, with this code and path. */
export function expectError(call: () => unknown, code: ErrorCode, path: string): void {
  expect(call).toThrow(expect.objectContaining({ name: 'StillroomError', code, path }));
}
