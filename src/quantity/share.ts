import { Exact } from '../common/exact';
import { fail } from '../errors/StillroomError';
import { amountOf, exactOf, type Figure, isTwofold, oneReadingOf } from './amount';

const LONGEST_TEXT = 40;

const expectedUpTo = (most: number): string =>
  most === 1 ? 'a share from 0 to 1, or a percentage such as "85 %"' : `a share from 0 to ${most}, or a percentage`;

/** A figure in percent as a share of one. */
export const hundredthOf = (percent: Figure): number =>
  percent instanceof Exact || percent.below > MOST_BELOW
    ? exactOf(percent).div(100).toNumber()
    : percent.above / (percent.below * 100);
/** A hundred times this is still exact. */
const MOST_BELOW = 1e13;

/**
 * Reads a share of a whole: a number from 0 to 1, or a string in percent.
 *
 * @param most - the largest it may be: 1, or more where the whole is not what it is a share of (moisture on dry basis)
 * @throws StillroomError WRONG_TYPE, NOT_A_QUANTITY, OUT_OF_RANGE
 */
export function parseShare(given: unknown, path = '', most = 1): number {
  if (typeof most !== 'number' || !(most > 0 && most <= 1e6)) fail('OUT_OF_RANGE', 'most', most, 'a number above 0');
  const expected = expectedUpTo(most);
  if (given === undefined) fail('MISSING', path, given, expected);
  if (typeof given === 'number') {
    if (!(given >= 0 && given <= most)) fail('OUT_OF_RANGE', path, given, expected);
    return given;
  }
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, expected);
  const text = given.trim();
  const amount = text.length <= LONGEST_TEXT && text.endsWith('%') ? amountOf(text.slice(0, -1)) : undefined;
  const { point: percent, comma } = amount ?? {};
  if (amount === undefined || (percent === undefined && comma === undefined)) {
    fail('NOT_A_QUANTITY', path, given, expected);
  }
  const otherIsPossible = comma === undefined || exactOf(comma).lte(100 * most);
  if (percent === undefined || (isTwofold(amount) && otherIsPossible)) {
    fail('NOT_A_QUANTITY', path, given, oneReadingOf(amount, '%'));
  }
  const share = hundredthOf(percent);
  if (!(share >= 0 && share <= most)) fail('OUT_OF_RANGE', path, given, expected);
  return share;
}
