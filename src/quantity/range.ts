/** Does the same to each figure of a range. Internal: modules import it, callers see only the ranges. */
import type { Range } from './types';

/** The same sum for each end of a range. */
export const mapRange = <A, B>(range: Range<A>, change: (end: A) => B): Range<B> => ({
  low: change(range.low),
  likely: change(range.likely),
  high: change(range.high),
});

/** The range turned round: the low end computed from the high one. For answers that fall as the input rises. */
export const turnRange = <A>(range: Range<A>): Range<A> => ({ low: range.high, likely: range.likely, high: range.low });

/** Low with low, likely with likely, high with high. */
export const byEnds = <A, B, C>(one: Range<A>, other: Range<B>, join: (one: A, other: B) => C): Range<C> => ({
  low: join(one.low, other.low),
  likely: join(one.likely, other.likely),
  high: join(one.high, other.high),
});

export const scaleRange = (range: Range<number>, by: number): Range<number> => mapRange(range, (each) => each * by);

/** A figure that is known for sure, as a range. */
export const sureRange = <A>(value: A): Range<A> => ({ low: value, likely: value, high: value });
