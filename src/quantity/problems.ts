/** Everything that is wrong with an argument, not only the first. */
import type * as z from 'zod/mini';
import { type ErrorDetails, StillroomError } from '../errors/StillroomError';
import { errorsOf } from './fields';

/** One thing that is wrong. */
export interface Problem extends Readonly<Omit<ErrorDetails, 'given'>> {
  /** What was given; left out where nothing was. */
  readonly given?: ErrorDetails['given'];
  /** All of it in one sentence, as the error says it. */
  readonly message: string;
}

/** A problem as plain data. */
export const problemOf = ({ code, path, given, expected, options, nearest, message }: StillroomError): Problem => ({
  code,
  path,
  ...(given === undefined ? {} : { given }),
  expected,
  ...(options === undefined ? {} : { options }),
  ...(nearest === undefined ? {} : { nearest }),
  message,
});

/**
 * All that is wrong with an argument by its schema, each with its path, what was given, what would be right and the
 * nearest right words; empty where `readInput` reads it. The first one is the error that `readInput` throws.
 */
export const problemsOf = (schema: z.ZodMiniType, input: unknown): Problem[] => errorsOf(schema, input).map(problemOf);

/** The problems that checks throw, each run by itself; an error that is no StillroomError goes on. */
export const problemsIn = (...checks: readonly (() => void)[]): Problem[] =>
  checks.flatMap((check) => {
    try {
      check();
      return [];
    } catch (error) {
      if (!(error instanceof StillroomError)) throw error;
      return [problemOf(error)];
    }
  });
